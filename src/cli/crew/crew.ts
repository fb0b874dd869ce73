import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { bundled } from '../bundled.ts';
import type { Answer, Job, Work, Works } from './types.ts';

/** Threads that plan and draw beside the one that prints. */
export interface Crew {
  /** Starts its threads, which load what they work with while this one finds out what there is to do. */
  readonly begin: () => void;
  /**
   * Has a job done; of those that wait, the one of the lowest turn comes first, then the one asked for first. A job
   * that fails in its thread is done again in this one, so that its fault comes as if it had been done here.
   */
  readonly run: <Kind extends Work>(work: Kind, given: Works[Kind]['given'], turn: number) => Promise<Works[Kind]['made']>;
  /** Has a job done that is of use later, where a thread has nothing else to do; else not. What comes of it, a fault too, is told nobody. */
  readonly offer: <Kind extends Work>(work: Kind, given: Works[Kind]['given']) => void;
  /** Ends all threads, whatever they do. */
  readonly close: () => Promise<void>;
}

/** More would only share the same cores. */
const MOST_THREADS = 2;

/** Room for what is soon forgotten: drawing makes so much of it that clearing it away takes a seventh of the time, with this room a tenth. */
const YOUNG_MB = 192;

interface Waiting {
  readonly job: Job;
  readonly turn: number;
  readonly settle: (made: Promise<unknown>) => void;
}

/** A crew whose threads start when it begins, or with the first job. */
export function openCrew(threads = Math.min(MOST_THREADS, availableParallelism())): Crew {
  const waiting: Waiting[] = [];
  const idle: Worker[] = [];
  const all: Worker[] = [];

  const next = (thread: Worker): void => {
    const first = waiting.reduce<Waiting | null>((least, one) => (least === null || one.turn < least.turn ? one : least), null);
    if (first === null) { idle.push(thread); return; }
    waiting.splice(waiting.indexOf(first), 1);
    first.settle(give(thread, first.job));
  };
  /** Has a thread do a job, and then the next that waits. */
  const give = (thread: Worker, job: Job): Promise<unknown> => {
    const done = answerOf(thread, job);
    void done.then(() => { next(thread); }, () => { next(thread); });
    return done;
  };
  /** The one that has been idle longest: it had most time to get ready. */
  const free = (): Worker | undefined => idle.shift() ?? (all.length < threads ? newThread(all) : undefined);
  return {
    begin: () => { while (all.length < threads) idle.push(newThread(all)); },
    run: (work, given, turn) => new Promise((resolve) => {
      waiting.push({ job: { work, given }, turn, settle: (made) => { resolve(made.catch(() => inThisThread(work, given)) as never); } });
      const thread = free();
      if (thread !== undefined) next(thread);
    }),
    offer: (work, given) => {
      const thread = free();
      if (thread !== undefined) void give(thread, { work, given });
    },
    close: async () => { await Promise.all(all.map((thread) => thread.terminate())); },
  };
}

/** Work with a crew whose threads start at once, and end with it. */
export async function withCrew<Made>(work: (crew: Crew) => Promise<Made>): Promise<Made> {
  const crew = openCrew();
  crew.begin();
  try {
    return await work(crew);
  } finally {
    await crew.close();
  }
}

function newThread(all: Worker[]): Worker {
  const program = new URL(bundled === null ? 'start-thread.mjs' : 'start-bundled.mjs', import.meta.url);
  const thread = new Worker(program, { workerData: bundled?.folder, resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB } });
  thread.setMaxListeners(0);
  all.push(thread);
  return thread;
}

/** What a thread makes of a job. Fails when the job does, or the thread is lost. */
function answerOf(thread: Worker, job: Job): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const heard = (answer: Answer): void => {
      thread.off('error', reject);
      thread.off('exit', lost);
      if ('made' in answer) resolve(answer.made);
      else reject(new Error(answer.failed));
    };
    const lost = (): void => { reject(new Error('the thread is gone')); };
    thread.once('message', heard);
    thread.once('error', reject);
    thread.once('exit', lost);
    try {
      thread.postMessage(job);
    } catch (error) {
      reject(error instanceof Error ? error : new Error(String(error)));
    }
  });
}

async function inThisThread<Kind extends Work>(work: Kind, given: Works[Kind]['given']): Promise<Works[Kind]['made']> {
  return (await import('./hand.ts')).newHand()(work, given);
}
