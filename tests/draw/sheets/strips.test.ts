import { describe, expect, it } from 'vitest';
import { laidOut } from '../../../src/draw/sheets/laid-out.ts';
import { overlap } from '../../../src/draw/sheets/room.ts';
import { segmentBoxes, segmentRegister, segmentView, type Segment } from '../../../src/draw/sheets/segments.ts';
import { stripWidth, type Strip } from '../../../src/draw/sheets/strip.ts';
import { stripsOf } from '../../../src/draw/sheets/strips.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import { placed, type Model } from '../../../src/model/index.ts';
import { everySize, modelOf } from '../../support/items.ts';
import { heldTogether } from '../../support/joinings.ts';

const papers = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;

/** Places along a strip of the lines of a pen that run from edge to edge. */
const linesAt = (strip: Strip, pen: string): readonly number[] => strip.draw({ scale: 1, origin: [0, 0] }).flatMap((mark) =>
  (mark.mark === 'line' && mark.pen.name === pen && mark.points.length === 2 && Math.abs((mark.points[1]?.[0] ?? 0) - (mark.points[0]?.[0] ?? 0)) === stripWidth ? [mark.points[0]?.[1] ?? NaN] : []));

const holesAt = (strip: Strip): readonly (Mark & { mark: 'circle' })[] =>
  strip.draw({ scale: 1, origin: [0, 0] }).filter((mark): mark is Mark & { mark: 'circle' } => mark.mark === 'circle');

const stripOf = (model: Model, kind: Strip['kind']): readonly Strip[] => stripsOf(model).filter((strip) => strip.kind === kind);
const near = (values: readonly number[]): readonly unknown[] => values.map((value) => expect.closeTo(value, 6) as unknown);

describe.each(everySize.filter(({ item, size }) => modelOf(item, size).patterns.some(({ form }) => form === 'wrapped')))('the gauges of $name', ({ item, size }) => {
  const model = modelOf(item, size);

  it('have crease, half-cut and inside line at the pattern\'s distances on both faces, a panel\'s thickness apart', () => {
    const [strip] = stripOf(model, 'creases');
    const [flap] = model.pattern.flaps;
    if (!strip || !flap) throw new Error('no strip or flap');
    const [edge = NaN, turn = NaN, ...more] = linesAt(strip, 'paper-fold');
    expect(more).toEqual([]);
    expect(turn - edge).toBeCloseTo(model.kit.panel.thickness, 6);
    // Inner face: from the edge back towards the middle of the panel; outer face: onwards from the other fold.
    const fromEdge = flap.creases.map((at) => flap.edge - at);
    const creases = linesAt(strip, 'crease');
    expect(creases.filter((at) => at < edge).map((at) => edge - at).sort((a, b) => b - a)).toEqual(near(fromEdge));
    expect(creases.filter((at) => at > turn).map((at) => at - turn).sort((a, b) => b - a)).toEqual(near(fromEdge));
    expect(linesAt(strip, 'half-cut').map((at) => Math.min(Math.abs(at - edge), Math.abs(at - turn)))).toEqual(near([flap.edge - flap.halfCut, flap.edge - flap.halfCut]));
    expect(linesAt(strip, 'inside').map((at) => Math.min(Math.abs(at - edge), Math.abs(at - turn)))).toEqual(near([flap.edge, flap.edge]));
    // Its holes are punched where it lies when it is wrapped.
    expect(model.kit.practice.punching).toBe('after-wrapping');
    expect(holesAt(strip)).toEqual([]);
  });

  it('have every pin of a side at its place, in from the tab\'s edge as the kit says', () => {
    const strips = stripOf(model, 'pins');
    for (const flap of model.pattern.flaps) {
      const places = [...flap.pins].map((pin) => pin - flap.from).sort((a, b) => a - b);
      const fitting = strips.filter((strip) => Math.abs(strip.length - (flap.to - flap.from)) < 1e-9)
        .filter((strip) => JSON.stringify(holesAt(strip).map(({ centre }) => centre[1].toFixed(6)).sort()) === JSON.stringify(places.map((at) => at.toFixed(6)).sort()));
      expect(fitting).toHaveLength(1);
      for (const { centre } of holesAt(fitting[0] as Strip)) expect(stripWidth - centre[0]).toBeCloseTo(model.kit.practice.pinEdge, 6);
      const gaps = places.slice(1).map((at, index) => at - (places[index] ?? at));
      expect(Math.max(...gaps)).toBeLessThanOrEqual(model.kit.practice.pinPitch + 1e-9);
    }
  });

  it('have the pins of every post at the heights at which they stand in the finished item', () => {
    const strips = stripOf(model, 'posts');
    for (const post of model.parts.filter(({ kind }) => kind === 'post')) {
      const heights = heldTogether(model).filter(({ by, parts }) => by.startsWith('joint-pin-') && parts.includes(post.id))
        .map(({ by }) => placed(model.parts.find(({ id }) => id === by)?.pose ?? [], [0, 0, 0])[2]).sort((a, b) => a - b);
      expect(heights.length).toBeGreaterThan(0);
      // The foot is the first thick line from edge to edge; drawn heights count from it.
      const fitting = strips.filter((strip) => {
        const [foot = NaN] = linesAt(strip, 'motion');
        return JSON.stringify(holesAt(strip).map(({ centre }) => (centre[1] - foot).toFixed(3)).sort()) === JSON.stringify(heights.map((at) => at.toFixed(3)).sort());
      });
      expect(fitting).toHaveLength(1);
      const [foot = NaN] = linesAt(fitting[0] as Strip, 'motion');
      // The sleeve hangs by its pin: its lower end is sleeve-below less pin-height under the pin, or the joint is turned over.
      const { sleeveBelow, sleeveAbove, pinHeight } = model.kit.joint;
      const marks = linesAt(fitting[0] as Strip, 'cut').map((at) => at - foot).filter((at) => at < (post.shape.form === 'tube' ? post.shape.length : 0) - 1e-6);
      for (const [index, mark] of marks.sort((a, b) => a - b).entries()) {
        const below = (heights[index] ?? NaN) - mark;
        expect([sleeveBelow - pinHeight, sleeveAbove + pinHeight].some((right) => Math.abs(below - right) < 1e-6), String(below)).toBe(true);
      }
    }
  });
});

