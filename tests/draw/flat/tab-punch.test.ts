import { describe, expect, it } from 'vitest';
import { rowOf } from '../../../src/work/punch-tab/row.ts';
import { everySize, itemNamed, modelOf } from '../../support/items.ts';
import { planOf } from '../../support/plans.ts';
import { tabPunchMarks, tabPunchPicture } from '../../../src/draw/flat/tab-punch.ts';
import { linesOf, outside, overlaps, pointsOutside } from './inspect.ts';

const tab9 = { thickness: 9, skin: 1, diameter: 5, fromEdge: 15, depth: 15 };
const wrapped = everySize.filter(({ item, size }) => item.sizes[0]?.name === size && modelOf(item, size).patterns.some(({ form }) => form === 'wrapped'));

describe.each(wrapped)('the holes of the tabs of the $name', ({ item, size }) => {
  it('are told at the places where the pattern has the pins, from the end of the tab', () => {
    const model = modelOf(item, size);
    const rows = planOf(item, model.size).steps
      .filter(({ action, detail }) => action === 'punch-tab' && detail.on === 'side').map((step) => rowOf(model, step));
    const wanted = model.pattern.flaps.map(({ pins, from, to }) => ({ at: pins.map((pin) => Math.round(2 * (pin - from)) / 2).sort((a, b) => a - b), length: to - from }));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(wanted.map(({ at }) => at)).toContainEqual(row?.at);
      expect(wanted.some(({ length }) => row?.stands === false && Math.abs(length - row.length) <= 0.5)).toBe(true);
    }
  });

  it('are drawn on the tab as it is: its corners cut off to the scale that it is drawn to each way, nothing behind a panel that lies on the bench', () => {
    const model = modelOf(item, size);
    const [flap] = model.pattern.flaps;
    const steps = planOf(item, model.size).steps.filter(({ action, detail }) => action === 'punch-tab' && detail.on === 'side');
    const row = steps[0] === undefined ? null : rowOf(model, steps[0]);
    if (row === null || row.stands) throw new Error('no row of holes');
    expect([row.deep, row.corner, row.isBlockHeld]).toEqual([(flap?.edge ?? 0) - (flap?.halfCut ?? 0), flap?.corner, false]);
    expect(steps[0]?.tools).not.toContain('board');
    const [tab] = linesOf(tabPunchMarks(tab9, row, { width: 165, height: 60 })).filter(({ closed, points }) => closed && points.length === 6).map(({ points }) => points);
    const [a, b, c, d] = tab ?? [];
    expect(((d?.[1] ?? NaN) - (c?.[1] ?? NaN)) / ((d?.[1] ?? NaN) - (a?.[1] ?? NaN))).toBeCloseTo(row.corner / row.deep, 9);
    expect(((c?.[0] ?? NaN) - (d?.[0] ?? NaN)) / ((b?.[0] ?? NaN) - (a?.[0] ?? NaN))).toBeCloseTo(row.corner / row.length, 9);
  });
});

const chest = itemNamed('chest');

describe.each(chest.sizes)('the holes in the corners of the box of the chest, $name', ({ name }) => {
  it('are told from the floor of the box, as the pattern has them from the line where the wall is turned up', () => {
    const model = modelOf(chest, name);
    const step = planOf(chest, model.size).steps.find(({ action, detail }) => action === 'punch-tab' && detail.on !== 'side');
    if (step === undefined) throw new Error('no step punches the corners');
    const row = rowOf(model, step);
    const [pattern] = model.patterns;
    // Two tabs on each of two walls.
    expect([row?.stands, row?.stands === true ? row.corners : 0]).toEqual([true, 4]);
    const lugs = pattern?.flaps.flatMap((flap) => flap.lugs.map(({ pins }) => pins.map((pin) => pin - flap.root))) ?? [];
    expect(lugs.length).toBe(4);
    // No hole stands lower than half a panel over the floor, none over another.
    expect(row?.at.length).toBe(lugs[0]?.length);
    for (const [index, high] of (row?.at ?? []).entries()) expect(high).toBeGreaterThan(index === 0 ? model.kit.panel.thickness / 2 : row?.at[index - 1] ?? 0);
    const picture = tabPunchPicture(tab9, row, 165);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture)]).toEqual([[], [], []]);
    for (const high of row?.at ?? []) expect(picture.svg).toContain(`>${high}<`);
  });

  it('and in its rims, which lie on its walls, are punched against a block of wood that is held behind the wall', () => {
    const model = modelOf(chest, name);
    const steps = planOf(chest, model.size).steps.filter(({ action }) => action === 'punch-tab');
    expect(steps.length).toBeGreaterThan(1);
    for (const step of steps) {
      const row = rowOf(model, step);
      expect([step.tools.includes('board'), row?.isBlockHeld]).toEqual([true, true]);
      const picture = tabPunchPicture(tab9, row, 165);
      expect([overlaps(picture.labels), outside(picture), pointsOutside(picture)]).toEqual([[], [], []]);
      // The wood is there when the same without a wall has none: as many grain lines more.
      const grain = (shown: typeof row): number => linesOf(tabPunchMarks(tab9, shown, picture)).filter(({ pen, closed, points }) => pen.name === 'edge' && !closed && points.length === 2).length;
      expect(grain(row) - grain(row?.stands === false ? { ...row, isBlockHeld: false } : null)).toBeGreaterThanOrEqual(4);
    }
  });
});
