import { SingleBar } from 'cli-progress';

/** Tells how far the work is: a bar on a terminal, plain lines elsewhere. */
export interface Progress {
  start(total: number): void;
  /** One picture or booklet is done. */
  done(name: string): void;
  /** A line that stays: a file written. */
  line(text: string): void;
  stop(): void;
}

export const newProgress = (terminal: boolean): Progress => (terminal ? bar() : plain());

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

const plain = (): Progress => ({
  start: () => undefined,
  done: () => undefined,
  line: (text) => { process.stdout.write(`${text}\n`); },
  stop: () => undefined,
});
