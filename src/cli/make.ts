import { join } from 'node:path';
import {
  bookletPages, comesOn, EDITION_PAPERS, EDITIONS, FULL_PAPERS, glyphsFrom, HALF_PAPERS, isHalfPaper, languagesIn, loadWords, openPrinter, picturePlace, pictureSizes, pseudoLanguage, stitched, withPseudoLanguage,
  type AnyEdition, type Edition, type Paper, type PosterPaper, type PrintDocument, type Printer, type Words,
} from '../booklet/index.ts';
import { planTubes } from '../cut/index.ts';
import * as drawing from '../draw/index.ts';
import { buildModel, loadSolids, type Model } from '../model/index.ts';
import { planItem } from '../plan/index.ts';
import type { Item } from '../read/index.ts';
import { localeFiles, makeFolder, writeWhole } from './files.ts';
import { newProgress, type Progress } from './progress.ts';
import { bindingOf, papersToStitch, type Binding, type BindingOptions } from './binding.ts';
import { drawnSets, formatOf, printedSets } from './picture-sets.ts';
import { formatOfPoster, posterDocument, posterEnding, postersOf, type Poster } from './posters.ts';
import { paperEnding } from './printed.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { checkedSize, soundSize } from './sound.ts';
import { nameOf, tonguesAsked, type Tongues } from './tongues.ts';
import { buildRecord, contentMark, type Variant } from './record.ts';
import { variantGuide } from './variant-guide.ts';

export interface MakeOptions extends BindingOptions {
  readonly size?: readonly string[];
  readonly lang?: readonly string[];
  readonly edition?: readonly string[];
  readonly paper?: readonly string[];
  readonly out: string;
  /** Prints although a check fails; every page is then stamped. */
  readonly despiteFindings?: boolean;
}

const USUAL_EDITIONS: readonly Edition[] = ['pictures', 'words'];
const PAPERS: readonly (Paper | PosterPaper)[] = [...FULL_PAPERS, ...HALF_PAPERS, 'a3'];

/** Makes the booklets asked for, and beside those of each size build.json and the phone guide. What can be refused is refused before anything is written. */
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
  readonly posters: readonly Poster[];
  readonly binding: Binding;
  /** All languages there are, whichever were asked for: each booklet lists them. */
  readonly languages: readonly Words[];
  readonly printer: Printer;
  readonly progress: Progress;
}

function booklets(options: MakeOptions): Pick<Shop, 'binding' | 'booklets' | 'posters' | 'languages'> {
  const written = localeFiles('locales');
  // The made-up language is made when it is asked for by name, and by nothing else.
  const asked = options.lang?.flatMap((codes) => codes.split('+')) ?? [];
  const locales = asked.includes(pseudoLanguage(written)) ? withPseudoLanguage(written) : written;
  const known = languagesIn(locales);
  const editions = chosen(EDITIONS, options.edition ?? USUAL_EDITIONS, 'edition');
  const binding = bindingOf(options);
  const papers = chosen(PAPERS, options.paper ?? (binding ? HALF_PAPERS : FULL_PAPERS), 'paper');
  if (binding) papersToStitch(papers);
  refuseUnprintable(editions, papers);
  const languages = known.map((lang) => loadWords(locales, lang));
  const tongues = tonguesAsked(languages, options.lang);
  return {
    languages,
    binding,
    posters: (['wall', 'overview'] as const).filter((edition) => editions.includes(edition)).flatMap((edition) => postersOf(edition, papers, tongues, sourceOf(languages))),
    booklets: EDITION_PAPERS.words.filter((paper) => papers.includes(paper)).flatMap((paper) => [
      ...(editions.includes('pictures') ? [{ tongues: [sourceOf(languages)] as const, edition: 'pictures' as const, paper }] : []),
      ...(editions.includes('words') ? tongues.map((each) => ({ tongues: each, edition: 'words' as const, paper })) : []),
    ]),
  };
}

/** Not every edition comes on every paper. Throws where an edition asked for comes on none of the papers, or a paper takes none of the editions. */
function refuseUnprintable(editions: readonly AnyEdition[], papers: readonly string[]): void {
  const edition = editions.find((each) => !papers.some((paper) => comesOn(each, paper)));
  if (edition !== undefined) throw new Error(`--edition ${edition} --paper ${papers.join(' ')}: it does not come on that paper; would be right: one of ${EDITION_PAPERS[edition].join(', ')}`);
  const paper = papers.find((each) => !editions.some((one) => comesOn(one, each)));
  if (paper !== undefined) throw new Error(`--paper ${paper}: none of the editions asked for comes on it; would be right: --edition ${EDITIONS.filter((each) => comesOn(each, paper)).join(' or ')}`);
}

