import { readdirSync } from 'node:fs';
import { PUBLICATIONS } from '../../src/booklet/publications/facts.ts';
import { everySize, items, modelOf } from './items.ts';
import { everything, sampled, sampledRows } from './samples.ts';

/*
 * What each of the long tests tries, all in one place, so that samples.test.ts can tell that nothing is left out of all.
 */

type Size = typeof everySize[number];

/** The folders of locale files: each test that takes samples imports this file, so it imports little itself. */
export const languages: readonly string[] = readdirSync(new URL('../../locales/', import.meta.url), { withFileTypes: true })
  .flatMap((entry) => (entry.isDirectory() ? [entry.name] : [])).sort();
/** Languages side by side: of two directions, and those that take most room. */
export const mixed: readonly string[] = ['ar+fr', 'en+my+ur', 'uk+am+ar'];

/** So many sizes of every item. */
const ofEachItem = (key: string, count: number): readonly Size[] =>
  items.flatMap((item) => sampled(everySize.filter((each) => each.item === item), key, count, ({ name }) => name));

/** Sizes whose every step is tried, and whose every part against every other. */
export const workSizes = ofEachItem('work', 1);
export const partSizes = ofEachItem('parts', 1);

/** Sizes whose every step is asked whether it can be told without a question. */
export const toldSizes = ofEachItem('told', 1);

/** Sizes whose pictures are drawn: the first of an item, where room is least, and the one with the most parts of all. */
const most = everySize.toSorted((a, b) => modelOf(b.item, b.size).parts.length - modelOf(a.item, a.size).parts.length)[0];
export const drawnSizes = sampled(everySize.filter((each) => each === most || each.size === each.item.sizes[0]?.name), 'drawn', 3, ({ name }) => name);

const rackSizes = items.find(({ name }) => name === 'rack')?.sizes.map(({ name }) => name) ?? [];
export const orderRacks = sampled(rackSizes, 'order', 1);
export const sceneRacks = sampled(rackSizes, 'scenes', 1);
export const apartRacks = sampled(rackSizes, 'apart', 1);
/** The low rack's guide is read closely. */
export const guideRacks = ['low', ...sampled(rackSizes.filter((size) => size !== 'low'), 'guides', 1)];

interface PageRow {
  readonly item: string;
  readonly size: string;
  readonly lang: string;
  readonly paper: string;
}

const papersOf = (papers: readonly string[]) => ({ name, item }: Size) => papers.map((paper) => ({ item: item.name, size: name, paper }));
const inLanguages = (langs: readonly string[]) => <Row extends object>(row: Row) => langs.map((lang) => ({ ...row, lang }));

/** Sizes whose every booklet and poster is laid out. */
export const pagedSizes = ofEachItem('pages', 1);

/** Booklets with words: every language for one size of an item; of the others, when all is tried, those that take most room. */
const longest: readonly string[] = ['el', 'my', 'ur', 'en+my+ur'];
export const wordPages: readonly PageRow[] = sampledRows(
  pagedSizes.flatMap((size) => papersOf(PUBLICATIONS.words.papers)(size)
    .flatMap(inLanguages(!everything || size.item.sizes.at(-1)?.name === size.size ? [...languages, ...mixed] : longest))),
  'word pages', [['item', 'lang'], ['size', 'paper'], ['lang', 'paper']],
);

/** Booklets without words, and posters. */
export const picturePages = sampledRows(pagedSizes.flatMap(papersOf(PUBLICATIONS.pictures.papers)), 'picture pages', [['item', 'paper'], ['size']]);
const posters = (papers: readonly string[], key: string): readonly PageRow[] =>
  sampledRows(pagedSizes.flatMap(papersOf(papers)).flatMap(inLanguages(['en', 'ar'])), key, [['item', 'paper'], ['size'], ['lang', 'paper']]);
export const wallPosters = posters(PUBLICATIONS.wall.papers, 'wall');
export const overviewPosters = posters(PUBLICATIONS.overview.papers, 'overview');

/** Booklets measured letter by letter in the browser: the item with the most kinds of pages, and the one all others are like. */
const letterByLetter = (langs: readonly string[], key: string) =>
  sampledRows(langs.flatMap((lang) => (['rack', 'bed'] as const).map((item) => ({ lang, item }))), key, [['lang'], ['item']]);
export const measuredAlone = letterByLetter(languages, 'measured');
export const measuredTogether = letterByLetter(['ar+fr', 'ar+fr+en', 'ur+my+am'], 'measured together');

