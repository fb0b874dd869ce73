import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { soundSize } from '../../src/cli/sound.ts';
import { COPIES, openPrinter, PAPERS, type FullPaper } from '../../src/booklet/index.ts';
import { sheetWhite } from '../../src/draw/index.ts';
import { laidOut, type MarkingSheets } from '../../src/draw/sheets/laid-out.ts';
import { overlap } from '../../src/draw/sheets/room.ts';
import { segmentBoxes } from '../../src/draw/sheets/segments.ts';
import type { Model } from '../../src/model/index.ts';
import { hasPoppler } from '../booklet/print/poppler.ts';
import { dictAt, key, readPdf } from '../booklet/print/readPdf.ts';
import { itemNamed } from '../support/items.ts';
import { lines, renderInk, type InkedPage, type Part } from '../support/pixels.ts';
import { expectOneComplaint, newWorkshop, type Workshop } from './workshop.ts';

/** What a length may be out on paper, mm. */
const within = 0.2;

interface Printed {
  readonly model: Model;
  readonly laid: MarkingSheets;
  readonly pdf: Uint8Array;
  readonly page: (number: number, part: Part) => InkedPage;
}

const printed = new Map<FullPaper, Printed>();

/** The sheets of an item as the command prints them. */
async function print(item: string, size: string, paper: FullPaper): Promise<Printed> {
  const { model } = soundSize(itemNamed(item), size);
  const [set] = COPIES['marking-sheets']({ model, revision: itemNamed(item).revision }, [paper]);
  if (!set) throw new Error('no sheets');
  const printer = await openPrinter({ langs: ['en'] });
  try {
    const faults = await printer.measure(set.document());
    expect(faults).toEqual([]);
    const pdf = await printer.document(set.document(), await printer.pictures(set.pictures));
    return { model, laid: laidOut(model, PAPERS[paper]), pdf, page: (number, part) => renderInk(pdf, number, part) };
  } finally {
    await printer.close();
  }
}

beforeAll(async () => {
  printed.set('a4', await print('chair', 'mark-4', 'a4'));
  printed.set('letter', await print('stool', 'low', 'letter'));
});

const at = (paper: FullPaper): Printed => {
  const found = printed.get(paper);
  if (!found) throw new Error('not printed');
  return found;
};