/** The language that the pictures are described in for those who hear them: that in which the texts are written first. */
function sourceOf(languages: readonly Words[]): Words {
  const source = languages.find(({ about }) => about.source);
  if (!source) throw new Error('locales/: no source language; would be right: "source": true in one about.json');
  return source;
}

/** A size variant before its pictures are drawn, and the folder its booklets go to. */
interface Draft {
  readonly folder: string;
  readonly variant: Omit<Variant, 'pictures'>;
}

/** Throws when a check fails, unless it is to be printed all the same, or when the order of work is refused. */
export async function workThrough(item: Item, size: string, options: { readonly despiteFindings?: boolean; readonly out: string }): Promise<Draft> {
  const { model, report } = options.despiteFindings === true ? checkedSize(item, size) : soundSize(item, size, ', or print it stamped with --despite-findings');
  // The solid kernel keeps every shape it built: one for the proof of each size, let go after it.
  const plan = planItem(model, item.order, await loadSolids());
  return { folder: join(options.out, item.name, size), variant: { item, model, plan, report, cuts: planTubes(model) } };
}

/** One size: drawn and printed once, then laid into a booklet for each language, edition and paper. */
async function makeVariant({ folder, variant: draft }: Draft, shop: Shop): Promise<void> {
  const { printer, progress } = shop;
  const { item, model: { size } } = draft;
  progress.start(drawing.picturesExpected(draft.plan) + shop.booklets.length + shop.posters.length + 1);
  const sets = await drawnSets(draft, [...shop.booklets.map(({ paper }) => formatOf(paper)), ...shop.posters.map(formatOfPoster)], (id) => { progress.done(`${item.name} ${size} ${id}`); });
  const variant = { ...draft, pictures: sets.page };
  const books = await printedSets(sets, printer);
  const models = sizesOf(item).map((each) => buildModel(item, each));
  writeWhole(join(folder, 'build.json'), `${JSON.stringify(buildRecord(variant), null, 2)}\n`);
  const guide = join(folder, `${item.name}-${size}.html`);
  writeWhole(guide, await variantGuide(variant, models, shop.languages));
  progress.done(guide);
  progress.line(guide);
  for (const booklet of shop.booklets) {
    const { tongues: [language], paper } = booklet;
    const file = join(folder, `${item.name}-${size}-${ending(booklet)}.pdf`);
    const format = formatOf(paper);
    const printed = await printer.document(bookletDocument(variant, models, booklet, shop.languages, sets[format]), books[format]);
    const sheets = file.replace(/\.pdf$/, '-stitched.pdf');
    writeWhole(file, printed);
    progress.line(file);
    if (shop.binding && isHalfPaper(paper)) {
      writeWhole(sheets, await stitched(printed, { ...shop.binding, paper, dir: language.about.direction }));
      progress.line(sheets);
    }
    progress.done(file);
  }
  for (const poster of shop.posters) {
    const file = join(folder, `${item.name}-${size}-${posterEnding(poster)}.pdf`);
    writeWhole(file, await printer.document(posterDocument(variant, models, poster, sets), books[formatOfPoster(poster)]));
    progress.done(file);
    progress.line(file);
  }
  progress.stop();
}

interface Booklet {
  /** Without words the language its pictures are described in. */
  readonly tongues: Tongues;
  readonly edition: Edition;
  readonly paper: Paper;
}

/** End of a booklet's name; the edition of pictures is the same for all languages. */
function ending({ tongues, edition, paper }: Booklet): string {
  return `${edition === 'pictures' ? '' : `${nameOf(tongues)}-`}${edition}${paperEnding(paper)}`;
}

/** The booklet as a document to print, pictures still to be laid in: the variant's own, unless others are drawn for its paper. */
export function bookletDocument(variant: Variant, variants: readonly Model[], booklet: Booklet, all: readonly Words[], pictures = variant.pictures): PrintDocument {
  const { item, model, plan, report } = variant;
  const { tongues: [language, ...alongside], edition, paper } = booklet;
  const mark = contentMark(variant);
  const pages = bookletPages({
    model, plan, report, variants, edition, paper,
    pictures: pictureSizes(pictures),
    partScale: drawing.partScale(formatOf(paper)),
    revision: item.revision,
    contentMark: mark,
    despiteFindings: report.findings.some((finding) => finding.verdict === 'fail'),
    words: language,
    alongside,
    languages: all.map((each) => each.about.name),
    glyphs: glyphsFrom(drawing),
    placePicture: picturePlace,
  });
  return {
    id: `${item.name}-${model.size}-${ending(booklet)}`,
    html: pages.html, css: pages.css, lang: language.lang, dir: pages.dir, title: pages.title, paper, contentMark: mark,
  };
}
