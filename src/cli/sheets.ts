import { join } from 'node:path';
import { FULL_PAPERS, openPrinter, PAPER_SIZES, sheetDocument, type Paper, type PrintDocument, type Printer } from '../booklet/index.ts';
import { markingSheets, sheetWhite, type Picture } from '../draw/index.ts';
import type { Model } from '../model/index.ts';
import type { Item } from '../read/index.ts';
import { makeFolder } from './files.ts';
import { paperEnding, shortMark, writeTold } from './printed.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { soundSize } from './sound.ts';

export interface SheetsOptions {
  readonly size?: readonly string[];
  readonly paper?: readonly string[];
  readonly out: string;
}

/** One set of sheets, drawn and not yet printed. */
export interface SheetSet {
  readonly file: string;
  readonly pictures: readonly Picture[];
  readonly document: PrintDocument;
}

/** Prints the marking sheets of an item, a file for each size and paper. What can be refused is refused before anything is written. */
export async function sheetsCommand(name: string, options: SheetsOptions): Promise<void> {
  const sets = itemsNamed(name).flatMap((item) => {
    const papers = chosen(FULL_PAPERS, options.paper, 'paper');
    return chosen(sizesOf(item), options.size, 'size').flatMap((size) => {
      // Nobody shall cut by the sheets of an item that is not proven.
      const { model } = soundSize(item, size);
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

/** The set as it is printed; the mark on every sheet changes whenever a line of the set does. */
export function sheetSet(item: Item, model: Model, paper: Paper, out: string): SheetSet {
  const draw = (mark: string): readonly Picture[] => markingSheets(model, PAPER_SIZES[paper], `${item.revision} · ${mark}`);
  const contentMark = shortMark(...draw('').map(({ svg }) => svg));
  const pictures = draw(contentMark);
  const id = `${item.name}-${model.size}-sheets`;
  return {
    file: join(out, item.name, model.size, `${id}${paperEnding(paper)}.pdf`),
    pictures,
    document: sheetDocument({ id: `${id}-${paper}`, title: `${item.name} ${model.size}`, paper, pictures, white: sheetWhite, contentMark }),
  };
}

async function printSet(printer: Printer, { file, pictures, document }: SheetSet): Promise<void> {
  writeTold(file, await printer.document(document, await printer.pictures(pictures)));
}
