import { setTimeout as pause } from 'node:timers/promises';
import { newBuilds, type Builds, type State } from './builds.ts';
import { randomOf } from './random.ts';

/** What a campaign of kills found. */
export interface KillFigures {
  readonly kills: number;
  /** Builds that were done before their moment came. */
  readonly tooLate: number;
  /** Kills that hit a build whose browser was running. */
  readonly withBrowser: number;
  /** Longest time until everything that a killed build had started was gone, ms. */
  readonly slowestEnd: number;
  /** Kills after which an unfinished file lay beside the outputs. */
  readonly unfinished: number;
  /** What must never be: one line each. */
  readonly faults: readonly string[];
}

/** A program that a killed build started is waited for so long, ms. */
const LONGEST_END = 120_000;

interface Known { readonly files: Readonly<Record<State, Readonly<Record<string, string>>>>; readonly time: number }

/**
 * Kills builds (SIGKILL) at random moments and looks what is left: each output old or new and whole, no program that
 * still runs; after all of it the next build succeeds and no profile is left. In every fifth round two builds of the
 * same booklet run at once, of which one is killed; the other must succeed.
 */
export async function killCampaign(count: number, seed: number, tell: (line: string) => void = () => undefined): Promise<KillFigures> {
  const builds = newBuilds();
  const random = randomOf(seed);
  const rounds: Round[] = [];
  const known = await knownOutputs(builds);
  tell(`a build takes ${(known.time / 1000).toFixed(1)} s; ${Object.keys(known.files.old).length} outputs`);
  try {
    for (let index = 0; index < count; index++) {
      rounds.push(await round(builds, known, { state: index % 2 === 0 ? 'old' : 'new', moment: random() * known.time, twoAtOnce: index % 5 === 4 }));
      if (index % 10 === 9) tell(`${index + 1} kills, faults: ${rounds.flatMap(({ faults }) => faults).length}`);
    }
    return figures(rounds, await aftermath(builds, known));
  } finally {
    builds.shop.close();
  }
}

async function knownOutputs(builds: Builds): Promise<Known> {
  const files: Partial<Record<State, Readonly<Record<string, string>>>> = {};
  let time = 0;
  for (const state of ['new', 'old'] as const) {
    builds.put(state);
    const from = performance.now();
    const { code, told } = await builds.start().ended;
    if (code !== 0) throw new Error(`the first build fails: ${told}`);
    time = performance.now() - from;
    files[state] = builds.hashes();
  }
  return { files: { old: files.old ?? {}, new: files.new ?? {} }, time };
}

interface Round {
  readonly hit: boolean;
  readonly withBrowser: boolean;
  readonly ended: number;
  readonly unfinished: boolean;
  readonly faults: readonly string[];
}

async function round(builds: Builds, known: Known, { state, moment, twoAtOnce }: { state: State; moment: number; twoAtOnce: boolean }): Promise<Round> {
  builds.put(state);
  const other = twoAtOnce ? builds.start() : null;
  const { child, ended } = builds.start();
  await Promise.race([pause(moment), ended]);
  const hit = child.exitCode === null;
  const withBrowser = builds.running().length > (twoAtOnce ? 2 : 1);
  child.kill('SIGKILL');
  await ended;
  const failed = await other?.ended;
  const from = performance.now();
  while (builds.running().length > 0 && performance.now() - from < LONGEST_END) await pause(20);
  const after = performance.now() - from;
  const faults = [
    ...builds.running().map((id) => `program ${id} still runs`),
    ...(failed !== undefined && failed.code !== 0 ? [`the other build fails: ${failed.told}`] : []),
    ...(failed !== undefined ? notThese(builds, known.files[state]) : []),
    ...neither(builds, known),
  ];
  return { hit, withBrowser: hit && withBrowser, ended: after, unfinished: Object.keys(builds.hashes()).some(isUnfinished), faults: faults.map((fault) => `${state}, ${Math.round(moment)} ms${twoAtOnce ? ', two at once' : ''}: ${fault}`) };
}

const isUnfinished = (name: string): boolean => name.endsWith('.unfinished');

/** Outputs that are neither the old ones nor the new ones, or missing. */
function neither(builds: Builds, { files }: Known): readonly string[] {
  const now = builds.hashes();
  return Object.keys(files.old).filter((name) => now[name] !== files.old[name] && now[name] !== files.new[name]).map((name) => `${name} is neither old nor new`);
}

function notThese(builds: Builds, files: Readonly<Record<string, string>>): readonly string[] {
  const now = builds.hashes();
  return Object.keys(files).filter((name) => now[name] !== files[name]).map((name) => `${name} is not the one that was built`);
}

/** After all kills: the next build succeeds, and nothing is left of those before. */
async function aftermath(builds: Builds, known: Known): Promise<readonly string[]> {
  builds.put('new');
  const { code, told } = await builds.start().ended;
  return [
    ...(code === 0 ? [] : [`the next build fails: ${told}`]),
    ...notThese(builds, known.files.new),
    ...Object.keys(builds.hashes()).filter(isUnfinished).map((name) => `${name} is left`),
    ...builds.leftovers().map((name) => `the profile ${name} is left`),
  ];
}

function figures(rounds: readonly Round[], last: readonly string[]): KillFigures {
  return {
    kills: rounds.filter(({ hit }) => hit).length,
    tooLate: rounds.filter(({ hit }) => !hit).length,
    withBrowser: rounds.filter(({ withBrowser }) => withBrowser).length,
    slowestEnd: Math.round(Math.max(0, ...rounds.map(({ ended }) => ended))),
    unfinished: rounds.filter(({ unfinished }) => unfinished).length,
    faults: [...rounds.flatMap(({ faults }) => faults), ...last],
  };
}
