import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, watch, type FSWatcher } from 'node:fs';
import { join } from 'node:path';
import { newBuilds, type Builds, type Going, type State } from './builds.ts';
import { isUnfinished, knownOutputs, neither, nextBuild, untilGone, type Known } from './outcomes.ts';
import { randomOf } from './random.ts';

/** What a campaign of kills while results are kept found. */
export interface KeptKillFigures {
  /** Things that a whole build does to the folder of what is kept: a file made, written, renamed. */
  readonly writes: number;
  readonly kills: number;
  /** Builds that were done before their moment came. */
  readonly tooLate: number;
  /** Kills after which an unfinished result lay among those kept. */
  readonly unfinished: number;
  /** Whole results that lay there after a kill, at least and at most. */
  readonly kept: readonly [least: number, most: number];
  /** What must never be: one line each. */
  readonly faults: readonly string[];
}

const HASH_BYTES = 32;

/** The folder of what is kept, and what builds do to it. */
interface Shelves {
  readonly watchers: readonly FSWatcher[];
  /** Waits for that many things to be done to it from now on. */
  next(count: number): Promise<void>;
  readonly done: () => number;
  empty(): void;
  /** Files by their paths: whether each holds what its own hash says, null for one unfinished. */
  results(): ReadonlyMap<string, boolean | null>;
}

/**
 * Kills builds (SIGKILL) while they keep results: at the first, the second, or any thing that they do to the folder of
 * what is kept. Then each result kept is whole, outputs are old or new, and the next build, from what was kept, gives
 * the same bytes as one that was never disturbed.
 */
export async function keptKillCampaign(count: number, seed: number, tell: (line: string) => void = () => undefined): Promise<KeptKillFigures> {
  const builds = newBuilds('kept');
  const random = randomOf(seed);
  const shelves = watched(join(builds.shop.folder, 'kept'));
  try {
    const known = await knownOutputs(builds, () => emptied(shelves));
    const writes = await writesOf(builds, shelves);
    tell(`a build does ${writes} things to what is kept, ${shelves.results().size} results`);
    const rounds: Round[] = [];
    for (let index = 0; index < count; index++) {
      rounds.push(await round(builds, shelves, known, index % 2 === 0 ? 'old' : 'new', 1 + Math.floor(random() * writes)));
      if (index % 10 === 9) tell(`${index + 1} kills, faults: ${rounds.flatMap(({ faults }) => faults).length}`);
    }
    return {
      writes,
      kills: rounds.filter(({ hit }) => hit).length,
      tooLate: rounds.filter(({ hit }) => !hit).length,
      unfinished: rounds.filter(({ unfinished }) => unfinished).length,
      kept: [Math.min(...rounds.map(({ kept }) => kept)), Math.max(...rounds.map(({ kept }) => kept))],
      faults: rounds.flatMap(({ faults }) => faults),
    };
  } finally {
    for (const watcher of shelves.watchers) watcher.close();
    builds.shop.close();
  }
}

/** All 256 shelves are there from the beginning, so that nothing done to one is missed. */
function watched(folder: string): Shelves {
  const paths = Array.from({ length: 256 }, (_, index) => join(folder, index.toString(16).padStart(2, '0')));
  let done = 0;
  const waiting = new Set<() => void>();
  const hear = (): void => {
    done += 1;
    for (const look of [...waiting]) look();
  };
  for (const path of paths) mkdirSync(path, { recursive: true });
  const files = (): readonly string[] => paths.flatMap((path) => readdirSync(path).map((name) => join(path, name)));
  return {
    watchers: paths.map((path) => watch(path, hear)),
    done: () => done,
    next: (count) => new Promise((come) => {
      const last = done + count;
      const look = (): void => {
        if (done < last) return;
        waiting.delete(look);
        come();
      };
      waiting.add(look);
    }),
    empty: () => { for (const path of files()) rmSync(path); },
    results: () => new Map(files().map((path) => [path, isUnfinished(path) ? null : isWhole(readFileSync(path))])),
  };
}

const isWhole = (bytes: Buffer): boolean => createHash('sha256').update(bytes.subarray(HASH_BYTES)).digest().equals(bytes.subarray(0, HASH_BYTES));

/** How much a whole build does; what is heard of after its end is not counted, so that every moment up to there comes. */
async function writesOf(builds: Builds, shelves: Shelves): Promise<number> {
  await emptied(shelves);
  const before = shelves.done();
  builds.put('old');
  const { code, told } = await builds.start().ended;
  if (code !== 0) throw new Error(`a build that keeps results fails: ${told}`);
  return shelves.done() - before;
}

/** Takes all results away; what this does to the shelves is heard before it is over. */
async function emptied(shelves: Shelves): Promise<void> {
  if (shelves.results().size === 0) return;
  const heard = shelves.next(shelves.results().size);
  shelves.empty();
  await heard;
}

interface Round {
  readonly hit: boolean;
  readonly unfinished: boolean;
  readonly kept: number;
  readonly faults: readonly string[];
}

async function round(builds: Builds, shelves: Shelves, known: Known, state: State, writes: number): Promise<Round> {
  await emptied(shelves);
  builds.put(state);
  const moment = shelves.next(writes);
  const going: Going = builds.start();
  await Promise.race([moment, going.ended]);
  const hit = going.child.exitCode === null;
  going.child.kill('SIGKILL');
  await going.ended;
  await untilGone(builds);
  const results = [...shelves.results()];
  const faults = [
    ...builds.running().map((id) => `program ${id} still runs`),
    ...neither(builds, known),
    ...results.filter(([, whole]) => whole === false).map(([path]) => `${path} is kept and not whole`),
    ...await nextBuild(builds, state, known),
  ];
  return {
    hit, unfinished: results.some(([, whole]) => whole === null), kept: results.filter(([, whole]) => whole === true).length,
    faults: faults.map((fault) => `${state}, after ${writes} things done to what is kept: ${fault}`),
  };
}
