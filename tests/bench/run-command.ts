import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const program = fileURLToPath(new URL('../../src/cli/foldwright.mjs', import.meta.url));

/** What a run of the command took, with all programs it started; what this system does not tell is null. */
export interface Run {
  readonly wall: number;
  readonly processor: number | null;
  /** Shares of memory that several processes use are counted once. */
  readonly peakMegabytes: number | null;
  readonly out: string;
}

/** Often enough to see a browser's peak, seldom enough to cost little, ms. */
const LOOK_EVERY = 100;

/** Runs the command in a folder. Throws when it fails. */
export function runCommand(args: readonly string[], cwd: string, env: Readonly<Record<string, string>>): Promise<Run> {
  return new Promise((resolve, reject) => {
    const begun = performance.now();
    const child = spawn(process.execPath, [program, ...args], { cwd, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    const seen = watchTree(child.pid ?? 0);
    let [out, told] = ['', ''];
    child.stdout.on('data', (piece: Buffer) => { out += piece.toString(); });
    child.stderr.on('data', (piece: Buffer) => { told += piece.toString(); });
    child.on('error', reject);
    child.on('close', (code) => {
      const { processor, peakMegabytes } = seen.end();
      if (code === 0) resolve({ wall: (performance.now() - begun) / 1000, processor, peakMegabytes, out });
      else reject(new Error(`foldwright ${args.join(' ')} ended with ${code ?? 'a signal'}: ${told}`));
    });
  });
}

interface Seen { readonly processor: number | null; readonly peakMegabytes: number | null }

/** Looks at a process and all below it as long as it runs (Linux: /proc). */
function watchTree(root: number): { readonly end: () => Seen } {
  const ticks = new Map<number, number>();
  let peak = 0;
  const look = (): void => {
    let now = 0;
    for (const id of treeOf(root)) {
      const used = ticksOf(id);
      if (used !== null) ticks.set(id, used);
      now += shareOf(id);
    }
    peak = Math.max(peak, now);
  };
  const timer = setInterval(look, LOOK_EVERY);
  return {
    end: () => {
      clearInterval(timer);
      if (ticks.size === 0) return { processor: null, peakMegabytes: null };
      return { processor: [...ticks.values()].reduce((sum, each) => sum + each, 0) / TICKS_PER_SECOND, peakMegabytes: Math.round(peak / 1024) };
    },
  };
}

/** Of the kernel's clock as it shows it, the same on all Linux systems that Node runs on. */
const TICKS_PER_SECOND = 100;

const textOf = (path: string): string => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
};

const treeOf = (root: number): readonly number[] => {
  const below = textOf(`/proc/${root}/task/${root}/children`).split(' ').filter((id) => id !== '').map(Number);
  return [root, ...below.flatMap(treeOf)];
};

function ticksOf(id: number): number | null {
  const fields = textOf(`/proc/${id}/stat`).split(') ')[1]?.split(' ');
  return fields === undefined ? null : Number(fields[11]) + Number(fields[12]);
}

const shareOf = (id: number): number => Number(/^Pss:\s+(\d+)/m.exec(textOf(`/proc/${id}/smaps_rollup`))?.[1] ?? 0);
