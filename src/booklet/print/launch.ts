import puppeteer from 'puppeteer';
import type { Browser } from 'puppeteer';
import { setTimeout as pause } from 'node:timers/promises';
import { BROWSER_VARIABLE } from './chooseBrowser.ts';
import type { ChosenBrowser } from './types.ts';

const TRIES = 3;
const PAUSE_MS = 500;

/**
 * Starts the chosen browser, trying again when a busy machine lets it down.
 * @throws one message that says what is missing, when it cannot start at all.
 */
export async function launch(chosen: ChosenBrowser, timeout: number): Promise<Browser> {
  let args = chosen.args;
  for (let left = TRIES - 1; ; left--) {
    try {
      return await start(chosen, args, timeout);
    } catch (error) {
      const reason = String(error instanceof Error ? error.message : error);
      // Ubuntu from 23.10 on lets no ordinary program build a sandbox. Ours shows only our own pages, without scripts or network.
      if (/no usable sandbox/i.test(reason) && !args.includes('--no-sandbox')) args = ['--no-sandbox', ...args];
      else if (left === 0 || missingLibrary(reason) !== undefined) throw new Error(explain(chosen, reason), { cause: error });
      await pause(PAUSE_MS);
    }
  }
}

function start({ path, env }: ChosenBrowser, args: readonly string[], timeout: number): Promise<Browser> {
  return puppeteer.launch({ executablePath: path, headless: 'shell', args: [...args], env, timeout, protocolTimeout: timeout });
}

function missingLibrary(reason: string): string | undefined {
  return /loading shared libraries: ([^:\s]+)/.exec(reason)?.[1];
}

function explain({ path, how }: ChosenBrowser, reason: string): string {
  const library = missingLibrary(reason);
  const why = library === undefined
    ? reason.split('\n').find((line) => line.trim() !== '') ?? 'it gave no reason'
    : `the system's library ${library} is missing; install it with the system's package manager`;
  return `the browser ${path} (${how}) does not start: ${why}. Another browser can be named by ${BROWSER_VARIABLE}`;
}