/** What the pages can differ in on full papers; every language there is, is measured above. */
const onFull = [
  { lang: 'en', edition: 'pictures', paper: 'a4' }, { lang: 'en', edition: 'pictures', paper: 'letter' }, { lang: 'en', edition: 'words', paper: 'letter' },
  { lang: 'ar', edition: 'words', paper: 'a4' }, { lang: 'ur', edition: 'words', paper: 'letter' }, { lang: 'my', edition: 'words', paper: 'a4' },
  { lang: 'ar+fr', edition: 'words', paper: 'a4' }, { lang: 'fr+ar+en', edition: 'words', paper: 'letter' },
] as const;
export const fullRacks = sampledRows(onFull, 'full racks', [['edition', 'paper']]);
export const fullOthers = sampledRows(onFull, 'full others', [['edition'], ['paper']]);

/** The same on papers of half the size. */
const halves = ['a5', 'half-letter'] as const;
const onHalf = (['en', 'fr', 'ar'] as const).flatMap((lang) => (['words', 'pictures'] as const).flatMap((edition) => halves.map((paper) => ({ lang, edition, paper }))));
export const halfRacks = sampledRows(onHalf, 'half racks', [['edition', 'paper'], ['lang']]);
export const halfOthers = sampledRows(onHalf.flatMap((row) => (['chair', 'bed', 'desk'] as const).map((item) => ({ ...row, item }))), 'half others', [['item', 'paper'], ['item', 'edition'], ['lang', 'edition']]);
const tall = ['my', 'ur', 'el', 'am', 'ar+fr', 'en+my+ur', 'uk+am+ar'];
export const halfLanguages = sampledRows(tall.flatMap((lang) => halves.map((paper) => ({ lang, paper }))), 'half languages', [['lang'], ['paper']]);
export const halfBeds = sampled(tall, 'half beds', 2);

/** Real booklets of the standard rack, printed and read. */
export const realRacks = sampledRows([
  { lang: 'en', edition: 'pictures', paper: 'a4' }, { lang: 'ar', edition: 'words', paper: 'a4' }, { lang: 'en', edition: 'words', paper: 'a4' },
  { lang: 'fr', edition: 'words', paper: 'letter' }, { lang: 'ur', edition: 'words', paper: 'a4' }, { lang: 'ar+fr', edition: 'words', paper: 'a4' },
] as const, 'real', [['edition', 'paper']]);

/** Tagged booklets read by a second reader: those that single texts are looked for in, and languages of every other script. */
export const taggedLanguages = ['en', 'el', 'my', 'ar', 'en+ur+bn', ...sampled(['uk', 'am', 'bn', 'ur', 'ar+fr'], 'tagged', 1)];

/** Posters looked at in the browser. */
export const seenPosters = sampledRows(
  (['wall a3', 'wall a4', 'wall letter', 'overview a4', 'overview letter'] as const)
    .flatMap((poster) => ['en', 'ar'].flatMap((lang) => (['rack', 'bed', 'desk'] as const).map((item) => ({ poster, lang, item })))),
  'seen posters', [['poster'], ['lang', 'item']],
);

/** Cut plans and sheets to count by, printed. */
export const printedCuts = sampledRows((['ar', 'en', 'fr'] as const).flatMap((lang) => (['a4', 'letter'] as const).map((paper) => ({ lang, paper }))), 'printed cuts', [['lang'], ['paper']]);

/** Languages that are asked for all that a booklet can say: those with the most forms of a plural, the fewest, and rules that Unicode lacks. */
export const askedLanguages = sampled(['ar', 'my', 'ht'], 'asked', 1);

/** The phone guide's pages and panels that axe-core looks at, light and dark, without words and with them. */
const looks = (['light', 'dark'] as const).flatMap((look) => [false, true].map((worded) => ({ look, worded })));
export const phonePages = sampledRows(
  ['start', 'before', 'parts', 'step-wrap-side-front', 'step-turn-item', 'checks', 'load'].flatMap((id) => looks.map((look) => ({ ...look, id }))),
  'phone pages', [['id'], ['look', 'worded']],
);
const opened = [['#open-all', '#all'], ['#open-words', '#words'], ['#closer', '#near'], ['#turn', '#near']] as const;
export const phonePanels = sampledRows(opened.flatMap(([button, panel]) => looks.map((look) => ({ ...look, button, panel }))), 'phone panels', [['button'], ['look', 'worded']]);
/** Screens of phones, px, with the languages that are tried on them. */
export const phoneScreens = ([[360, 640], [320, 568], [640, 360]] as const);
export const phoneWidths = sampledRows(languages.flatMap((lang) => phoneScreens.map(([width]) => ({ lang, width }))), 'phone widths', [['lang'], ['width']]);
