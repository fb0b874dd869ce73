import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { contentHash } from '../../keep/index.ts';
import { writeTold } from '../files.ts';
import { manifestsIn, type Found, type Manifest } from './manifest.ts';

/** Puts the shares of a catalogue together that lie in these folders. What is whole is written; then fails where a share is missing, and tells what it would have made. */
export function gatherCommand(folders: readonly string[], { out }: { readonly out: string }): void {
  const found = folders.flatMap(manifestsIn);
  const { shares } = sameCatalogue(found, folders);
  const missing = shares.flatMap((pieces, index) => {
    const parts = found.filter(({ manifest }) => manifest.share === index + 1);
    const whole = parts.find((part) => harmedFile(part) === null);
    if (whole === undefined) return [missingShare(index + 1, shares.length, pieces, parts[0])];
    for (const { path, sha256 } of whole.manifest.files) putThere(join(whole.folder, path), join(out, path), sha256);
    return [];
  });
  if (missing.length > 0) throw new Error(`${missing.join('; ')}; would be right: the same make with ${missing.length === 1 ? 'that share' : 'those shares'} again, then gather`);
}

/** What all of them say of the whole. Throws where there is none, or where they are of different wholes. */
function sameCatalogue(found: readonly Found[], folders: readonly string[]): Manifest {
  const [first] = found;
  if (first === undefined) throw new Error(`${folders.join(', ')}: no share that is done (share-….json); would be right: the folders that make --share has written to`);
  const other = found.find(({ manifest }) => manifest.catalogue !== first.manifest.catalogue || manifest.shares.length !== first.manifest.shares.length);
  if (other === undefined) return first.manifest;
  throw new Error(`${first.path} and ${other.path} are shares of different builds: texts, options, code, browser or the number of shares differ; would be right: shares of one`);
}

/** A file of a share that is not as it was made, or null. */
const harmedFile = ({ folder, manifest }: Found): string | null => manifest.files.find(({ path, sha256 }) => contentOf(join(folder, path), sha256) === null)?.path ?? null;

/** The content of a file that is as it was made, else null. */
function contentOf(path: string, sha256: string): Uint8Array | null {
  if (!existsSync(path)) return null;
  const content = readFileSync(path);
  return contentHash(content) === sha256 ? content : null;
}

function missingShare(number: number, of: number, pieces: Manifest['shares'][0], harmed: Found | undefined): string {
  const sizes = pieces.map(({ item, size }) => `${item} ${size}`).join(', ');
  return `share ${number} of ${of} ${harmed === undefined ? 'is missing' : `is damaged (${join(harmed.folder, harmedFile(harmed) ?? '')})`}: ${sizes}`;
}

/** What is there already is left alone. */
function putThere(from: string, to: string, sha256: string): void {
  if (contentOf(to, sha256) !== null) return;
  const content = contentOf(from, sha256);
  if (content === null) throw new Error(`${from}: changed while it was gathered; would be right: the same command again`);
  writeTold(to, content);
}
