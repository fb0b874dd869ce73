import { spawn, type ChildProcess } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { browsersIn, processesUnder } from '../support/browsers.ts';
import { STOP_FILE_VARIABLE } from '../../src/cli/progress.ts';
import { complaintsIn, newWorkshop, type Workshop } from '../cli/workshop.ts';

const program = fileURLToPath(new URL('../../src/cli/foldwright.mjs', import.meta.url));
const ITEM = 'steps/stool/item.yaml';
const SIZE = 'low';
const MAKE = ['make', 'stool', '--size', SIZE, '--lang', 'en', '--edition', 'words', '--paper', 'a4'];

/** Two states of an item whose booklets differ. */
export type State = 'old' | 'new';
const REVISION: Readonly<Record<State, string>> = { old: 'revision: 101', new: 'revision: 102' };

/** How a build ended, and what it complained of. */
export interface Ended {
  readonly code: number | null;
  readonly told: string;
}

/** A build that goes on. */
export interface Going {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
  /** Comes when the build has told of its progress so many times: of a picture drawn, a page printed, a file written. */
  news(count: number): Promise<void>;
  /** How much it has told so far. */
  readonly told: () => number;
}

/** Builds one booklet again and again, with temporary files in a place of its own. */
export interface Builds {
  readonly shop: Workshop;
  readonly out: string;
  /** Where its builds keep temporary files. */
  readonly temporary: string;
  put(state: State): void;
  start(out?: string): Going;
  /** The files of the booklet by their names, each by its hash. */
  hashes(out?: string): Readonly<Record<string, string>>;
  /** Programs that builds have started and that still run (Linux). */
  running(): readonly number[];
  /** The browsers among them, by their first process. */
  browsers(): readonly number[];
  /** What lies among temporary files. */
  leftovers(): readonly string[];
}

/** `kept` is a folder of the shop in which results are kept; without it all is made anew: what was kept would leave nothing to be killed. */
export function newBuilds(kept: string | null = null): Builds {
  const shop = newWorkshop();
  const temporary = join(shop.folder, 'temporary');
  mkdirSync(temporary);
  const out = join(shop.folder, 'out');
  return {
    shop, out, temporary,
    put: (state) => {
      shop.write(ITEM, shop.read(ITEM).toString().replace(/^revision: \d+/m, REVISION[state]));
    },
    start: (where = out) => going(spawn(process.execPath, [program, ...MAKE, ...(kept === null ? ['--no-cache'] : ['--cache', kept]), '--out', where], { cwd: shop.folder, env: { ...process.env, TMPDIR: temporary, [STOP_FILE_VARIABLE]: join(temporary, 'stop') }, stdio: ['ignore', 'ignore', 'pipe', 'ipc'] })),
    hashes: (where = out) => Object.fromEntries(filesOf(join(where, 'stool', SIZE)).map(([name, bytes]) => [name, createHash('sha256').update(bytes).digest('hex')])),
    running: () => processesUnder(temporary),
    browsers: () => browsersIn(temporary),
    leftovers: () => readdirSync(temporary, { recursive: true, withFileTypes: true }).filter((entry) => entry.name.startsWith('profile-')).map(({ name }) => name),
  };
}

function going(child: ChildProcess): Going {
  let complaints = '';
  let count = 0;
  child.stderr?.on('data', (piece: Buffer) => { complaints += piece.toString('utf8'); });
  child.on('message', () => { child.emit(`news ${(count += 1)}`); });
  const news = (wanted: number): Promise<void> => (count >= wanted ? Promise.resolve() : new Promise((come) => { child.once(`news ${wanted}`, come); }));
  return { child, news, told: () => count, ended: once(child, 'close').then(([code]) => ({ code: code as number | null, told: complaintsIn(complaints) })) };
}

function filesOf(folder: string): readonly (readonly [name: string, bytes: Buffer])[] {
  return existsSync(folder) ? readdirSync(folder).sort().map((name) => [name, readFileSync(join(folder, name))]) : [];
}
