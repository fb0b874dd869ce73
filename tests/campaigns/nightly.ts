import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { spawnSync } from 'node:child_process';
import { canMount } from './disks.ts';

/** A campaign, and how often it is run in a night. */
export interface Night {
  readonly name: string;
  readonly count: number;
  /** Why it cannot be run on this machine; null where it can. */
  readonly without: string | null;
}

const linux = (): string | null => (process.platform === 'linux' ? null : 'processes and disks are looked at as Linux shows them');

/** All campaigns by their counts; the quick ones first, so that a night that is broken off has told something. */
export const nights = (): readonly Night[] => [
  { name: 'mutations', count: 10_000, without: null },
  { name: 'guided', count: 5_000, without: null },
  { name: 'works', count: 300, without: null },
  { name: 'cache', count: 500, without: linux() },
  { name: 'disks', count: 1, without: linux() ?? (canMount() ? null : 'this user may not mount a disk') },
  { name: 'browsers', count: 20, without: linux() },
  { name: 'kills', count: 100, without: linux() },
  { name: 'kept-kills', count: 50, without: linux() },
];

/** What came of one campaign. */
export interface Ran extends Night {
  readonly seed: number;
  /** Null where it was not run. */
  readonly code: number | null;
  /** Its lines: figures last. */
  readonly told: string;
}

const runner = fileURLToPath(new URL('./run.ts', import.meta.url));

/** Runs one in a process of its own: what it leaves in memory, or breaks, is not the next one's. */
export function ranAlone(night: Night, seed: number): Ran {
  if (night.without !== null) return { ...night, seed, code: null, told: '' };
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', runner, night.name, String(night.count), String(seed)], { encoding: 'utf8', maxBuffer: 2 ** 28 });
  return { ...night, seed, code: status ?? 1, told: `${stdout}${stderr}` };
}

/** The report in Markdown: a line each with its seed and the call that does it again, then what each told. */
export function reportOf(all: readonly Ran[]): string {
  const how = ({ code, without }: Ran): string => (code === null ? `not run: ${without ?? ''}` : code === 0 ? 'nothing found' : 'faults');
  return [
    '# Campaigns of a night', '', '| campaign | times | seed | outcome | again |', '|---|---|---|---|---|',
    ...all.map((one) => `| ${one.name} | ${one.count} | ${one.seed} | ${how(one)} | \`npm run campaign -- ${one.name} ${one.count} ${one.seed}\` |`),
    ...all.filter(({ code }) => code !== null).flatMap(({ name, told }) => ['', `## ${name}`, '', '```', told.trimEnd(), '```']), '',
  ].join('\n');
}

/** Runs them all and writes the report anew after each. Gives whether any found something. */
export function nightlyCampaign(seed: number, path: string, tell: (line: string) => void, run: (night: Night, seed: number) => Ran = ranAlone, all: readonly Night[] = nights()): boolean {
  const ran: Ran[] = [];
  mkdirSync(dirname(path), { recursive: true });
  for (const night of all) {
    const one = run(night, seed);
    ran.push(one);
    writeFileSync(path, reportOf(ran));
    tell(`${one.name}, ${one.count} times, seed ${seed}: ${one.code === null ? 'not run' : one.code === 0 ? 'nothing found' : 'faults'}`);
  }
  return ran.some(({ code }) => code !== null && code !== 0);
}
