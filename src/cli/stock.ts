import { join } from 'node:path';
import { COUNTED_KINDS, FULL_PAPERS, languagesIn, loadWords, openPrinter, picturePlace, pictureSizes, surveyPages } from '../booklet/index.ts';
import { cachedDrawer, partPictures } from '../draw/index.ts';
import { buildModel, loadSolids, type Model } from '../model/index.ts';
import { stockFromTable, stockTable, stockText } from '../read/index.ts';
import { localeFiles, makeFolder } from './files.ts';
import { paperEnding, writeTold } from './printed.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
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
  const locales = localeFiles('locales');
  const languages = chosen(languagesIn(locales), options.lang, 'lang').map((lang) => loadWords(locales, lang));
  const papers = chosen(FULL_PAPERS, options.paper, 'paper');
  const pictures = partPictures(modelWithAll(), await loadSolids(), cachedDrawer()).filter(({ of }) => of.what === 'small-part' && COUNTED_KINDS.some((kind) => kind === of.kind));
  const sizes = pictureSizes(pictures);
  makeFolder(options.out);
  const printer = await openPrinter({});
  try {
    const book = await printer.pictures(pictures);
    for (const paper of papers) {
      for (const words of languages) {
        const { html, css, dir, title } = surveyPages({ paper, words, pictures: sizes, placePicture: picturePlace });
        const id = `stock-count-${words.lang}${paperEnding(paper)}`;
        writeTold(join(options.out, `${id}.pdf`), await printer.document({ id, html, css, dir, title, lang: words.lang, paper, contentMark: 'stock-count' }, book));
      }
    }
  } finally {
    await printer.close();
  }
}

/** An item that has every part that is counted: its parts are shown. */
function modelWithAll(): Model {
  const models = itemsNamed(undefined).flatMap((item) => sizesOf(item).slice(0, 1).map((size) => buildModel(item, size)));
  const found = models.find(({ parts }) => COUNTED_KINDS.every((kind) => parts.some((part) => part.kind === kind)));
  if (found === undefined) throw new Error(`steps/: no item has all of ${COUNTED_KINDS.join(', ')}; would be right: an item with a deck, posts and pins`);
  return found;
}