describe.each(['a4', 'letter'] as const)('the marking sheets on %s', (paper) => {
  it('are as many pages of that paper as there are sheets, and ask not to be scaled', async () => {
    const { pdf, laid } = at(paper);
    const read = await readPdf(pdf);
    const { width, height } = PAPERS[paper];
    expect(read.getPageCount()).toBe(1 + laid.tilings.flatMap(({ tiles }) => tiles).length + laid.stripSheets.length);
    for (const page of read.getPages()) {
      expect(Math.abs((page.getWidth() / 72) * 25.4 - width)).toBeLessThan(0.3);
      expect(Math.abs((page.getHeight() / 72) * 25.4 - height)).toBeLessThan(0.3);
    }
    expect(dictAt(read.catalog, 'ViewerPreferences').lookup(key('PrintScaling'))).toBe(key('None'));
  });

  it.skipIf(!hasPoppler)('carry bars that measure 100 mm both ways on every page', async () => {
    const { pdf, page, laid } = at(paper);
    const { window } = laid.room;
    const [x, y] = [sheetWhite + window.x, sheetWhite + window.y];
    for (let number = 1; number <= (await readPdf(pdf)).getPageCount(); number += 1) {
      const sheet = page(number, { x: 0, y: 0, width: x + 105, height: y + 105 });
      // Beyond the inner strokes only the two that bound a bar reach so far out.
      const level = lines(sheet.profile('x', x - 3, x + 104, [y - 6.6, y - 5.4]), 0.5);
      const upright = lines(sheet.profile('y', y - 3, y + 104, [x - 5.05, x - 4.8]), 0.5);
      for (const strokes of [level, upright]) {
        expect(strokes, `page ${number}`).toHaveLength(2);
        expect(Math.abs((strokes[1] ?? NaN) - (strokes[0] ?? NaN) - 100), `page ${number}`).toBeLessThanOrEqual(within);
      }
    }
  });

  it.skipIf(!hasPoppler)('have the crease lines of the strip at the model\'s distances', () => {
    const { model, page, laid } = at(paper);
    const [flap] = model.pattern.flaps;
    const [first] = laid.stripSheets;
    if (!flap || !first) throw new Error('no flap or strip');
    const number = 2 + laid.tilings.flatMap(({ tiles }) => tiles).length;
    const boxes = segmentBoxes(first, laid.room.window);
    const strip = first.flatMap((piece, index) => (piece.strip.kind === 'creases' ? [{ piece, box: boxes[index] }] : []));
    // The inner face is on the first piece; there the distances from the inside line grow with those on the paper.
    const [inner] = strip;
    if (!inner?.box) throw new Error('no piece');
    const sheet = page(number, { x: 0, y: 0, width: PAPERS[paper].width / 2, height: PAPERS[paper].height });
    const left = sheetWhite + inner.box.x;
    // Creases and the half-cut are the lines that cover most of the strip's width; after them come the folds round the panel's edge.
    const all = lines(sheet.profile('y', sheetWhite + inner.box.y + 1, sheetWhite + inner.box.y + inner.box.height - 12, [left + 1, left + 31]), 0.5);
    const seen = all.slice(0, flap.creases.length + 1);
    expect(seen).toHaveLength(flap.creases.length + 1);
    const wanted = [...flap.creases, flap.halfCut];
    for (const [index, place] of wanted.entries()) {
      expect(Math.abs((seen[index] ?? NaN) - (seen[0] ?? NaN) - (place - (wanted[0] ?? NaN)))).toBeLessThanOrEqual(within);
    }
    // And the panel's edge, folded over, is where the strip says: the tab is as wide as in the pattern.
    const halfCut = seen.at(-1) ?? NaN;
    const edge = all.find((place) => Math.abs(place - halfCut - (flap.edge - flap.halfCut)) < 2) ?? NaN;
    expect(Math.abs(edge - halfCut - (flap.edge - flap.halfCut))).toBeLessThanOrEqual(within);
  });

  it.skipIf(!hasPoppler)('lay register mark on register mark and line on line where neighbours overlap', () => {
    const { page, laid } = at(paper);
    const [tiling] = laid.tilings;
    if (!tiling) throw new Error('no tiling');
    const { window } = laid.room;
    const pairs = tiling.tiles.flatMap((tile, index) => tiling.tiles.flatMap((other, otherIndex) =>
      (other.row === tile.row && other.column === tile.column + 1 ? [[index, otherIndex] as const] : [])));
    expect(pairs.length).toBeGreaterThan(1);
    const seam = { left: sheetWhite + window.x + window.width - overlap / 2, right: sheetWhite + window.x + overlap / 2 };
    let compared = 0;
    for (const [leftTile, rightTile] of pairs.slice(0, 3)) {
      const strip = (seam: number): Part => ({ x: seam - 6, y: 0, width: 12, height: PAPERS[paper].height });
      const [left, right] = [page(2 + leftTile, strip(seam.left)), page(2 + rightTile, strip(seam.right))];
      for (const share of [0.25, 0.75]) {
        const down = sheetWhite + window.y + overlap / 2 + share * (window.height - overlap);
        const one = crossAt(left, seam.left, down);
        const two = crossAt(right, seam.right, down);
        // Laid over each other, the right sheet comes to lie a pitch further to the right.
        expect(Math.abs(one.x - two.x - (window.width - overlap))).toBeLessThanOrEqual(within);
        expect(Math.abs(one.y - two.y)).toBeLessThanOrEqual(within);
      }
      const levels = [levelLines(left, sheetWhite + window.x + window.width - overlap, laid), levelLines(right, sheetWhite + window.x, laid)];
      compared += levels[0]?.length ?? 0;
      // Each sheet begins its dashes anew: where one has a gap just there, the other's line has none to meet.
      const [few = [], many = []] = levels.toSorted((a, b) => a.length - b.length);
      expect(many.length - few.length).toBeLessThanOrEqual(1);
      for (const place of few) expect(Math.min(...many.map((other) => Math.abs(place - other)))).toBeLessThanOrEqual(within);
    }
    expect(compared).toBeGreaterThan(1);
  });
});

