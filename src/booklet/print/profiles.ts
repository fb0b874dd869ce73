import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { endGroup, isAlive } from './processes.ts';

/** The folder a browser keeps its own files in while it runs. */
export interface Profile {
  readonly path: string;
  /** Takes the folder away; what cannot be taken away yet is swept by a later start. */
  remove(): void;
}

/**
 * Makes a folder for a browser's profile, under one for the process that owns it: `<temporary>/foldwright-<user>/browsers/<computer>/<process>/`.
 * What processes that are gone have left there is swept first, browsers too.
 * @throws what the disk says when no folder can be made.
 */
export function newProfile(home: string = profilesHome()): Profile {
  sweepProfiles(home);
  const own = join(home, String(process.pid));
  mkdirSync(own, { recursive: true, mode: 0o700 });
  const path = mkdtempSync(join(own, 'profile-'));
  const remove = (): void => {
    process.off('exit', remove);
    takeAway(path);
    removeEmpty(own);
  };
  process.on('exit', remove);
  return { path, remove };
}

/** Ends the browsers and takes away the profiles of processes that are gone. */
export function sweepProfiles(home: string = profilesHome()): void {
  for (const owner of foldersIn(home)) {
    if (isAlive(Number(owner))) continue;
    const folder = join(home, owner);
    for (const browser of browsersOf(folder)) endGroup(browser);
    takeAway(folder);
  }
}

/**
 * Computers that share a disk keep apart: of another's processes nobody knows whether they live.
 * A folder that someone else made under a name everyone can guess is not used.
 */
function profilesHome(): string {
  const user = process.getuid?.() ?? 0;
  const shared = join(tmpdir(), `foldwright-${process.getuid?.() ?? 'user'}`);
  mkdirSync(shared, { recursive: true, mode: 0o700 });
  const mine = statSync(shared).uid === user ? shared : mkdtempSync(join(tmpdir(), 'foldwright-'));
  return join(mine, 'browsers', hostname());
}

function foldersIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

/** The processes that were started with a profile in the folder, where the system lists them (Linux); elsewhere they end by themselves. */
function browsersOf(folder: string): readonly number[] {
  return foldersIn('/proc').map(Number).filter((id) => Number.isInteger(id) && commandOf(id).includes(`--user-data-dir=${folder}/`));
}

function commandOf(id: number): string {
  try {
    return readFileSync(`/proc/${id}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}

/** A browser that is just ending may still write. */
function takeAway(folder: string): void {
  try {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 50 });
  } catch { /* swept by a later start */ }
}

function removeEmpty(folder: string): void {
  if (foldersIn(folder).length === 0) takeAway(folder);
}
