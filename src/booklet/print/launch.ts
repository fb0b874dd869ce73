import puppeteer from 'puppeteer';
import type { Browser } from 'puppeteer';
import { once } from 'node:events';
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { constants as system, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { MachineFault } from '../../read/machine-fault.ts';
import { BROWSER_VARIABLE } from './chooseBrowser.ts';
import { endGroup } from './processes.ts';
import { newPatience, type Patience } from './patience.ts';
import { newProfile, type Profile } from './profiles.ts';
import type { ChosenBrowser } from './types.ts';

const TRIES = 3;
const PAUSE_MS = 500;

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** A browser that runs, with a profile of its own. */
export interface RunningBrowser {
  readonly browser: Browser;
  /** Ends it at once, answering or not, and takes its profile away. */
  end(): Promise<void>;
}

/**
 * Starts the chosen browser, trying again when a busy machine lets it down. `timeout` is the longest wait of the first
 * try for one answer, ms, and of what is asked of the browser later; one that took longer to start may take that long.
 * @throws one message that says what is missing, when it cannot start at all.
 */
export const launch = (chosen: ChosenBrowser, timeout: number): Promise<RunningBrowser> => launchPatiently(chosen, newPatience(timeout));

/** The same for one who has lost browsers before: what fails here too lets the patience grow. */
export async function launchPatiently(chosen: ChosenBrowser, patience: Patience): Promise<RunningBrowser> {
  let args = chosen.args;
  for (let tries = 1; ; tries++) {
    try {
      return await start(chosen, args, patience.wait);
    } catch (error) {
      const reason = String(error instanceof Error ? error.message : error);
      // Ubuntu from 23.10 on lets no ordinary program build a sandbox. Ours shows only our own pages, without scripts or network.
      if (/no usable sandbox/i.test(reason) && !args.includes('--no-sandbox')) args = ['--no-sandbox', ...args];
      else if (tries === TRIES || missingLibrary(reason) !== undefined) throw new MachineFault(explain(chosen, reason), { cause: error });
      patience.grow('start');
      await pause(PAUSE_MS);
    }
  }
}

/** It is told by a pipe: when this process dies, in whichever way, the pipe closes and the browser ends. */
async function start(chosen: ChosenBrowser, args: readonly string[], timeout: number): Promise<RunningBrowser> {
  const profile = profileOrFault();
  const { path, env, said } = heardStart(chosen, profile.path);
  try {
    const browser = await puppeteer.launch({
      executablePath: path, headless: 'shell', args: [...args], pipe: true, userDataDir: profile.path, env: { ...env, TMPDIR: profile.path },
      timeout, protocolTimeout: timeout, handleSIGINT: false, handleSIGTERM: false, handleSIGHUP: false,
    });
    const quiet = endOnSignals();
    return { browser, end: () => end(browser, profile).finally(quiet) };
  } catch (error) {
    const reason = `${error instanceof Error ? error.message : String(error)}\n${said()}`;
    profile.remove();
    throw new Error(reason, { cause: error });
  }
}

/** A program that starts another and writes down what that complains of: by a pipe nobody else hears it. */
const starterPath = (): string => fileURLToPath(new URL('start-browser.sh', import.meta.url));

/** How the browser is started, and what it has complained of: unheard where the starter cannot be run. */
function heardStart({ path, env }: ChosenBrowser, folder: string): { readonly path: string; readonly env: ChosenBrowser['env']; readonly said: () => string } {
  const starter = starterPath();
  if (process.platform === 'win32' || !canRun(starter)) return { path, env, said: () => '' };
  const complaints = join(folder, 'complaints.txt');
  return {
    path: starter, env: { ...env, FOLDWRIGHT_START: path, FOLDWRIGHT_COMPLAINTS: complaints },
    said: () => (existsSync(complaints) ? readFileSync(complaints, 'utf8').slice(0, 4000) : ''),
  };
}

/** A copy without its modes, or a disk that runs nothing, must not keep the browser from starting. */
function canRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function profileOrFault(): Profile {
  try {
    return newProfile();
  } catch (error) {
    throw new MachineFault(`no folder can be made for the browser's own files: ${String(error instanceof Error ? error.message : error)}; make room there, or name another folder by TMPDIR`, { cause: error });
  }
}

/** Killed, not closed: one that hangs hears nothing, and there is nothing in it to be saved. */
async function end(browser: Browser, profile: Profile): Promise<void> {
  const running = browser.process();
  if (running?.pid !== undefined && running.exitCode === null && running.signalCode === null) {
    const gone = once(running, 'exit');
    endGroup(running.pid);
    await gone;
  }
  profile.remove();
}

/** A signal ends the process by way of its `exit`, on which browser and profile go. Gives what takes this back. */
function endOnSignals(): () => void {
  const hear = (signal: NodeJS.Signals): void => { process.exit(128 + system.signals[signal]); };
  for (const signal of SIGNALS) process.on(signal, hear);
  return () => { for (const signal of SIGNALS) process.off(signal, hear); };
}

function missingLibrary(reason: string): string | undefined {
  return /loading shared libraries: ([^:\s]+)/.exec(reason)?.[1];
}

function explain({ path, how }: ChosenBrowser, reason: string): string {
  const library = missingLibrary(reason);
  const why = library === undefined
    ? reason.split('\n').find((line) => line.trim() !== '') ?? 'it gave no reason'
    : `the system's library ${library} is missing; install it with the system's package manager`;
  return `the browser ${path} (${how}) does not start: ${why}; would help: room for its files in ${tmpdir()}, or another browser, named by ${BROWSER_VARIABLE}`;
}
