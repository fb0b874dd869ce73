import { setTimeout as pause } from 'node:timers/promises';
import type { Builds, State } from './builds.ts';

/** What whole builds come to: their files by hash, and when they told of their progress, ms from the start, which is the first. */
export interface Known {
  readonly files: Readonly<Record<State, Readonly<Record<string, string>>>>;
  readonly timeline: readonly [number, ...number[]];
}

/** A program that a killed build started is waited for so long, ms. */
const LONGEST_END = 120_000;

/** Builds both states once, `old` last. Where results are kept, `forget` takes them away before each: a booklet tells which earlier print it replaces. */
export async function knownOutputs(builds: Builds, forget: () => Promise<void> = () => Promise.resolve()): Promise<Known> {
  const files: Partial<Record<State, Readonly<Record<string, string>>>> = {};
  let timeline: [number, ...number[]] = [0];
  for (const state of ['new', 'old'] as const) {
    await forget();
    builds.put(state);
    const from = performance.now();
    const { child, ended } = builds.start();
    const times: [number, ...number[]] = [0];
    child.on('message', () => { times.push(performance.now() - from); });
    const { code, told } = await ended;
    if (code !== 0) throw new Error(`the first build fails: ${told}`);
    if (times.length < 2) throw new Error('the first build tells nothing of its progress');
    files[state] = builds.hashes();
    timeline = times;
  }
  return { files: { old: files.old ?? {}, new: files.new ?? {} }, timeline };
}

/** Waits until nothing that builds have started still runs, ms; it may take long, and then some still do. */
export async function untilGone(builds: Builds): Promise<number> {
  const from = performance.now();
  while (builds.running().length > 0 && performance.now() - from < LONGEST_END) await pause(20);
  return performance.now() - from;
}

export const isUnfinished = (name: string): boolean => name.endsWith('.unfinished');

/** Outputs that are neither the old ones nor the new ones, or missing. */
export function neither(builds: Builds, { files }: Pick<Known, 'files'>): readonly string[] {
  const now = builds.hashes();
  return Object.keys(files.old).filter((name) => now[name] !== files.old[name] && now[name] !== files.new[name]).map((name) => `${name} is neither old nor new`);
}

export function notThese(builds: Builds, files: Readonly<Record<string, string>>): readonly string[] {
  const now = builds.hashes();
  return Object.keys(files).filter((name) => now[name] !== files[name]).map((name) => `${name} is not the one that was built`);
}

/** The next build succeeds and makes what it should, and nothing is left of those before. */
export async function nextBuild(builds: Builds, state: State, { files }: Pick<Known, 'files'>): Promise<readonly string[]> {
  builds.put(state);
  const { code, told } = await builds.start().ended;
  return [
    ...(code === 0 ? [] : [`the next build fails: ${told}`]),
    ...notThese(builds, files[state]),
    ...Object.keys(builds.hashes()).filter(isUnfinished).map((name) => `${name} is left`),
    ...builds.leftovers().map((name) => `the profile ${name} is left`),
  ];
}
