import { setTimeout as pause } from 'node:timers/promises';
import { newBuilds, type Builds, type Going } from './builds.ts';
import { untilGone } from './outcomes.ts';
import { randomOf } from './random.ts';

/** What a campaign against browsers found. */
export interface BrowserFigures {
  readonly builds: number;
  /** Browsers that were killed. */
  readonly killed: number;
  /** Browsers that were stopped, so that they hang and answer nothing. */
  readonly stopped: number;
  /** Builds whose browser had ended before its moment came. */
  readonly tooLate: number;
  readonly faults: readonly string[];
}

type Blow = 'SIGKILL' | 'SIGSTOP';

/** Every so many builds one hangs: it takes the minutes after which a browser is given up. */
const HANGS_EVERY = 20;

/**
 * Takes a build its browser at a random moment of its life, by killing it or by letting it hang: another one takes its
 * place, and the book is finished as if nothing had been.
 */
export async function browserCampaign(count: number, seed: number, tell: (line: string) => void = () => undefined): Promise<BrowserFigures> {
  const builds = newBuilds();
  const random = randomOf(seed);
  try {
    builds.put('old');
    const { known, life } = await undisturbed(builds);
    tell(`a browser lives ${(life / 1000).toFixed(1)} s`);
    const rounds: { readonly blow: Blow; readonly hit: boolean; readonly faults: readonly string[] }[] = [];
    for (let index = 0; index < count; index++) {
      const blow = index % HANGS_EVERY === HANGS_EVERY - 1 ? 'SIGSTOP' : 'SIGKILL';
      // The first as soon as it is there: that one is hit on any machine.
      rounds.push({ blow, ...await struck(builds, known, blow, index === 0 ? 0 : random() * life) });
      if (index % 10 === 9) tell(`${index + 1} builds, faults: ${rounds.flatMap(({ faults }) => faults).length}`);
    }
    const hit = (blow: Blow): number => rounds.filter((round) => round.hit && round.blow === blow).length;
    return { builds: count, killed: hit('SIGKILL'), stopped: hit('SIGSTOP'), tooLate: rounds.filter((round) => !round.hit).length, faults: rounds.flatMap(({ faults }) => faults) };
  } finally {
    builds.shop.close();
  }
}

/** What comes of a build, and how long its browser lives, ms. */
async function undisturbed(builds: Builds): Promise<{ readonly known: Readonly<Record<string, string>>; readonly life: number }> {
  const going = builds.start();
  await browserOf(builds, going);
  const from = performance.now();
  const { code, told } = await going.ended;
  if (code !== 0) throw new Error(`the first build fails: ${told}`);
  return { known: builds.hashes(), life: performance.now() - from };
}

/** Waits for a build's browser; null when the build ends without one. */
async function browserOf(builds: Builds, { child, ended }: Going): Promise<number | null> {
  for (;;) {
    const [first] = builds.browsers();
    if (first !== undefined) return first;
    if (child.exitCode !== null) return null;
    await Promise.race([pause(20), ended]);
  }
}

async function struck(builds: Builds, known: Readonly<Record<string, string>>, blow: Blow, moment: number): Promise<{ readonly hit: boolean; readonly faults: readonly string[] }> {
  const going = builds.start();
  const browser = await browserOf(builds, going);
  await Promise.race([pause(moment), going.ended]);
  const hit = browser !== null && builds.browsers().includes(browser);
  if (hit) process.kill(browser, blow);
  const { code, told } = await going.ended;
  await untilGone(builds);
  const now = builds.hashes();
  return { hit, faults: [
    ...(code === 0 && told === '' ? [] : [`ended with ${String(code)}: ${told}`]),
    ...Object.keys(known).filter((name) => known[name] !== now[name]).map((name) => `${name} is another`),
    ...builds.running().map((id) => `program ${id} still runs`),
    ...builds.leftovers().map((name) => `the profile ${name} is left`),
  ].map((fault) => `${blow} after ${Math.round(moment)} ms: ${fault}`) };
}
