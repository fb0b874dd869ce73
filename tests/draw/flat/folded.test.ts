import { describe, expect, it } from 'vitest';
import { buildModel, flatPattern, type Model, type Pattern } from '../../../src/model/index.ts';
import { foldedPanels, foldingOf, patternSheet } from '../../../src/draw/folded-panels.ts';
import { FORMATS, type PageFormat } from '../../../src/draw/formats.ts';
import { flapKinds } from '../../../src/draw/flat/folded/flap-kinds.ts';
import { barAxis, bendFrames } from '../../../src/draw/flat/folded/fold-series.ts';
import { foldedMarks, foldedPictures } from '../../../src/draw/flat/folded/folded-stage.ts';
import { holePlaces, outlinePlaces, punchedFlat } from '../../../src/draw/flat/folded/coordinates.ts';
import { bendLines } from '../../../src/draw/flat/folded/bend-lines.ts';
import { itemNamed, modelOf } from '../../support/items.ts';
import { structureItem, structureNames } from '../../support/structures.ts';
import { linesOf, outside, overlaps, texts, viewOf } from './inspect.ts';

const stages = ['inside', 'creases', 'notches', 'holes', 'notches-cut', 'crease', 'half-cut'] as const;
const models: readonly { readonly name: string; readonly size: string; readonly model: Model }[] = structureNames.flatMap((name) => {
  const item = structureItem(name);
  return item.sizes.map(({ name: size }) => ({ name, size, model: buildModel(item, size) }));
});
const of = (name: string): Model => {
  const found = models.find((each) => each.name === name && each.size === 'standard');
  if (found === undefined) throw new Error(`no ${name}`);
  return found.model;
};
const foldedOf = (name: string): Pattern => {
  const [panel] = foldedPanels(of(name));
  if (panel === undefined) throw new Error(`${name} folds no panel`);
  return panel.pattern;
};

describe.each(models)('the folded panels of $name, $size', ({ model }) => {
  it('are drawn on every paper at every stage, their figures apart and on the paper', () => {
    for (const { index, pattern } of foldedPanels(model)) {
      for (const format of ['page', 'small'] as const satisfies readonly PageFormat[]) {
        const pictures = [
          ...stages.flatMap((stage) => foldedPictures(pattern, { stage }, FORMATS[format].bench)),
          patternSheet(model, index, FORMATS[format].pattern), foldingOf(model, index, FORMATS[format].sections),
        ];
        for (const picture of pictures) {
          expect(overlaps(picture.labels)).toEqual([]);
          expect(outside(picture)).toEqual([]);
        }
      }
    }
  });
});

describe('which drawing a pattern has', () => {
  it('that of four equal sides where it is folded round four bars, as the five items of decks', () => {
    for (const name of ['rack', 'desk', 'stool', 'bed', 'chair']) {
      const model = modelOf(itemNamed(name), itemNamed(name).sizes[1]?.name);
      expect(foldedPanels(model).map(({ full }) => full)).toEqual([model.pattern]);
    }
    for (const name of ['trolley', 'leaning-chair']) expect(foldedPanels(of(name)).map(({ full }) => full?.flaps.length)).toEqual([4]);
  });

  it('its own where it has three flaps or is a tray; none where panels are flat', () => {
    for (const name of ['bench', 'two-bay', 'chest']) expect(foldedPanels(of(name)).map(({ full }) => full)).toEqual([null]);
    expect(foldedPanels(of('screen'))).toEqual([]);
  });
});

