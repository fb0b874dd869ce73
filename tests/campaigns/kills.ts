import { setTimeout as pause } from 'node:timers/promises';
import { newBuilds, type Builds, type Going, type State } from './builds.ts';
import { isUnfinished, knownOutputs, neither, nextBuild, notThese, untilGone, type Known } from './outcomes.ts';
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
  tell(`a build takes ${((known.timeline.at(-1) ?? 0) / 1000).toFixed(1)} s and tells ${known.timeline.length - 1} things; ${Object.keys(known.files.old).length} outputs`);
  try {
    for (let index = 0; index < count; index++) {
      rounds.push(await round(builds, known, { state: index % 2 === 0 ? 'old' : 'new', moment: momentIn(known, random), twoAtOnce: index % 5 === 4 }));
      if (index % 10 === 9) tell(`${index + 1} kills, faults: ${rounds.flatMap(({ faults }) => faults).length}`);
    }
    return figures(rounds, await nextBuild(builds, 'new', known));
  } finally {
    builds.shop.close();
  }
}

/** A moment in the progress of a build: so much of the time between one thing that it tells and the next. */
interface Moment {
  /** Things told before; at the first nothing has been. */
  readonly after: number;
  /** ms. */
  readonly later: number;
}

/** Drawn evenly over the time of a build, and told by its progress, so that a build that is slower or faster is hit at the same place. */
function momentIn({ timeline }: Known, random: () => number): Moment {
  const time = random() * (timeline.at(-1) ?? 0);
  const next = timeline.findIndex((each) => each > time);
  return { after: next - 1, later: time - (timeline[next - 1] ?? 0) };
}

/** Waits for a moment of a build, or for its end. What is told next is not waited beyond: the last comes before the build ends. */
async function untilMoment({ news, ended }: Going, { after, later }: Moment): Promise<void> {
  await Promise.race([news(after), ended]);
  await Promise.race([pause(later), news(after + 1), ended]);
}

interface Round {
  readonly hit: boolean;
  readonly withBrowser: boolean;
  readonly ended: number;
  readonly unfinished: boolean;
  readonly faults: readonly string[];
}

async function round(builds: Builds, known: Known, { state, moment, twoAtOnce }: { state: State; moment: Moment; twoAtOnce: boolean }): Promise<Round> {
  builds.put(state);
  const other = twoAtOnce ? builds.start() : null;
  const going = builds.start();
  const { child, ended } = going;
  await untilMoment(going, moment);
  const hit = child.exitCode === null;
  const withBrowser = builds.running().length > (twoAtOnce ? 2 : 1);
  child.kill('SIGKILL');
  await ended;
  const failed = await other?.ended;
  const after = await untilGone(builds);
  const faults = [
    ...builds.running().map((id) => `program ${id} still runs`),
    ...(failed !== undefined && failed.code !== 0 ? [`the other build fails: ${failed.told}`] : []),
    ...(failed !== undefined ? notThese(builds, known.files[state]) : []),
    ...neither(builds, known),
  ];
  return { hit, withBrowser: hit && withBrowser, ended: after, unfinished: Object.keys(builds.hashes()).some(isUnfinished), faults: faults.map((fault) => `${state}, ${Math.round(moment.later)} ms after ${moment.after} told${twoAtOnce ? ', two at once' : ''}: ${fault}`) };
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
