import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { unpackBrowser } from './unpackBrowser.ts';
import type { UnpackedBrowser } from './unpackBrowser.ts';

/** All that the choice of a browser asks of the computer; a test gives its own. */
export interface Machine {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: string;
  readonly arch: string;
  /** Programs started by the root user need `--no-sandbox`. */
  readonly isRoot: boolean;
  /** Whether a file is there and may be run. */
  isProgram(path: string): boolean;
  /** Whether a file of any kind is there. */
  isFile(path: string): boolean;
  /** Where puppeteer would keep its own browser, there or not; undefined when it does not know. */
  puppeteerPath(): Promise<string | undefined>;
  /** Unpacks the browser of the npm package, once. */
  unpack(): Promise<UnpackedBrowser>;
}

export function thisMachine(): Machine {
  return {
    env: process.env,
    platform: process.platform,
    arch: process.arch,
    isRoot: process.getuid?.() === 0,
    isProgram,
    isFile: existsSync,
    puppeteerPath,
    unpack: () => unpackBrowser(process.env),
  };
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** Loaded only where it may know of a browser: it is large, and mostly has none. */
async function puppeteerPath(): Promise<string | undefined> {
  const { PUPPETEER_EXECUTABLE_PATH: named, PUPPETEER_CACHE_DIR: folder = join(homedir(), '.cache', 'puppeteer') } = process.env;
  if (named === undefined && !existsSync(folder)) return undefined;
  try {
    return (await import('puppeteer')).default.executablePath();
  } catch {
    return undefined;
  }
}