describe.each(Object.entries(papers))('the pieces of the strips on %s', (_, sheet) => {
  const sets = everySize.map(({ item, size }) => laidOut(modelOf(item, size), sheet));

  it('cover each strip, overlap, and fit the window', () => {
    for (const { strips, room } of sets) {
      for (const pieces of strips) {
        expect(pieces[0]?.from).toBe(0);
        expect(pieces.at(-1)?.to).toBe(pieces[0]?.strip.length);
        pieces.slice(1).forEach((piece, index) => { expect((pieces[index]?.to ?? NaN) - piece.from).toBeCloseTo(overlap, 9); });
        for (const { from, to } of pieces) expect(to - from).toBeLessThanOrEqual(room.window.height + 1e-9);
        expect(pieces.map(({ letter }) => letter).join('')).toBe('ABCDEFGHIJKL'.slice(0, pieces.length));
      }
    }
  });

  it('share the register marks of a join, on the same spots of the strip', () => {
    const spots = (piece: Segment, room: typeof sets[number]['room']): readonly string[] => {
      const [box] = segmentBoxes([piece], room.window);
      if (!box) throw new Error('no box');
      const { origin } = segmentView(piece, box);
      return segmentRegister(piece, box).map(([x, y]) => `${(x - origin[0]).toFixed(6)} ${(y - origin[1]).toFixed(6)}`);
    };
    for (const { strips, room } of sets) {
      for (const pieces of strips) {
        pieces.slice(1).forEach((piece, index) => {
          const before = pieces[index];
          if (!before) throw new Error('no piece');
          expect(spots(piece, room).slice(0, 2)).toEqual(spots(before, room).slice(-2));
        });
      }
    }
  });

  it('all stand on some sheet, within its window', () => {
    for (const { strips, stripSheets, room: { window } } of sets) {
      expect(stripSheets.flat()).toEqual(strips.flat());
      for (const pieces of stripSheets) for (const box of segmentBoxes(pieces, window)) expect(box.x + box.width).toBeLessThanOrEqual(window.x + window.width + 1e-9);
    }
  });
});
