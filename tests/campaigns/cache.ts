import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openKeep } from '../../src/keep/index.ts';
import { newBuilds } from './builds.ts';
import { oneOf, randomOf } from './random.ts';

export interface CacheFigures {
  /** Results that a build keeps. */
  readonly kept: number;
  readonly damages: number;
  /** Damages after which the result was not taken; after all others it came back as it was. */
  readonly refused: number;
  /** Results that were damaged all at once before the last build. */
  readonly before: number;
  readonly faults: readonly string[];
}

/** Damages that disks and crashes do: a byte, a run of bytes, an end that is missing, one that is too much, nothing at all left. */
const DAMAGES: readonly ((random: () => number, bytes: Buffer) => Buffer)[] = [
  (random, bytes) => put(bytes, at(random, bytes), Buffer.from([Math.floor(random() * 256)])),
  (random, bytes) => put(bytes, at(random, bytes), Buffer.alloc(1 + Math.floor(random() * 4096))),
  (random, bytes) => bytes.subarray(0, at(random, bytes)),
  (random, bytes) => Buffer.concat([bytes, Buffer.alloc(1 + Math.floor(random() * 64), random() * 256)]),
  () => Buffer.alloc(0),
];

const at = (random: () => number, bytes: Buffer): number => Math.floor(random() * bytes.length);

function put(bytes: Buffer, from: number, now: Buffer): Buffer {
  const changed = Buffer.from(bytes);
  now.copy(changed, from);
  return changed;
}

/** Damages what a build has kept at random bytes, and asks for it; then damages a third of it at once and builds from the rest. */
export async function cacheCampaign(count: number, seed: number, tell: (line: string) => void = () => undefined): Promise<CacheFigures> {
  const builds = newBuilds('kept');
  const random = randomOf(seed);
  try {
    const folder = join(builds.shop.folder, 'kept');
    mkdirSync(folder);
    builds.put('old');
    const first = await builds.start().ended;
    if (first.code !== 0) throw new Error(`the first build fails: ${first.told}`);
    const known = builds.hashes();
    const keys = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map(({ name, parentPath }) => parentPath.slice(folder.length + 1) + name).sort();
    tell(`${keys.length} results are kept`);
    const faults: string[] = [];
    let refused = 0;
    for (let index = 0; index < count; index++) {
      const key = oneOf(random, keys);
      const path = join(folder, key.slice(0, 2), key.slice(2));
      const good = readFileSync(path);
      writeFileSync(path, oneOf(random, DAMAGES)(random, good));
      const read = openKeep({ folder, code: '', limit: Infinity }).read(key);
      if (read === null) refused += 1;
      else if (!good.subarray(32).equals(read)) faults.push(`${key}: comes back damaged`);
      writeFileSync(path, good);
    }
    const damaged = keys.filter(() => random() < 1 / 3);
    for (const key of damaged) {
      const path = join(folder, key.slice(0, 2), key.slice(2));
      writeFileSync(path, oneOf(random, DAMAGES)(random, readFileSync(path)));
    }
    rmSync(builds.out, { recursive: true });
    const { code, told } = await builds.start().ended;
    const now = builds.hashes();
    if (code !== 0) faults.push(`a build from damaged results fails: ${told}`);
    faults.push(...Object.keys(known).filter((name) => known[name] !== now[name]).map((name) => `${name} is another`));
    return { kept: keys.length, damages: count, refused, before: damaged.length, faults };
  } finally {
    builds.shop.close();
  }
}
