import { describe, expect, it } from 'vitest';
import { actionPictogram, isPairName, loadNumerals, pairFor, pairPictures, pictogram, pictogramNames, safetyColours, type PairName, type PictogramName } from '../../../src/draw/pictograms/index.ts';
import type { Action, Tool } from '../../../src/plan/index.ts';
import { inkBounds, paint, shapesOf } from './painter.ts';
import { sheetSvg } from './sheet.ts';

const tools: Record<Tool, true> = {
  tape: true, pencil: true, 'straight-edge': true, saw: true, knife: true, punch: true, creaser: true, mallet: true, drill: true, hands: true, file: true, screwdriver: true, scale: true, bottle: true, square: true, 'plumb-line': true, clamp: true, steps: true, block: true, board: true, water: true, 'sticky-tape': true, finder: true,
};
const actions: Record<Action, true> = {
  'cut-tubes': true, 'cut-blank': true, 'mark-inside': true, 'mark-creases': true, 'mark-notches': true, 'punch-holes': true,
  'cut-notches': true, crease: true, 'half-cut': true, 'push-tubes': true, 'close-frame': true, 'turn-up': true, 'pin-corners': true, 'set-in': true, 'lay-frame': true, 'wrap-side': true,
  'punch-tab': true, 'pin-side': true, 'mark-posts': true, 'push-posts': true, drill: true,
  'pin-posts': true, 'turn-item': true, 'stand-up': true, 'cut-panel': true, 'hold-panel': true, 'pin-panel': true, brace: true,
  'slide-on': true, 'lay-panel': true, 'fit-end': true, 'fit-hinge': true, 'fit-bracket': true, 'cap-ends': true, 'fix-to-wall': true,
};
const others: readonly PictogramName[] = [
  'one-person', 'one-child', 'two-people', 'time', 'right', 'wrong', 'look', 'gauge', 'again', 'load', 'wall-fix', 'page-turn',
  'seat-load', 'bed-load', 'mattress', 'unproved', 'for-adults', 'for-anyone', 'for-pupils', 'untested-joint',
];

/** Ink by cell of one unit: what a printer leaves at 8 mm. */
const inked = (name: PictogramName): readonly boolean[] => {
  const { svg, width, height } = pictogram(name);
  return paint(shapesOf(svg), width, height, 1).map((cell) => cell !== null && cell !== '#fff' && cell !== '#d9d9d9');
};

/** Mandatory, prohibition or warning; null for what is no sign. ISO 7010 has no number that we know for one of them. */
const shapeOfSign = (name: PictogramName): string | null => (name === 'no-drilling-into-lines' ? 'P' : /^([MPW])\d{3}$/.exec(name)?.[1] ?? null);

/** 0 the same ink … 1 no ink in common. */
const difference = (one: readonly boolean[], other: readonly boolean[]): number => {
  const union = one.filter((cell, i) => cell || other[i]).length;
  return one.filter((cell, i) => cell !== other[i]).length / union;
};

describe('the test painter', () => {
  it('measures known areas', () => {
    const disc = paint(shapesOf('<circle cx="24" cy="24" r="20" fill="#000"/>'), 48, 48, 0.25).filter(Boolean).length / 16;
    expect(disc / (Math.PI * 400)).toBeCloseTo(1, 2);
    const stroke = paint(shapesOf('<path d="M10 24L38 24" fill="none" stroke="#000" stroke-width="4" stroke-linecap="round" stroke-linejoin="round"/>'), 48, 48, 0.25).filter(Boolean).length / 16;
    expect(stroke / (28 * 4 + Math.PI * 4)).toBeCloseTo(1, 1);
    const arc = paint(shapesOf('<path d="M4 24A20 20 0 0 1 44 24z" fill="#000"/>'), 48, 48, 0.25).filter(Boolean).length / 16;
    expect(arc / (Math.PI * 200)).toBeCloseTo(1, 2);
  });

  it.each(['<text>5</text>', '<path id="a" d="M0 0L1 1" fill="#000"/>', '<path d="M0 0S1 1 2 2" fill="#000"/>', '<image/>', '<g transform="scale(2)"></g>'])(
    'refuses %s', (svg) => expect(() => shapesOf(svg)).toThrow());
});

