import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { openPrinter, PAPER_SIZES, sheetDocument, type Paper, type PrintDocument, type Printer } from '../booklet/index.ts';
import { checkModel } from '../check/index.ts';
import { markingSheets, sheetWhite, type Picture } from '../draw/index.ts';
import { buildModel, type Model } from '../model/index.ts';
import type { Item } from '../read/index.ts';
import { makeFolder, writeWhole } from './files.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';

export interface SheetsOptions {
  readonly size?: readonly string[];
  readonly paper?: readonly string[];
  readonly out: string;
}

const PAPERS: readonly Paper[] = ['a4', 'letter'];

/** One set of sheets, drawn and not yet printed. */
export interface SheetSet {
  readonly file: string;
  readonly pictures: readonly Picture[];
  readonly document: PrintDocument;
}

/** Prints the marking sheets of an item, a file for each size and paper. What can be refused is refused before anything is written. */
export async function sheetsCommand(name: string, options: SheetsOptions): Promise<void> {
  const sets = itemsNamed(name).flatMap((item) => {
    const papers = chosen(PAPERS, options.paper, 'paper');
    return chosen(sizesOf(item), options.size, 'size').flatMap((size) => {
      const model = soundModel(item, size);
      return papers.map((paper) => sheetSet(item, model, paper, options.out));
    });
  });
  for (const { file } of sets) makeFolder(join(file, '..'));
  const printer = await openPrinter({ langs: ['en'] });
  try {
    for (const set of sets) await printSet(printer, set);
  } finally {
    await printer.close();
  }
}

/** The model of a size. Throws when one of its checks fails: nobody shall cut by the sheets of an item that is not proven. */
export function soundModel(item: Item, size: string): Model {
  const model = buildModel(item, size);
  const failed = checkModel(model).findings.filter((finding) => finding.verdict === 'fail');
  if (failed.length === 0) return model;
  throw new Error(`${item.source.file}: ${item.name} ${size} fails ${failed.map((finding) => finding.name).join(', ')}; see foldwright check ${item.name}`);
}

/** The set as it is printed; the mark on every sheet changes whenever a line of the set does. */
export function sheetSet(item: Item, model: Model, paper: Paper, out: string): SheetSet {
  const draw = (mark: string): readonly Picture[] => markingSheets(model, PAPER_SIZES[paper], `${item.revision} · ${mark}`);
  const hash = createHash('sha256');
  for (const { svg } of draw('')) hash.update(svg);
  const contentMark = hash.digest('hex').slice(0, 8);
  const pictures = draw(contentMark);
  const id = `${item.name}-${model.size}-sheets`;
  return {
    file: join(out, item.name, model.size, `${id}${paper === 'a4' ? '' : `-${paper}`}.pdf`),
    pictures,
    document: sheetDocument({ id: `${id}-${paper}`, title: `${item.name} ${model.size}`, paper, pictures, white: sheetWhite, contentMark }),
  };
}

async function printSet(printer: Printer, { file, pictures, document }: SheetSet): Promise<void> {
  writeWhole(file, await printer.document(document, await printer.pictures(pictures)));
  process.stdout.write(`${file}\n`);
}
