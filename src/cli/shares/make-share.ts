import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { browserMark, chooseBrowser } from '../../booklet/index.ts';
import { contentHash, nothingKept } from '../../keep/index.ts';
import { buildModel } from '../../model/index.ts';
import type { Item } from '../../read/index.ts';
import { withCrew } from '../crew/index.ts';
import { expectedWork } from '../drafts.ts';
import { editionsAsked } from '../editions-asked.ts';
import { textsOf } from '../finished.ts';
import { localeFiles, writeTold } from '../files.ts';
import { keepAsked, ownCode } from '../keeping.ts';
import { makeAnew } from '../make-anew.ts';
import type { MakeOptions } from '../make-options.ts';
import { chosen, itemsNamed, sizesOf } from '../project.ts';
import { divided, type Piece } from './divide.ts';
import { manifestFile, manifestText, type Manifest } from './manifest.ts';
import { shareAsked } from './share.ts';

/** Makes one share of what `make` would make, and writes down last what it has made. Shares are dealt out by content alone: machines that have the same need not talk. */
export async function makeShare(name: string | undefined, asked: string, options: MakeOptions): Promise<void> {
  const share = shareAsked(asked, process.env);
  const items = itemsNamed(name);
  const shares = divided(piecesOf(items, options), share.count);
  const own = shares[share.index - 1] ?? [];
  const catalogue = await catalogueMark(items, options);
  const files: Manifest['files'] = [];
  const written = (path: string, content: string | Uint8Array): void => {
    files.push({ path: relative(options.out, path), sha256: contentHash(content) });
  };
  const keep = keepAsked(options);
  const toMake = items.filter((item) => own.some((piece) => piece.item === item.name));
  if (toMake.length > 0) {
    await withCrew((crew) => makeAnew(name, options, {
      crew,
      keep,
      finished: { of: () => [], record: () => ({ written, printed: () => undefined, done: () => undefined }) },
      before: toMake.map((item) => ({ item: item.name, files: null })),
      sizes: (item) => sizesOf(item).filter((size) => own.some((piece) => piece.item === item.name && piece.size === size)),
    }));
  }
  keep.trim();
  const manifest = { catalogue, share: share.index, shares: shares.map((pieces) => pieces.map(({ item, size }) => ({ item, size }))), files };
  writeTold(join(options.out, manifestFile(share)), manifestText(manifest));
}

function piecesOf(items: readonly Item[], options: MakeOptions): readonly Piece[] {
  const copies = editionsAsked(options).copies.length;
  return items.flatMap((item) => chosen(sizesOf(item), options.size, 'size').map((size) => {
    const model = buildModel(item, size);
    return { item: item.name, size, key: nothingKept.key('piece', item.name, model), work: expectedWork(model, copies) };
  }));
}

/** Where it lies and is kept makes no difference to what is made. */
async function catalogueMark(items: readonly Item[], options: MakeOptions): Promise<string> {
  const texts = items.map(({ name, source }) => [readFileSync(source.file, 'utf8'), textsOf(name)]);
  return nothingKept.key('catalogue', ownCode(), texts, { ...options, out: '', cache: '', share: '' }, browserMark(await chooseBrowser()), localeFiles('locales'));
}
