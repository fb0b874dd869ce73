import { existsSync } from 'node:fs';
import { SingleBar } from 'cli-progress';
import { newReckoning, spoken, type Reckoning } from './reckoning.ts';

/** Set by a program that started this one to follow it: the news go there, and work stops when this file appears. */
export const STOP_FILE_VARIABLE = 'FOLDWRIGHT_STOP_FILE';

/** What is told to the program that follows. */
export type ProgressNews =
  | { readonly news: 'size'; readonly total: number }
  | { readonly news: 'done' }
  | { readonly news: 'line'; readonly text: string };

/** Tells how far the work is and how long it may still take, from its beginning. Lines of files go to standard output, all else beside it. */
export interface Progress {
  /** A part of the work, such as a size of an item, that will take about so many units: a picture takes one, about a tenth of a second. */
  part(name: string, units: number): Part;
  /** A line that stays: a file written. */
  line(text: string): void;
  stop(): void;
}

export interface Part {
  /** Now that more is known: it will take so many units in all. */
  expect(units: number): void;
  /** So many units are done. Throws when the work is to stop. */
  done(what: string, units?: number): void;
  end(): void;
}

/** Plain lines come no more often than this, ms. */
const LINE_EVERY = 5000;

export function newProgress(isTerminal: boolean): Progress {
  const stopFile = process.env[STOP_FILE_VARIABLE];
  if (stopFile !== undefined && process.send !== undefined) return followed(stopFile, (news) => { process.send?.(news); });
  return isTerminal ? bar() : lines();
}

/** Tells the files alone. */
export const plainProgress: Pick<Progress, 'line'> = { line: (text) => { process.stdout.write(`${text}\n`); } };

/**
 * Tells another program, part after part: of a later part only when the earlier ones have ended. It is asked to stop by
 * a file, because a program that is busy drawing hears no message.
 */
function followed(stopFile: string, tell: (news: ProgressNews) => void): Progress {
  interface Told { units: number; done: number; isEnded: boolean }
  const parts: Told[] = [];
  const begin = ({ units, done }: Told): void => {
    tell({ news: 'size', total: units });
    for (let unit = 0; unit < done; unit += 1) tell({ news: 'done' });
  };
  return {
    part(_name, units) {
      const told: Told = { units, done: 0, isEnded: false };
      parts.push(told);
      if (parts[0] === told) begin(told);
      return {
        expect: (all) => { told.units = all; },
        done: (_what, some = 1) => {
          if (existsSync(stopFile)) throw new Error('stopped');
          told.done += some;
          if (parts[0] === told) for (let unit = 0; unit < some; unit += 1) tell({ news: 'done' });
        },
        end: () => {
          told.isEnded = true;
          while (parts[0]?.isEnded === true) {
            parts.shift();
            if (parts[0] !== undefined) begin(parts[0]);
          }
        },
      };
    },
    line: (text) => { tell({ news: 'line', text }); },
    stop: () => undefined,
  };
}

function bar(): Progress {
  const shown = new SingleBar({ format: '{bar} {percentage} %  {told}', barsize: 24, hideCursor: true, clearOnComplete: true, stream: process.stderr });
  let isShown = false;
  const show = ({ done, total }: Reckoning, told: string): void => {
    if (!isShown) shown.start(total, done, { told });
    isShown = true;
    shown.setTotal(total);
    shown.update(done, { told });
  };
  return {
    ...reckoned(show),
    // The line stands above the bar, which comes again with the next news.
    line: (text) => {
      if (isShown) process.stderr.write('\r\u001b[2K');
      process.stdout.write(`${text}\n`);
    },
    stop: () => { if (isShown) shown.stop(); },
  };
}

function lines(): Progress {
  let next = -Infinity;
  const show = ({ done, total }: Reckoning, told: string, now: number): void => {
    if (now < next) return;
    next = now + LINE_EVERY;
    process.stderr.write(`foldwright: ${Math.floor((100 * done) / Math.max(1, total))} % ${told}\n`);
  };
  return { ...reckoned(show), ...plainProgress, stop: () => undefined };
}

/** Parts that are added up: `show` hears of all that is done. */
function reckoned(show: (all: Reckoning, told: string, now: number) => void): Pick<Progress, 'part'> {
  const reckoning = newReckoning(performance.now());
  return {
    part(name, units) {
      const part = reckoning.part(units);
      const tell = (what: string): void => {
        const now = performance.now();
        const all = reckoning.all();
        show(all, spoken(`${name}${what === '' ? '' : `, ${what}`}`, all, now), now);
      };
      tell('');
      return {
        expect: part.expect,
        done: (what, some = 1) => { part.done(some); tell(what); },
        end: part.end,
      };
    },
  };
}
