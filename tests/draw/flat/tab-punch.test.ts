import { describe, expect, it } from 'vitest';
import { checkModel } from '../../../src/check/index.ts';
import { loadSolids } from '../../../src/model/index.ts';
import { planItem } from '../../../src/plan/index.ts';
import { declaredFor } from '../../../src/read/index.ts';
import { rowOf } from '../../../src/work/punch-tab/row.ts';
import { everySize, modelOf } from '../../support/items.ts';

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
      expect(wanted.some(({ length }) => Math.abs(length - (row?.length ?? NaN)) <= 0.5)).toBe(true);
    }
  });
});
