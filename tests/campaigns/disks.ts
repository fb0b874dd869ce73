import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { newBuilds, type Builds, type Ended } from './builds.ts';
import { untilGone } from './outcomes.ts';

/** A build on a disk that will not take it: how it ended, and whether what stood there before still stands there whole. */
export interface DiskFigures {
  readonly disk: string;
  readonly code: number | null;
  readonly told: string;
  readonly faults: readonly string[];
}

/** Whether this user may mount a small disk here (Linux, root). */
export function canMount(): boolean {
  const builds = newBuilds();
  const place = join(builds.shop.folder, 'small');
  mkdirSync(place);
  try {
    mount(place, 'size=64k');
    unmount(place);
    return true;
  } catch {
    return false;
  } finally {
    builds.shop.close();
  }
}

interface Disk {
  readonly disk: string;
  readonly of: 'outputs' | 'temporary' | 'kept';
  readonly options: string;
  readonly then: 'read-only' | 'filled' | 'as it is';
}

/** Disks that are full at once, part of the way, or cannot be written at all; for outputs and for temporary files. */
const DISKS: readonly Disk[] = [
  { disk: 'outputs, read-only', of: 'outputs', options: 'size=32m', then: 'read-only' },
  { disk: 'outputs, no room', of: 'outputs', options: 'size=32m', then: 'filled' },
  { disk: 'outputs, room for a part', of: 'outputs', options: 'size=700k', then: 'as it is' },
  { disk: 'temporary files, read-only', of: 'temporary', options: 'size=1m', then: 'read-only' },
  { disk: 'temporary files, no room', of: 'temporary', options: 'size=1m', then: 'filled' },
];

/** Disks for results that are kept: a build that cannot keep any succeeds all the same, and says nothing of it. */
const KEPT: readonly Disk[] = [
  { disk: 'kept results, read-only', of: 'kept', options: 'size=32m', then: 'read-only' },
  { disk: 'kept results, no room', of: 'kept', options: 'size=1m', then: 'filled' },
  { disk: 'kept results, room for a part', of: 'kept', options: 'size=300k', then: 'as it is' },
];

/** Builds onto small disks, with the old outputs there where they fit; then onto one with room. */
export async function diskCampaign(_count = 0, _seed = 0, tell: (line: string) => void = () => undefined): Promise<{ readonly disks: readonly DiskFigures[]; readonly faults: readonly string[] }> {
  const builds = newBuilds();
  try {
    builds.put('old');
    await mustBuild(builds);
    const disks: DiskFigures[] = [];
    for (const disk of DISKS) {
      disks.push(await onDisk(builds, disk));
      tell(JSON.stringify(disks.at(-1)));
    }
    builds.put('new');
    await mustBuild(builds);
    for (const disk of KEPT) {
      disks.push(await keptOn(disk, builds.hashes()));
      tell(JSON.stringify(disks.at(-1)));
    }
    return { disks, faults: disks.flatMap(({ disk, faults }) => faults.map((fault) => `${disk}: ${fault}`)) };
  } finally {
    builds.shop.close();
  }
}

/** A build whose kept results go to a disk that will not take them; `known` is what comes of it elsewhere. */
async function keptOn({ disk, options, then }: Disk, known: Readonly<Record<string, string>>): Promise<DiskFigures> {
  const builds = newBuilds('kept');
  const place = join(builds.shop.folder, 'kept');
  mkdirSync(place);
  mount(place, options);
  try {
    if (then === 'filled') fill(place);
    if (then === 'read-only') execFileSync('mount', ['-o', 'remount,ro', place]);
    builds.put('new');
    const ended = await builds.start().ended;
    const now = builds.hashes();
    return { disk, ...ended, faults: [
      ...(ended.code === 0 && ended.told === '' ? [] : [`ended with ${String(ended.code)}: ${ended.told}`]),
      ...Object.keys(known).filter((name) => known[name] !== now[name]).map((name) => `${name} is another`),
      ...readdirSync(place, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.unfinished')).map((name) => `${name} is left`),
      ...builds.leftovers().map((name) => `${name} is left`),
    ] };
  } finally {
    unmount(place);
    builds.shop.close();
  }
}

async function onDisk(builds: Builds, { disk, of, options, then }: Disk): Promise<DiskFigures> {
  const place = of === 'temporary' ? builds.temporary : join(builds.shop.folder, 'small');
  const out = of === 'temporary' ? builds.out : place;
  mkdirSync(place, { recursive: true });
  mount(place, options);
  try {
    if (of === 'outputs') asMuchAsFits(builds.out, place);
    const before = builds.hashes(out);
    if (then === 'filled') fill(place);
    if (then === 'read-only') execFileSync('mount', ['-o', 'remount,ro', place]);
    builds.put('new');
    const ended = await builds.start(out).ended;
    await untilGone(builds);
    return { disk, ...ended, faults: wrong(builds, before, builds.hashes(out), ended) };
  } finally {
    unmount(place);
  }
}

function asMuchAsFits(from: string, place: string): void {
  try {
    execFileSync('cp', ['-r', `${from}/.`, place], { stdio: 'ignore' });
  } catch { /* the disk is full */ }
}

function fill(place: string): void {
  try {
    execFileSync('dd', ['if=/dev/zero', `of=${join(place, 'filler')}`, 'bs=4k'], { stdio: 'ignore' });
  } catch { /* the disk is full, as it should be */ }
}

/** The old outputs stay as they are, or are new ones; nothing unfinished stays; the end is told in one line, as the machine's. */
function wrong(builds: Builds, before: Readonly<Record<string, string>>, now: Readonly<Record<string, string>>, { code, told }: Ended): readonly string[] {
  return [
    ...(code === 3 ? [] : [`ended with ${String(code)}`]),
    ...(/^foldwright: .*; would (be right|help): .*\n$/.test(told) ? [] : [`told: ${told}`]),
    ...Object.keys(before).filter((name) => now[name] === undefined).map((name) => `${name} is gone`),
    ...Object.keys(now).filter((name) => name.endsWith('.unfinished')).map((name) => `${name} is left`),
    ...builds.leftovers().map((name) => `${name} is left`),
    ...builds.running().map((id) => `program ${id} still runs`),
  ];
}

async function mustBuild(builds: Builds): Promise<void> {
  const { code, told } = await builds.start().ended;
  if (code !== 0) throw new Error(`a build with room fails: ${told}`);
}

const mount = (place: string, options: string): void => { execFileSync('mount', ['-t', 'tmpfs', '-o', options, 'tmpfs', place], { stdio: 'ignore' }); };
const unmount = (place: string): void => { execFileSync('umount', ['-l', place], { stdio: 'ignore' }); };
