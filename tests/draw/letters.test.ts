import { describe, expect, it } from 'vitest';
import { lettersWritten } from '../../src/draw/index.ts';
import { sleeveEnds } from '../../src/scene/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';

describe('what is written on tubes', () => {
  it('tells tubes of one length apart where they are marked in several ways', () => {
    const model = modelOf(itemNamed('bed'), 'toddler');
    const written = lettersWritten(model);
    const marksOf = new Map<string, Set<string>>();
    for (const { id, shape } of model.parts) {
      if (shape.form !== 'tube') continue;
      const letter = written.get(id) ?? '';
      marksOf.set(letter, new Set([...(marksOf.get(letter) ?? []), String(sleeveEnds(model, id))]));
    }
    expect([...marksOf.keys()].sort()).toEqual(['A', 'B', 'C1', 'C2']);
    for (const marks of marksOf.values()) expect(marks.size).toBe(1);
  });

  it('is a letter alone where tubes of a length are all marked alike', () => {
    expect(new Set(lettersWritten(modelOf(itemNamed('rack'), 'standard')).values())).toEqual(new Set(['A', 'B', 'C']));
  });
});
