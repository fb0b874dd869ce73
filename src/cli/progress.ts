import { existsSync } from 'node:fs';
import { SingleBar } from 'cli-progress';

/** Set by a program that started this one to follow it: the news go there, and work stops when this file appears. */
export const STOP_FILE_VARIABLE = 'FOLDWRIGHT_STOP_FILE';

/** What is told to the program that follows. */
export type ProgressNews =
  | { readonly news: 'size'; readonly total: number }
  | { readonly news: 'done' }
  | { readonly news: 'line'; readonly text: string };

/** Tells how far the work is: a bar on a terminal, plain lines elsewhere. */
export interface Progress {
  start(total: number): void;
  /** One picture or booklet is done. */
  done(name: string): void;
  /** A line that stays: a file written. */
  line(text: string): void;
  stop(): void;
}

export function newProgress(terminal: boolean): Progress {
  const stopFile = process.env[STOP_FILE_VARIABLE];
  if (stopFile !== undefined && process.send !== undefined) return followed(stopFile, (news) => { process.send?.(news); });
  return terminal ? bar() : plainProgress;
}

/** A file, because a program that is busy drawing hears no message. */
function followed(stopFile: string, tell: (news: ProgressNews) => void): Progress {
  return {
    start: (total) => { tell({ news: 'size', total }); },
    done: () => {
      if (existsSync(stopFile)) throw new Error('stopped');
      tell({ news: 'done' });
    },
    line: (text) => { tell({ news: 'line', text }); },
    stop: () => undefined,
  };
}

function bar(): Progress {
  const shown = new SingleBar({ format: '{bar} {value}/{total} {name}', barsize: 30, hideCursor: true, clearOnComplete: true });
  const kept: string[] = [];
  return {
    start: (total) => { shown.start(total, 0, { name: '' }); },
    done: (name) => { shown.increment(1, { name }); },
    line: (text) => { kept.push(text); },
    stop: () => {
      shown.stop();
      process.stdout.write(kept.splice(0).map((text) => `${text}\n`).join(''));
    },
  };
}

/** Tells the files alone. */
export const plainProgress: Progress = {
  start: () => undefined,
  done: () => undefined,
  line: (text) => { process.stdout.write(`${text}\n`); },
  stop: () => undefined,
};
