import { describe, expect, it } from 'vitest';
import { ownPanels, type OwnPiece } from '../../src/cut/index.ts';
import { everySize, modelOf } from '../support/items.ts';

const apart = (a: OwnPiece, b: OwnPiece): boolean => ([0, 1] as const).some((axis) => a.at[axis] + a.sides[axis] <= b.at[axis] + 1e-6 || b.at[axis] + b.sides[axis] <= a.at[axis] + 1e-6);

describe.each(everySize.map(({ name, item, size }) => [name, item, size] as const))('the panels of the %s', (_, item, size) => {
  const model = modelOf(item, size);
  const sheets = ownPanels(model);

  it('have every piece once, on its stock panel, none over another', () => {
    const blanks = model.patterns.flatMap(({ form, partIds }) => (form === 'flat' ? [] : partIds)).length;
    const plates = model.plates.flatMap(({ partIds }) => partIds).length;
    expect(sheets.flat()).toHaveLength(blanks + plates);
    for (const pieces of sheets) {
      for (const { at, sides } of pieces) {
        expect(Math.min(...at)).toBeGreaterThanOrEqual(0);
        expect(at[0] + sides[0]).toBeLessThanOrEqual(model.kit.panel.length + 1e-6);
        expect(at[1] + sides[1]).toBeLessThanOrEqual(model.kit.panel.width + 1e-6);
      }
      expect(pieces.every((piece, index) => pieces.slice(index + 1).every((other) => apart(piece, other)))).toBe(true);
    }
  });

  it('are no more than if each piece had a panel of its own, and no fewer than their area asks for', () => {
    const area = sheets.flat().reduce((sum, { sides }) => sum + sides[0] * sides[1], 0);
    expect(sheets.length).toBeLessThanOrEqual(sheets.flat().length);
    expect(sheets.length).toBeGreaterThanOrEqual(Math.ceil(area / (model.kit.panel.length * model.kit.panel.width) - 1e-9));
  });
});

it('cut the backrest of the smallest chair from what its seat leaves over', () => {
  const chair = everySize.find(({ name }) => name === 'chair mark-2');
  if (chair === undefined) throw new Error('no chair');
  expect(ownPanels(modelOf(chair.item, chair.size)).map((pieces) => pieces.map(({ is }) => is))).toEqual([['blank', 'plate']]);
});
