import { describe, expect, it } from 'vitest';
import { findPicture, pictureId, pictureOf, piecesOf, type PictureOf } from '../../src/draw/index.ts';

const step = (number: number, piece: number): PictureOf => ({ what: 'step', step: number, piece });
const every: readonly PictureOf[] = [
  { what: 'finished' }, { what: 'finished-thumb' }, { what: 'lettered' }, { what: 'ordered', place: 0 }, { what: 'part', kind: 'joint' },
  { what: 'small-part', kind: 'flat-panel', plate: 0 }, { what: 'small-part', kind: 'flat-panel', plate: 1 }, { what: 'step-part', step: 3, kind: 'joint' }, { what: 'step-blocks', step: 3 }, { what: 'blocks' }, { what: 'stock' }, { what: 'cut-bars', piece: 0 }, { what: 'cut-bars', piece: 1 },
  { what: 'pattern', pattern: 0 }, { what: 'pattern', pattern: 1 }, { what: 'crease-section', pattern: 0 }, { what: 'crease-section', pattern: 1 }, { what: 'plate', plate: 0 }, { what: 'run', run: 'deck' }, step(1, 0), step(1, 1), step(1, 27), step(11, 0),
  { what: 'step-thumb', step: 1 }, { what: 'tube-sheet', place: 0 }, { what: 'panel-sheet', place: 0 }, { what: 'marking-sheet', place: 0 },
];

describe('what a picture is of', () => {
  it('gives each picture a name of its own', () => {
    expect(new Set(every.map(pictureId)).size).toBe(every.length);
    expect([step(7, 0), step(7, 1), step(7, 2)].map(pictureId)).toEqual(['step:7', 'step:7:a', 'step:7:b']);
  });

  it('finds each among all others', () => {
    const pictures = every.map((of, place) => ({ of, place }));
    expect(every.map((of) => findPicture(pictures, { ...of })?.place)).toEqual(every.map((_, place) => place));
    expect(findPicture(pictures, step(2, 0))).toBeUndefined();
  });

  it('gives the pictures of a step, and no other step\'s, in order', () => {
    const pictures = [step(11, 0), step(1, 2), step(1, 0), { what: 'cut-bars', piece: 0 } as const, step(1, 1), step(12, 1)].map((of) => ({ of }));
    expect(piecesOf(pictures, { what: 'step', step: 1 }).map(({ of }) => of)).toEqual([step(1, 0), step(1, 1), step(1, 2)]);
    expect(piecesOf(pictures, { what: 'cut-bars' })).toHaveLength(1);
    expect(piecesOf(pictures, { what: 'step', step: 3 })).toEqual([]);
  });

  it('tells which picture is missing and which there are', () => {
    expect(() => pictureOf([{ of: step(3, 1) }, { of: step(3, 0) }], step(3, 2), 'booklet')).toThrow('booklet: no picture "step:3:b"; there are step:3, step:3:a');
    expect(() => pictureOf([], { what: 'pattern', pattern: 0 }, 'guide')).toThrow('guide: no picture "pattern"; there are none');
  });
});
