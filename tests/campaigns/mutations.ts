import { FaultError, type Fault } from '../../src/read/index.ts';
import { catalogueTime, timed } from '../support/yardstick.ts';
import { damaged } from './damage.ts';
import { oddNumber } from './figures.ts';
import { oneOf, randomOf } from './random.ts';
import { subjects, type Subject, type Thorough } from './subjects.ts';

/** Longest reading of one file, ms of this process's own time, and the most memory, bytes. */
const LONGEST = 20 * catalogueTime;
const MOST_MEMORY = 500 * 2 ** 20;

/** How one damaged file was taken. */
export interface Taken {
  readonly how: 'same' | 'accepted' | 'refused' | 'escaped';
  /** Milliseconds of processor time. */
  readonly time: number;
  readonly why: string;
}

export interface MutationFigures {
  readonly tried: number;
  readonly same: number;
  readonly accepted: number;
  readonly refused: number;
  readonly slowest: number;
  /** Most memory that the process held, MB. */
  readonly memory: number;
  readonly faults: readonly string[];
}

/**
 * Damages the demo's files at random and has them read; accepted items are built and checked in every size. A file is
 * refused with place and remedy, or all that comes of it is finite. The same seed gives the same files.
 */
export function mutationCampaign(count: number, seed: number, tell: (line: string) => void = () => undefined, thorough: Thorough = 'every size'): Promise<MutationFigures> {
  const random = randomOf(seed);
  const all = subjects(thorough);
  const taken: Taken[] = [];
  for (let index = 0; index < count; index++) {
    const subject = all[index % all.length] ?? oneOf(random, all);
    const text = damaged(random, subject.text);
    const one = take(subject, text);
    taken.push(one);
    if (one.how === 'escaped') tell(`${index} ${subject.path}: ${one.why}`);
    if (index % 500 === 499) tell(`${index + 1} tried`);
  }
  const of = (how: Taken['how']): number => taken.filter((one) => one.how === how).length;
  return Promise.resolve({
    tried: count, same: of('same'), accepted: of('accepted'), refused: of('refused'),
    slowest: Math.round(Math.max(...taken.map(({ time }) => time))), memory: Math.round(process.resourceUsage().maxRSS / 1024),
    faults: [...new Set(taken.filter(({ how }) => how === 'escaped').map(({ why }) => why))],
  });
}

/** Has a text read in the place of a subject's file. */
export function take({ path, text: good, read }: Subject, text: string): Taken {
  if (text === good) return { how: 'same', time: 0, why: '' };
  const before = process.memoryUsage.rss();
  const { answer: found, time } = timed(() => outcome(read, text, path));
  const grown = process.memoryUsage.rss() - before;
  if (time > LONGEST) return { how: 'escaped', time, why: `${path}: took ${Math.round(time)} ms` };
  if (grown > MOST_MEMORY) return { how: 'escaped', time, why: `${path}: took ${Math.round(grown / 2 ** 20)} MB` };
  return { ...found, time };
}

function outcome(read: (text: string) => unknown, text: string, path: string): Omit<Taken, 'time'> {
  try {
    const odd = oddNumber(read(text), path);
    return odd === null ? { how: 'accepted', why: '' } : { how: 'escaped', why: `accepted, with ${odd}` };
  } catch (error) {
    if (error instanceof FaultError) return error.faults.every(isPlain) ? { how: 'refused', why: '' } : { how: 'escaped', why: `a fault without place or remedy: ${error.message}` };
    if (error instanceof Error && error.constructor === Error && /^locales\/\S*:\d+:\d+ .*found .*; .*\S$/.test(error.message)) return { how: 'refused', why: '' };
    return { how: 'escaped', why: `${path}: ${error instanceof Error ? `${error.name}: ${error.message.slice(0, 200)} ${place(error)}` : String(error)}` };
  }
}

/** Where in our own code it was thrown. */
const place = (error: Error): string => /\(?(?:file:\/\/)?\S*\/(src\/[^\s)]+)/.exec(error.stack ?? '')?.[1] ?? '';

const isPlain = ({ position: { line, column }, found, remedy }: Fault): boolean =>
  line >= 1 && column >= 1 && found !== '' && remedy !== '' && !/[\n\r]/.test(`${found}${remedy}`);