/** The middle of a register mark near a place: its upright and its level line, taken where nothing else of it is. */
function crossAt(page: InkedPage, x: number, y: number): { readonly x: number; readonly y: number } {
  const upright = [...lines(page.profile('x', x - 1, x + 1, [y - 3.8, y - 2.4]), 0.25), NaN];
  const level = [...lines(page.profile('y', y - 1, y + 1, [x - 3.8, x - 2.4]), 0.25), NaN];
  return { x: upright[0] ?? NaN, y: level[0] ?? NaN };
}

/** Whole lines of the drawing that run level through an overlap's outer half, where no register mark reaches. */
function levelLines(page: InkedPage, from: number, { room: { window } }: MarkingSheets): readonly number[] {
  return lines(page.profile('y', sheetWhite + window.y, sheetWhite + window.y + window.height - overlap, [from + 0.1, from + 0.8]), 0.9);
}

describe('foldwright sheets', () => {
  let shop: Workshop;
  beforeAll(() => { shop = newWorkshop(); });
  afterAll(() => { shop.close(); });

  it.each([
    ['an unknown item', ['sheets', 'rick'], /steps\/rick\/item\.yaml: no such item; would be right: one of bed, bench, chair, chest, desk, leaning-chair, rack, screen, stool, trolley, two-bay$/],
    ['no item', ['sheets'], /<item>: not given/],
    ['an unknown size', ['sheets', 'rack', '--size', 'huge'], /--size huge: not known; would be right: one of low, standard, tall$/],
    ['an unknown paper', ['sheets', 'rack', '--paper', 'a3'], /--paper a3: not known; would be right: one of a4, letter$/],
  ] as const)('tells %s in one line and writes nothing', async (_, args, told) => {
    await expectOneComplaint(shop, args, told);
  });

  it('tells a folder under a file in one line and writes nothing', async () => {
    await expectOneComplaint(shop, ['sheets', 'rack', '--size', 'low', '--paper', 'a4', '--out', 'steps/rack/item.yaml/here'], /cannot be written \(a file stands in its place\); would be right: a folder that can be written$/, 3);
  });

  it('refuses an item that is not proven', async () => {
    shop.change('steps/rack/item.yaml', 'range: 500 mm to 1100 mm', 'range: 500 mm to 1900 mm');
    shop.change('steps/rack/item.yaml', '  low:\n    width: 800 mm', '  low:\n    width: 1900 mm');
    const { code, told } = await shop.run(['sheets', 'rack', '--size', 'low', '--paper', 'a4']);
    expect(code).toBe(1);
    expect(told).toMatch(/^foldwright: steps\/rack\/item\.yaml: rack low fails .*stock-panel.*; see foldwright check rack\n$/);
    expect(shop.files().filter((file) => file.endsWith('.pdf'))).toEqual([]);
    shop.change('steps/rack/item.yaml', '  low:\n    width: 1900 mm', '  low:\n    width: 800 mm');
  });

  it('writes one file for each size and paper, the same bytes each time', async () => {
    const args = ['sheets', 'stool', '--size', 'low'];
    const first = await shop.run([...args, '--out', 'one']);
    const again = await shop.run([...args, '--out', 'two']);
    expect([first.told, again.told]).toEqual(['', '']);
    const files = ['stool-low-sheets.pdf', 'stool-low-sheets-letter.pdf'].map((file) => `stool/low/${file}`);
    expect(first.out).toBe(files.map((file) => `one/${file}\n`).join(''));
    for (const file of files) expect(shop.read(`one/${file}`).equals(shop.read(`two/${file}`))).toBe(true);
  });
});