describe('the registry', () => {
  it('has a picture for every tool, action and other name', () => {
    for (const name of [...Object.keys(tools), ...others] as PictogramName[]) expect(shapesOf(pictogram(name).svg).length, name).toBeGreaterThan(0);
    const pictures = Object.keys(actions).map((action) => actionPictogram(action as Action).svg);
    expect(new Set(pictures).size).toBe(Object.keys(actions).length);
    expect(actionPictogram('drill').svg).not.toBe(pictogram('drill').svg);
  });

  it('lists every name once', () => {
    // 23 tools, 35 kinds of work, 12 signs, the others, and two pictures for each of 24 pairs.
    expect(pictogramNames).toHaveLength(23 + 35 + 12 + others.length + 2 * 24);
    expect(new Set(pictogramNames).size).toBe(pictogramNames.length);
  });

  it('pairs right and wrong', () => {
    const names = Object.keys(pairPictures) as PairName[];
    for (const name of names) {
      const { right, wrong } = pairFor(name);
      expect([right.name, wrong.name]).toEqual([`${name}-right`, `${name}-wrong`]);
      expect([right.width, wrong.width, right.height]).toEqual([72, 72, 48]);
    }
    expect(isPairName('tab-flat')).toBe(true);
    expect(isPairName('toString')).toBe(false);
  });
});

describe.each(pictogramNames)('%s', (name) => {
  const { svg, width, height } = pictogram(name);
  const shapes = shapesOf(svg);
  const isSign = shapeOfSign(name) !== null;

  it('has only plain colours', () => {
    const colours = ['none', '#000', '#fff', '#d9d9d9', ...(isSign ? Object.values(safetyColours) : [])];
    for (const { fill, stroke } of shapes) expect(colours, `${fill} ${stroke}`).toEqual(expect.arrayContaining([fill, stroke]));
  });

  it('has no line under two units', () => {
    for (const { stroke, width: lineWidth } of shapes) if (stroke !== 'none') expect(lineWidth).toBeGreaterThanOrEqual(2);
  });

  it('stays inside its grid', () => {
    const { left, top, right, bottom } = inkBounds(shapes);
    expect(Math.min(left, top)).toBeGreaterThanOrEqual(0);
    expect(right).toBeLessThanOrEqual(width);
    expect(bottom).toBeLessThanOrEqual(height);
  });

  it('fills its grid enough to be seen at 8 mm', () => {
    const { left, top, right, bottom } = inkBounds(shapes);
    expect(Math.max((right - left) / width, (bottom - top) / height)).toBeGreaterThanOrEqual(0.75);
  });
});

describe('at 8 mm', () => {
  it('the thinnest line prints no thinner than the thin line of ISO 128-20 (R, 0.25 mm in the 0.5 group)', () => {
    expect((2 * 8) / 48).toBeGreaterThanOrEqual(0.25);
  });

  it('no two square pictures look alike', () => {
    const squares = pictogramNames.filter((name) => pictogram(name).width === 48).map((name) => [name, inked(name)] as const);
    const alike = squares.flatMap(([one, a], i) => squares.slice(i + 1).filter(([, b]) => difference(a, b) < 0.35).map(([other]) => [one, other] as const));
    // The mandatory signs share their disc, the warnings their triangle, the prohibitions their ring and bar: they are told apart by the symbol, above.
    expect(alike.filter(([one, other]) => shapeOfSign(one) === null || shapeOfSign(one) !== shapeOfSign(other))).toEqual([]);
  });

  it('right and wrong differ in at least a tenth of their ink', () => {
    for (const name of Object.keys(pairPictures) as PairName[]) {
      expect(difference(inked(`${name}-right`), inked(`${name}-wrong`)), name).toBeGreaterThanOrEqual(0.1);
    }
  });

  it.each(Object.entries(loadNumerals))('%s leaves its face empty for the numeral', (name, { x, y, width, height }) => {
    const cells = paint(shapesOf(pictogram(name as PictogramName).svg), 48, 48, 1);
    for (let row = y; row < y + height; row++) for (let column = x; column < x + width; column++) expect(cells[row * 48 + column]).toBe('#fff');
  });
});

describe('the whole sheet', () => {
  it('is as stored', async () => {
    await expect(sheetSvg(pictogramNames)).toMatchFileSnapshot('stored/pictograms.svg');
  });
});
