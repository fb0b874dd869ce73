import { join } from 'node:path';
import {
  bookletPages, glyphsFrom, languagesIn, loadWords, openPrinter, picturePlace, pseudoLanguage, withPseudoLanguage,
  type Edition, type Paper, type PrintDocument, type Printer, type Words,
} from '../booklet/index.ts';
import { checkModel } from '../check/index.ts';
import { planTubes } from '../cut/index.ts';
import * as drawing from '../draw/index.ts';
import { buildModel, loadSolids, type Model } from '../model/index.ts';
import { planItem } from '../plan/index.ts';
import type { Item } from '../read/index.ts';
import { localeFiles, makeFolder, writeWhole } from './files.ts';
import { newProgress, type Progress } from './progress.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { buildRecord, contentMark, type Variant } from './record.ts';

export interface MakeOptions {
  readonly size?: readonly string[];
  readonly lang?: readonly string[];
  readonly edition?: readonly string[];
  readonly paper?: readonly string[];
  readonly out: string;
  /** Prints although a check fails; every page is then stamped. */
  readonly despiteFindings?: boolean;
}

const EDITIONS: readonly Edition[] = ['pictures', 'words'];
const PAPERS: readonly Paper[] = ['a4', 'letter'];

/** Makes the booklets asked for, and build.json beside those of each size. What can be refused is refused before anything is written. */
export async function makeCommand(name: string | undefined, options: MakeOptions): Promise<void> {
  const items = itemsNamed(name);
  const wanted = booklets(options);
  const jobs = items.flatMap((item) => chosen(sizesOf(item), options.size, 'size').map((size) => ({ item, size })));
  const drafts: Draft[] = [];
  for (const { item, size } of jobs) drafts.push(await workThrough(item, size, options));
  for (const { folder } of drafts) makeFolder(folder);
  const progress = newProgress(process.stdout.isTTY);
  const printer = await openPrinter({});
  try {
    for (const draft of drafts) await makeVariant(draft, { ...wanted, printer, progress });
  } finally {
    await printer.close();
  }
}

interface Shop {
  /** The booklets of each size, in the order they are printed in. */
  readonly booklets: readonly Booklet[];
  /** All languages there are, whichever were asked for: each booklet lists them. */
  readonly languages: readonly Words[];
  readonly printer: Printer;
  readonly progress: Progress;
}

function booklets(options: MakeOptions): Pick<Shop, 'booklets' | 'languages'> {
  const written = localeFiles('locales');
  // The made-up language is made when it is asked for by name, and by nothing else.
  const locales = options.lang?.includes(pseudoLanguage(written)) === true ? withPseudoLanguage(written) : written;
  const known = languagesIn(locales);
  const asked = chosen(known, options.lang, 'lang');
  const editions = chosen(EDITIONS, options.edition, 'edition');
  const papers = chosen(PAPERS, options.paper, 'paper');
  const languages = known.map((lang) => loadWords(locales, lang));
  const words = languages.filter(({ lang }) => asked.includes(lang));
  return { languages, booklets: papers.flatMap((paper) => words.flatMap((language) => editions.map((edition) => ({ language, edition, paper })))) };
}

/** A size variant before its pictures are drawn, and the folder its booklets go to. */
interface Draft {
  readonly folder: string;
  readonly variant: Omit<Variant, 'pictures'>;
}

/** Throws when a check fails, unless it is to be printed all the same, or when the order of work is refused. */
async function workThrough(item: Item, size: string, options: MakeOptions): Promise<Draft> {
  const model = buildModel(item, size);
  const report = checkModel(model);
  const failed = report.findings.filter((finding) => finding.verdict === 'fail');
  if (failed.length > 0 && options.despiteFindings !== true) {
    throw new Error(`${item.source.file}: ${item.name} ${size} fails ${failed.map((finding) => finding.name).join(', ')}; see foldwright check ${item.name}, or print it stamped with --despite-findings`);
  }
  // The solid kernel keeps every shape it built: one for the proof of each size, let go after it.
  const plan = planItem(model, item.order, await loadSolids());
  return { folder: join(options.out, item.name, size), variant: { item, model, plan, report, cuts: planTubes(model) } };
}

/** One size: drawn and printed once, then laid into a booklet for each language, edition and paper. */
async function makeVariant({ folder, variant: draft }: Draft, shop: Shop): Promise<void> {
  const { printer, progress } = shop;
  const { item, model: { size } } = draft;
  progress.start(drawing.picturesExpected(draft.plan) + shop.booklets.length);
  const variant = { ...draft, pictures: await drawnPictures(draft, progress) };
  const book = await printer.pictures(variant.pictures);
  const models = sizesOf(item).map((each) => buildModel(item, each));
  writeWhole(join(folder, 'build.json'), `${JSON.stringify(buildRecord(variant), null, 2)}\n`);
  for (const booklet of shop.booklets) {
    const { language, edition, paper } = booklet;
    const file = join(folder, `${item.name}-${size}-${language.lang}-${edition}${paper === 'a4' ? '' : `-${paper}`}.pdf`);
    writeWhole(file, await printer.document(bookletDocument(variant, models, booklet, shop.languages), book));
    progress.done(file);
    progress.line(file);
  }
  progress.stop();
}

const drawnPictures = async ({ item, model, plan, cuts }: Draft['variant'], progress: Progress): Promise<Variant['pictures']> =>
  drawing.itemPictures(model, plan, cuts, await loadSolids(), (id) => { progress.done(`${item.name} ${model.size} ${id}`); });

interface Booklet {
  readonly language: Words;
  readonly edition: Edition;
  readonly paper: Paper;
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
    despiteFindings: report.findings.some((finding) => finding.verdict === 'fail'),
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
