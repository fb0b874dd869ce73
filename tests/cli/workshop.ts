import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import { said, type Said } from './in-process.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));
const program = join(project, 'src/cli/foldwright.mjs');

/** What a run of the command gave. */
export interface Outcome {
  readonly code: number;
  readonly out: string;
  /** What it complained of. */
  readonly told: string;
  /** Lines that tell how far the work is. */
  readonly progress: readonly string[];
}

const PROGRESS = /^foldwright: \d+ % .*\n/gm;

/** What the command complained of: all that it told but how far it was. How often that comes hangs on the machine. */
export const complaintsIn = (told: string): string => told.replaceAll(PROGRESS, '');

const outcomeOf = ({ code, out, told }: Said): Outcome => ({ code, out, told: complaintsIn(told), progress: told.match(PROGRESS) ?? [] });

/** A temporary folder with its own steps/ and locales/, in which the command is run as a user runs it. */
export interface Workshop {
  /** Its path on the disk. */
  readonly folder: string;
  run(args: readonly string[], env?: Readonly<Record<string, string>>): Promise<Outcome>;
  /** The same without a process of its own, for calls that start no thread and no browser: nothing is loaded anew for each. */
  ask(args: readonly string[], env?: Readonly<Record<string, string>>): Promise<Outcome>;
  read(path: string): Buffer;
  write(path: string, text: string): void;
  /** Puts `now` in the place of `was`, which must stand in the file exactly once. */
  change(path: string, was: string, now: string): void;
  remove(path: string): void;
  /** Paths of all files in the folder, in order. */
  files(): readonly string[];
  close(): void;
}

/** Asks the command and expects one line of complaint, nothing else and no file. */
export async function expectOneComplaint(shop: Workshop, args: readonly string[], told: RegExp, code: 2 | 3 = 2): Promise<void> {
  const before = shop.files();
  const outcome = await shop.ask(args);
  expect(outcome).toMatchObject({ code, out: '' });
  expect(outcome.told.trimEnd()).toMatch(told);
  expect(outcome.told.trimEnd().split('\n')).toHaveLength(1);
  expect(shop.files()).toEqual(before);
}

/** Written beside the folder of texts and put in place: a program that watches reads the old text or the new one, never half of it. */
function writeWhole(path: string, text: string): void {
  const beside = mkdtempSync(join(tmpdir(), 'foldwright-text-'));
  writeFileSync(join(beside, 'text'), text);
  renameSync(join(beside, 'text'), path);
  rmSync(beside, { recursive: true });
}

export function newWorkshop(): Workshop {
  const folder = mkdtempSync(join(tmpdir(), 'foldwright-cli-'));
  for (const name of ['steps', 'locales']) cpSync(join(project, name), join(folder, name), { recursive: true });
  const at = (path: string): string => join(folder, path);
  return {
    folder,
    run: (args, env = {}) => new Promise((resolve) => {
      execFile(process.execPath, [program, ...args], { cwd: folder, env: { ...process.env, ...env } }, (error, out, told) => {
        resolve(outcomeOf({ code: error === null ? 0 : Number(error.code ?? 1), out, told }));
      });
    }),
    ask: async (args, env = {}) => outcomeOf(await said(args, folder, env)),
    read: (path) => readFileSync(at(path)),
    write: (path, text) => { writeWhole(at(path), text); },
    change(path, was, now) {
      const parts = readFileSync(at(path), 'utf8').split(was);
      if (parts.length !== 2) throw new Error(`${path} holds ${parts.length - 1} times: ${was}`);
      writeWhole(at(path), parts.join(now));
    },
    remove: (path) => { rmSync(at(path), { recursive: true }); },
    files: () => readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1).split(sep).join('/'))
      .sort(),
    close: () => { rmSync(folder, { recursive: true, force: true }); },
  };
}
