import { join } from 'node:path';
import {
  bookletPages, glyphsFrom, languagesIn, loadWords, openPrinter, picturePlace,
  type Edition, type LocaleFiles, type Paper, type PictureBook, type PrintDocument, type Printer, type Words,
} from '../booklet/index.ts';
import { checkModel } from '../check/index.ts';
import { planTubes } from '../cut/index.ts';
import * as drawing from '../draw/index.ts';
import { buildModel, loadSolids, type Model, type Solids } from '../model/index.ts';
import { planItem } from '../plan/index.ts';
import type { Item } from '../read/index.ts';
import { localeFiles, writeWhole } from './files.ts';
import { newProgress, type Progress } from './progress.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { buildRecord, contentMark, type Variant } from './record.ts';

export interface MakeOptions {
  readonly size?: readonly string[];
  readonly lang?: readonly string[];
  readonly edition?: readonly Edition[];
  readonly paper?: readonly Paper[];
  readonly out: string;
}

const EDITIONS: readonly Edition[] = ['pictures', 'words'];
const PAPERS: readonly Paper[] = ['a4', 'letter'];

/** Makes the booklets asked for, and build.json beside those of each size. */
export async function makeCommand(name: string | undefined, options: MakeOptions): Promise<void> {
  const items = itemsNamed(name);
  const locales = localeFiles('locales');
  const words = chosen(languagesIn(locales), options.lang, 'lang').map((lang) => loadWords(locales, lang));
  const jobs = items.flatMap((item) => chosen(sizesOf(item), options.size, 'size').map((size) => ({ item, size })));
  const solids = await loadSolids();
  const progress = newProgress(process.stdout.isTTY);
  const printer = await openPrinter({});
  try {
    for (const { item, size } of jobs) await makeVariant(item, size, { words, locales, options, solids, printer, progress });
  } finally {
    await printer.close();
  }
}

interface Shop {
  readonly words: readonly Words[];
  readonly locales: LocaleFiles;
  readonly options: MakeOptions;
  readonly solids: Solids;
  readonly printer: Printer;
  readonly progress: Progress;
}

/** One size: worked through, drawn and printed once, then laid into a booklet for each language, edition and paper. */
async function makeVariant(item: Item, size: string, shop: Shop): Promise<void> {
  const { options, printer, progress, words } = shop;
  const variant = workThrough(item, size, shop);
  const book = await printer.pictures(variant.pictures);
  const folder = join(options.out, item.name, size);
  const models = sizesOf(item).map((each) => buildModel(item, each));
  writeWhole(join(folder, 'build.json'), `${JSON.stringify(buildRecord(variant), null, 2)}\n`);
  for (const paper of PAPERS.filter((each) => options.paper?.includes(each) ?? true)) {
    for (const language of words) {
      for (const edition of EDITIONS.filter((each) => options.edition?.includes(each) ?? true)) {
        const file = join(folder, `${item.name}-${size}-${language.lang}-${edition}${paper === 'a4' ? '' : `-${paper}`}.pdf`);
        writeWhole(file, await printed(variant, models, { language, edition, paper }, book, shop));
        progress.done(file);
        progress.line(file);
      }
    }
  }
  progress.stop();
}

function workThrough(item: Item, size: string, { options, solids, progress, words }: Shop): Variant {
  const model = buildModel(item, size);
  const report = checkModel(model);
  const failed = report.findings.filter((finding) => finding.verdict === 'fail');
  if (failed.length > 0) {
    throw new Error(`${item.source.file}: ${item.name} ${size} fails ${failed.map((finding) => finding.name).join(', ')}; see: foldwright check ${item.name}`);
  }
  const plan = planItem(model, item.order, solids);
  const cuts = planTubes(model);
  const booklets = words.length * (options.edition?.length ?? EDITIONS.length) * (options.paper?.length ?? PAPERS.length);
  progress.start(drawing.picturesExpected(plan) + booklets);
  const pictures = drawing.itemPictures(model, plan, cuts, solids, (id) => { progress.done(`${item.name} ${size} ${id}`); });
  return { item, model, plan, report, cuts, pictures };
}

interface Booklet {
  readonly language: Words;
  readonly edition: Edition;
  readonly paper: Paper;
}

async function printed(variant: Variant, variants: readonly Model[], booklet: Booklet, book: PictureBook, { printer, words }: Shop): Promise<Uint8Array> {
  const document = bookletDocument(variant, variants, booklet, words);
  return printer.document(document, book);
}

/** The booklet as a document to print, pictures still to be laid in. */
export function bookletDocument(variant: Variant, variants: readonly Model[], { language, edition, paper }: Booklet, all: readonly Words[]): PrintDocument {
  const { item, model, plan, report, pictures } = variant;
  const mark = contentMark(variant);
  const pages = bookletPages({
    model, plan, report, variants, edition, paper,
    pictures: Object.fromEntries(pictures.map(({ id, width, height }) => [id, { width, height }])),
    partScale: drawing.PART_SCALE,
    revision: item.revision,
    contentMark: mark,
    words: language,
    languages: all.map((each) => each.about.name),
    glyphs: glyphsFrom(drawing),
    placePicture: picturePlace,
  });
  return {
    id: `${item.name}-${model.size}-${language.lang}-${edition}-${paper}`,
    html: pages.html, css: pages.css, lang: language.lang, dir: pages.dir, title: pages.title, paper, contentMark: mark,
  };
}
