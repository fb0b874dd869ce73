import { delimiter, join } from 'node:path';
import { thisMachine } from './machine.ts';
import type { Machine } from './machine.ts';
import type { BrowserFound, ChosenBrowser } from './types.ts';
import { MachineFault } from '../../read/machine-fault.ts';

/** Names a browser's program by its path; it comes before all others. */
export const BROWSER_VARIABLE = 'FOLDWRIGHT_BROWSER';

const SYSTEM_NAMES = ['chromium', 'chromium-browser', 'google-chrome'] as const;

/** Libraries that the packaged browser needs and bare systems lack; its package carries a copy of each. */
const CARRIED_LIBRARIES = ['libnss3.so', 'libnssutil3.so', 'libnspr4.so', 'libplc4.so', 'libplds4.so', 'libsoftokn3.so', 'libexpat.so.1'] as const;

/** Where x86-64 Linux systems keep libraries: Debian and Ubuntu, Fedora, others. */
const LIBRARY_FOLDERS = ['/lib/x86_64-linux-gnu', '/usr/lib/x86_64-linux-gnu', '/lib64', '/usr/lib64', '/lib', '/usr/lib'] as const;

/**
 * Chooses the browser that prints: the one named by FOLDWRIGHT_BROWSER, puppeteer's own, the one from
 * the npm package, which makes the same pages on every computer it runs on, or the system's, in that order.
 * @throws when FOLDWRIGHT_BROWSER names nothing that can be run, or no browser fits this machine.
 */
export async function chooseBrowser(machine: Machine = thisMachine()): Promise<ChosenBrowser> {
  const wished = namedBrowser(machine) ?? await puppeteersBrowser(machine);
  if (wished !== undefined) return wished;
  try {
    return await packagedBrowser(machine);
  } catch (fault) {
    const installed = systemBrowser(machine);
    if (installed !== undefined && fault instanceof MachineFault) return installed;
    throw fault;
  }
}

function namedBrowser(machine: Machine): ChosenBrowser | undefined {
  const path = machine.env[BROWSER_VARIABLE];
  if (path === undefined || path === '') return undefined;
  if (machine.isProgram(path)) return chosen(machine, path, 'named');
  throw new MachineFault(`${BROWSER_VARIABLE} names “${path}”, which is not a program that can be run; set it to the path of a Chromium or Chrome, or unset it`);
}

async function puppeteersBrowser(machine: Machine): Promise<ChosenBrowser | undefined> {
  const path = await machine.puppeteerPath();
  return path !== undefined && machine.isProgram(path) ? chosen(machine, path, 'puppeteer') : undefined;
}

function systemBrowser(machine: Machine): ChosenBrowser | undefined {
  const folders = (machine.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const paths = SYSTEM_NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  const path = paths.find((candidate) => machine.isProgram(candidate));
  return path === undefined ? undefined : chosen(machine, path, 'system');
}

async function packagedBrowser(machine: Machine): Promise<ChosenBrowser> {
  if (machine.platform !== 'linux' || machine.arch !== 'x64') {
    throw new MachineFault(`no browser to print with: none is installed, and the packaged one runs on Linux x64 only (this is ${machine.platform} ${machine.arch}); install Chromium or Chrome, or set ${BROWSER_VARIABLE} to its path`);
  }
  const { path, libraries, fontConfig } = await machine.unpack();
  // Only the package's own fonts are seen, so that no computer's fonts can slip into a booklet.
  return chosen(machine, path, 'packaged', { FONTCONFIG_FILE: fontConfig, ...libraryPath(machine, libraries) });
}

function libraryPath(machine: Machine, carried: string): Record<string, string> {
  const present = machine.env.LD_LIBRARY_PATH;
  const folders = [...(present ?? '').split(':').filter((folder) => folder !== ''), ...LIBRARY_FOLDERS];
  const all = CARRIED_LIBRARIES.every((library) => folders.some((folder) => machine.isFile(`${folder}/${library}`)));
  return all ? {} : { LD_LIBRARY_PATH: [carried, present].filter(Boolean).join(':') };
}

function chosen(machine: Machine, path: string, how: BrowserFound, extra: Readonly<Record<string, string>> = {}): ChosenBrowser {
  return { path, how, args: launchArguments(machine.isRoot), env: { ...withoutUndefined(machine.env), ...extra } };
}

/** `--disable-dev-shm-usage`: containers give it 64 MB. Hinting off: letters stand where the font says on every machine. */
function launchArguments(isRoot: boolean): readonly string[] {
  const always = ['--disable-dev-shm-usage', '--font-render-hinting=none', '--disable-gpu'];
  return isRoot ? ['--no-sandbox', ...always] : always;
}

function withoutUndefined(env: Machine['env']): Record<string, string> {
  return Object.fromEntries(Object.entries(env).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])));
}