describe('the seat of the bench, on three bars', () => {
  const seat = foldedOf('bench');

  it('has a crease line for every crease of its three flaps', () => {
    expect(seat.flaps).toHaveLength(3);
    const creases = (marks: ReturnType<typeof foldedMarks>): number => linesOf(viewOf(marks, 'whole').marks).filter(({ pen }) => pen.name === 'crease').length;
    expect(creases(foldedMarks(seat, { stage: 'creases' }, FORMATS.page.bench))).toBe(3 * 5);
    expect(bendLines(seat).filter(({ is }) => is === 'half-cut')).toHaveLength(3);
  });

  it('tells its flaps, which are alike, once, with what their lines measure', () => {
    const [kind, ...others] = flapKinds(seat);
    expect(others).toEqual([]);
    expect(kind?.places).toHaveLength(3);
    const told = foldedPictures(seat, { stage: 'creases' }, FORMATS.page.bench).flatMap(texts);
    // As on a panel that is folded round all four sides, worked out apart: from a line 3 mm inside a tube of 28 mm.
    const full = flatPattern(of('bench').kit, [300, 200]).flaps[0];
    expect(seat.flaps[0]?.bends.map(({ at }) => at + 17)).toEqual([...full?.creases ?? [], full?.halfCut].map((at) => expect.closeTo(at ?? NaN, 6)));
    for (const { at } of seat.flaps[0]?.bends ?? []) expect(told).toContain(String(Math.round(2 * (at + 17)) / 2));
    expect(told).toContain('×3');
  });

  it('measures its edges and holes from the corner of the blank', () => {
    const [xs, ys] = outlinePlaces(seat);
    const toldSides = [0, 1].map((axis) => Math.round(2 * ((seat.max[axis] ?? 0) - (seat.min[axis] ?? 0))) / 2);
    expect([Math.max(...xs), Math.max(...ys)]).toEqual(toldSides);
    const [across, up] = holePlaces(seat);
    // Holes for pins are punched after wrapping; the round corners of the four notches are left.
    expect(punchedFlat(seat).length).toBe(4);
    for (const { at } of punchedFlat(seat)) {
      expect(across.some((x) => Math.abs(x - (at[0] - seat.min[0])) < 0.5)).toBe(true);
      expect(up.some((y) => Math.abs(y - (at[1] - seat.min[1])) < 0.5)).toBe(true);
    }
  });
});

describe('figures of a panel whose sides are alike', () => {
  it.each(['small', 'standard', 'large'])('mirror each other as they are told: chest %s', (size) => {
    for (const pattern of modelOf(itemNamed('chest'), size).patterns.filter(({ form }) => form === 'tray')) {
      const [xs] = outlinePlaces(pattern);
      const whole = Math.max(...xs);
      expect(xs.filter((x) => x < whole).map((x) => whole - x).toSorted((a, b) => a - b)).toEqual(xs.filter((x) => x < whole));
    }
  });
});

describe('the tray of the chest', () => {
  const tray = foldedOf('chest');
  const [rim] = tray.flaps;

  it('has three kinds of flaps: walls with rims, the back wall without, lugs', () => {
    expect(flapKinds(tray).map(({ bends, places }) => [bends.length, places.length])).toEqual([[8, 3], [2, 1], [2, 4]]);
  });

  it('creases the turn-up on the inner face and the rim on the outer one', () => {
    expect(rim?.bends.map(({ turn }) => Math.sign(turn))).toEqual([1, 1, -1, -1, -1, -1, -1, 1]);
  });

  it('goes round its bar as far from the axis on every facet', () => {
    if (rim === undefined) throw new Error('no rim');
    const axis = barAxis(tray, rim);
    const { kit } = of('chest');
    const folded = bendFrames(tray, rim).at(-1)?.outline ?? [];
    const away = folded.map(([a, b], place) => {
      const [c, d] = folded[(place + 1) % folded.length] ?? [a, b];
      const long = Math.hypot(c - a, d - b);
      const along = Math.max(0, Math.min(1, ((axis[0] - a) * (c - a) + (axis[1] - b) * (d - b)) / (long * long || 1)));
      return Math.hypot(axis[0] - a - along * (c - a), axis[1] - b - along * (d - b));
    });
    expect(Math.min(...away)).toBeGreaterThanOrEqual(kit.tube.outsideDiameter / 2);
    expect(Math.min(...away)).toBeLessThan(kit.tube.outsideDiameter / 2 + kit.practice.wrapClearance + 0.5);
  });
});
