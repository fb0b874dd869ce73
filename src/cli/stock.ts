import { COPIES, COUNTED_KINDS, PUBLICATIONS } from '../booklet/index.ts';
import { buildModel, loadSolids, type Model } from '../model/index.ts';
import { stockFromTable, stockTable, stockText } from '../read/index.ts';
import { languagesAsked, papersAsked } from './asked.ts';
import { makeFolder, writeTold } from './files.ts';
import { plainProgress } from './progress.ts';
import { itemsNamed, sizesOf } from './project.ts';
import { publish } from './publish.ts';
import { readStock, textOf } from './stock-file.ts';

/** Writes a stock file as a table that a spreadsheet opens. */
export function exportStock(path: string, options: { readonly out?: string }): void {
  writeTold(options.out ?? `${path.replace(/\.yaml$/, '')}.csv`, stockTable(readStock(path)));
}

/** Writes a table as a stock file. */
export function importStock(path: string, options: { readonly out?: string }): void {
  writeTold(options.out ?? `${path.replace(/\.csv$/, '')}.yaml`, stockText(stockFromTable(textOf(path, 'a table of a stock, as `stock export` writes it'), path)));
}

/** Prints the sheets to count stock by. */
export async function surveySheets(options: { readonly lang?: readonly string[]; readonly paper?: readonly string[]; readonly out: string }): Promise<void> {
  const languages = languagesAsked(options.lang);
  const papers = papersAsked(PUBLICATIONS['survey-sheet'], options.paper);
  const copies = COPIES['survey-sheet']({ model: modelWithAll(), solids: await loadSolids() }, papers, languages);
  makeFolder(options.out);
  await publish([PUBLICATIONS['survey-sheet']], [{ folder: options.out, copies }], plainProgress);
}

/** An item that has every part that is counted: its parts are shown. */
function modelWithAll(): Model {
  const models = itemsNamed(undefined).flatMap((item) => sizesOf(item).slice(0, 1).map((size) => buildModel(item, size)));
  const found = models.find(({ parts }) => COUNTED_KINDS.every((kind) => parts.some((part) => part.kind === kind)));
  if (found === undefined) throw new Error(`steps/: no item has all of ${COUNTED_KINDS.join(', ')}; would be right: an item with a deck, posts and pins`);
  return found;
}
