import { describe, expect, it } from 'vitest';
import { checkModel } from '../../../src/check/index.ts';
import { loadSolids } from '../../../src/model/index.ts';
import { planItem } from '../../../src/plan/index.ts';
import { declaredFor } from '../../../src/read/index.ts';
import { rowOf } from '../../../src/work/punch-tab/row.ts';
import { everySize, itemNamed, modelOf } from '../../support/items.ts';
import { tabPunchPicture } from '../../../src/draw/flat/tab-punch.ts';
import { outside, overlaps, pointsOutside } from './inspect.ts';

const solids = await loadSolids();
const wrapped = everySize.filter(({ item, size }) => item.sizes[0]?.name === size && modelOf(item, size).patterns.some(({ form }) => form === 'wrapped'));

describe.each(wrapped)('the holes of the tabs of the $name', ({ item, size }) => {
  it('are told at the places where the pattern has the pins, from the end of the tab', () => {
    const model = modelOf(item, size);
    const rows = planItem(model, item.order, solids, checkModel(model, declaredFor(item, size)).advice.wall).steps
      .filter(({ action, detail }) => action === 'punch-tab' && detail.on === 'side').map((step) => rowOf(model, step));
    const wanted = model.pattern.flaps.map(({ pins, from, to }) => ({ at: pins.map((pin) => Math.round(2 * (pin - from)) / 2).sort((a, b) => a - b), length: to - from }));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(wanted.map(({ at }) => at)).toContainEqual(row?.at);
      expect(wanted.some(({ length }) => row?.stands === false && Math.abs(length - row.length) <= 0.5)).toBe(true);
    }
  });
});

const chest = itemNamed('chest');

describe.each(chest.sizes)('the holes in the corners of the box of the chest, $name', ({ name }) => {
  it('are told from the floor of the box, as the pattern has them from the line where the wall is turned up', () => {
    const model = modelOf(chest, name);
    const step = planItem(model, chest.order, solids, checkModel(model, declaredFor(chest, name)).advice.wall).steps.find(({ action, detail }) => action === 'punch-tab' && detail.on !== 'side');
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
    const picture = tabPunchPicture({ thickness: 9, skin: 1, diameter: 5, fromEdge: 15, depth: 15 }, row, 165);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture)]).toEqual([[], [], []]);
    for (const high of row?.at ?? []) expect(picture.svg).toContain(`>${high}<`);
  });
});
