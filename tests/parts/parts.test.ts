import { describe, expect, it } from 'vitest';
import type { Shape } from '../../src/model/index.ts';
import { COUNTED_KINDS, PART_KINDS, PARTS } from '../../src/parts/facts.ts';
import { items, modelOf } from '../support/items.ts';

const tube: Shape = { form: 'tube', length: 1000, outside: 25, inside: 20, holes: [{ at: 10, diameter: 6 }] };

describe('a kind of part', () => {
  it('weighs what its measures and its stock make it: 1 m of tube 25 × 2.5 of 1.9 g/cm³ (C)', () => {
    // π/4 · (25² − 20²) mm² = 176.715 mm².
    expect(PARTS.post.mass(tube, 1.9e-6)).toBeCloseTo(0.33576, 5);
    // A square one: 25² − 20² mm² = 225 mm².
    expect(PARTS.bar.mass({ ...tube, profile: 'square' }, 1.9e-6)).toBeCloseTo(0.4275, 6);
  });

  it('weighs as the parts of every item do', () => {
    for (const item of items) {
      const { kit, parts } = modelOf(item);
      for (const { id, kind, shape, mass } of parts) {
        const { stock } = PARTS[kind];
        const density = 'cutFrom' in stock ? { tubes: kit.tube.density, panels: kit.panel.density }[stock.cutFrom] : NaN;
        expect([id, PARTS[kind].mass(shape, density)]).toEqual([id, mass]);
      }
    }
  });

  it('comes to hand without holes, and says its length to a tenth', () => {
    expect(PARTS.post.delivered(tube)).toEqual({ ...tube, holes: [] });
    expect(PARTS.post.size({ ...tube, length: 783.349 })).toEqual([783.3]);
  });

  it('is never asked about a shape of another form', () => {
    expect(() => PARTS.cable.size(tube)).toThrow(new RangeError('a shape of the form tube; would be right: cable'));
    expect(() => PARTS.joint.mass(tube, 0)).toThrow('would be right: joint or ported-joint');
  });
});

describe('the kinds of part', () => {
  it('are listed with the big ones first', () => {
    expect(PART_KINDS.slice(0, 2)).toEqual(['panel', 'flat-panel']);
    expect(PART_KINDS.at(-1)).toBe('wing-nut');
  });

  it('are only counted where they come in one size', () => {
    expect(COUNTED_KINDS.map(({ kind }) => kind)).toEqual(['joint', 'panel-pin', 'joint-pin', 'wing-nut']);
  });
});
