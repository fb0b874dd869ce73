import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { isAbsolute, join, normalize } from 'node:path';
import { z } from 'zod';
import type { Share } from './share.ts';

/** A file lies under the folder of its share and nowhere else, whatever a manifest says. */
const inside = (path: string): boolean => !isAbsolute(path) && normalize(path) === path && !path.startsWith('..') && !path.includes('\\');

const schema = z.object({
  /** Of all that the whole catalogue is made from: texts, words, options, code, browser. */
  catalogue: z.string().regex(/^[0-9a-f]{64}$/),
  share: z.number().int().min(1),
  /** What each share makes, the first share first. */
  shares: z.array(z.array(z.object({ item: z.string(), size: z.string() }))).min(1),
  files: z.array(z.object({ path: z.string().refine(inside, 'not inside the folder'), sha256: z.string().regex(/^[0-9a-f]{64}$/) })),
});

/** What a share that is done has made: written last, so that a share that was broken off has none. */
export type Manifest = z.infer<typeof schema>;

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
  const read = schema.safeParse(jsonOf(path, remedy));
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
