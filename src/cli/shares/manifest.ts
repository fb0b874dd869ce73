import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { isAbsolute, join, normalize } from 'node:path';
import { z } from 'zod';
import { MOST_SHARES, type Share } from './share.ts';

/** A file lies under the folder of its share and nowhere else, whatever a manifest says. */
const inside = (path: string): boolean => !isAbsolute(path) && normalize(path) === path && !path.startsWith('..') && !path.includes('\\');

/** Of 19 sizes in 19 languages on two papers there are some thousand files; no share has so many. Ours. */
const MOST_FILES = 100_000;

const sha256 = z.string().length(64).regex(/^[0-9a-f]{64}$/);

export const manifestSchema = z.object({
  /** Of all that the whole catalogue is made from: texts, words, options, code, browser. */
  catalogue: sha256,
  share: z.int().min(1).max(MOST_SHARES),
  /** What each share makes, the first share first. */
  shares: z.array(z.array(z.object({ item: z.string().max(60), size: z.string().max(60) })).max(MOST_FILES)).min(1).max(MOST_SHARES),
  files: z.array(z.object({ path: z.string().max(1000).refine(inside, 'not inside the folder'), sha256 })).max(MOST_FILES),
});

/** What a share that is done has made: written last, so that a share that was broken off has none. */
export type Manifest = z.infer<typeof manifestSchema>;

/** A manifest and the folder it was found in. */
export interface Found {
  readonly folder: string;
  readonly path: string;
  readonly manifest: Manifest;
}

export const manifestFile = ({ index, count }: Share): string => `share-${index}-of-${count}.json`;

export const manifestText = (manifest: Manifest): string => `${JSON.stringify(manifest, null, 2)}\n`;

/** The manifests in a folder; none where there is no such folder. Throws when one is not as `make` writes it. */
export function manifestsIn(folder: string): readonly Found[] {
  const names = existsSync(folder) ? readdirSync(folder).filter((name) => /^share-\d+-of-\d+\.json$/.test(name)).sort() : [];
  return names.map((name) => ({ folder, path: join(folder, name), manifest: readManifest(join(folder, name)) }));
}

function readManifest(path: string): Manifest {
  const remedy = 'would be right: a file as make --share writes it; make that share again';
  const read = manifestSchema.safeParse(jsonOf(path, remedy));
  if (read.success && read.data.share <= read.data.shares.length) return read.data;
  const place = read.error?.issues[0]?.path.join('.') ?? 'share';
  throw new Error(`${path}: ${place}: not as it was written; ${remedy}`);
}

function jsonOf(path: string, remedy: string): unknown {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    if (error instanceof SyntaxError) throw new Error(`${path}: no JSON (${error.message}); ${remedy}`, { cause: error });
    throw error;
  }
}
