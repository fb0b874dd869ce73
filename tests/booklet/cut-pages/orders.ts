import type { CutOrder, Serves, Thrift } from '../../../src/cut/index.ts';
import { cutPlanPictures } from '../../../src/draw/index.ts';
import * as drawn from '../../../src/draw/pictograms/index.ts';
import { glyphsFrom, type Paper, type SizedPicture } from '../../../src/booklet/pages/index.ts';
import { cutPages, COUNTED_KINDS, pictureSizes, surveyPages, type CutPagesInput } from '../../../src/booklet/index.ts';
import { loadWords, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { itemNamed, modelOf } from '../../support/items.ts';
import { localesOnDisk, standInPlace } from '../pages/rack-booklet.ts';

const model = modelOf(itemNamed('stool'));
const use = { item: 'stool', size: 'low', kind: 'post' as const, count: 4 };
const serves: readonly Serves[] = [{ item: 'stool', size: 'low', kind: 'short-tube', sides: [250] }];
const thrift: Thrift = { used: 2, fromKits: 2, fewestFromKits: 2, stock: 4000, pieces: 3700, useful: 200, leastStock: 4000, proven: true };

/** An order small enough to follow by hand: one tube, one panel with a straight cut, and the parts that are only counted. */
export const smallOrder: CutOrder = {
  kit: model.kit, lines: [{ model, count: 2 }], stock: null,
  tubePieces: [{ letter: 'A', length: 312, count: 4, uses: [use, { ...use, kind: 'long-tube' }] }],
  tubes: [{ source: { from: 'kit', name: 'stall-kit' }, times: 1, length: 2000, usable: 2000, pieces: ['A', 'A', 'A', 'A'], ends: [312, 624, 936, 1248], shorter: 0, offCut: 751, serves }],
  tubeThrift: thrift,
  panelPieces: [{ letter: 'B', width: 637, height: 637, count: 1, uses: [{ ...use, kind: 'panel', count: 1 }] }],
  panels: [{
    source: { from: 'kit', name: 'stall-kit' }, times: 1, length: 1500, width: 1000, grain: null, defects: [],
    cuts: {
      part: 'cut', axis: 'x', at: 637, region: { x: 0, y: 0, width: 1500, height: 1000 },
      first: {
        part: 'cut', axis: 'y', at: 637, region: { x: 0, y: 0, width: 637, height: 1000 },
        first: { part: 'piece', lies: { x: 0, y: 0, width: 637, height: 637, piece: 0, turned: false } },
        second: { part: 'off-cut', region: { x: 0, y: 637, width: 637, height: 363 } },
      },
      second: { part: 'off-cut', region: { x: 637, y: 0, width: 863, height: 1000 } },
    },
    pieces: [{ x: 0, y: 0, width: 637, height: 637, letter: 'B', turned: false, isPattern: true }],
    offCuts: [{ region: { x: 637, y: 0, width: 863, height: 1000 }, clear: { x: 637, y: 0, width: 863, height: 1000 }, serves: [{ item: 'stool', size: 'low', kind: 'panel', sides: [637, 637] }] }],
  }],
  panelThrift: { ...thrift, leastStock: 3900, proven: false },
  counted: [{ kind: 'joint', needed: 16, there: null, short: 16 }],
  kits: { kits: 1, parts: [{ kind: 'tube', needed: 1, kits: 1 }, { kind: 'joint', needed: 16, kits: 1 }] },
};

/** The same over counted stock: damage on both, a wide saw and knife, loose pieces, and something short. */
export const damagedOrder: CutOrder = {
  ...smallOrder,
  kit: { ...model.kit, practice: { ...model.kit.practice, sawKerf: 3, knifeKerf: 1 } },
  stock: 'tern-island',
  tubes: smallOrder.tubes.map((sheet) => ({ ...sheet, source: { from: 'stock', name: 'crushed' }, usable: 1820 })),
  panels: smallOrder.panels.map((sheet) => ({
    ...sheet, source: { from: 'stock', name: 'hatch' }, grain: 'length',
    defects: [{ is: 'hole', corner: 'upper-right', x: 900, y: 500, width: 300, height: 200 }],
    cuts: { part: 'loose', lies: [{ x: 0, y: 0, width: 637, height: 637, piece: 0, turned: false }], region: { x: 0, y: 0, width: 1500, height: 1000 } },
  })),
  counted: [{ kind: 'joint', needed: 16, there: 10, short: 6 }],
  kits: { kits: null, parts: [{ kind: 'tube', needed: 0, kits: null }, { kind: 'joint', needed: 6, kits: null }] },
};

const nothingShort: CutOrder = { ...damagedOrder, kits: { kits: 0, parts: [] } };

/** What the pages need for an order. */
export function cutInput(order: CutOrder, { lang = 'en', paper = 'a4', files = localesOnDisk(), onAsk }: { readonly lang?: string; readonly paper?: Paper; readonly files?: LocaleFiles; readonly onAsk?: (key: string) => void } = {}): CutPagesInput {
  return {
    order, paper, words: loadWords(files, lang, onAsk), contentMark: '0123abcd', placePicture: standInPlace, glyphs: glyphsFrom(drawn),
    pictures: pictureSizes(cutPlanPictures(order)),
  };
}

export const smallPictures = COUNTED_KINDS.map((kind): SizedPicture => ({ of: { what: 'small-part', kind, plate: 0 }, width: 14, height: 12 }));

/** Makes cut plans and sheets to count by until all they can say has been said. */
export function askForCutting(lang: string, onAsk: (key: string) => void, files = localesOnDisk(), seen: (html: string) => void = () => undefined): void {
  for (const order of [smallOrder, damagedOrder, nothingShort]) seen(cutPages(cutInput(order, { lang, onAsk, files })).html);
  seen(surveyPages({ paper: 'a4', words: loadWords(files, lang, onAsk), pictures: smallPictures, placePicture: standInPlace }).html);
}
