import { describe, expect, it } from 'vitest';
import { cachedDrawer } from '../../../src/draw/index.ts';
import { FRAMES } from '../../../src/draw/flat/cable/frames.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import { composePlumb } from '../../../src/draw/picture/index.ts';
import { elevationOf, onPlane } from '../../../src/draw/picture/elevation.ts';
import { leaning, type Shown } from '../../../src/draw/picture/plumb/leaning.ts';
import { plumbOf, type Plumb } from '../../../src/scene/index.ts';
import { workSizes } from '../../support/chosen.ts';
import { modelOf } from '../../support/items.ts';
import { planOf } from '../../support/plans.ts';
import { remembered } from '../../support/remembered.ts';
import { solids } from '../../support/rack.ts';
import { outside, overlaps, pointsOutside, texts } from '../flat/inspect.ts';

const draw = cachedDrawer();

const plumbs = remembered(({ item, size }: typeof workSizes[number]): readonly Plumb[] => {
  const [model, plan] = [modelOf(item, size), planOf(item, size)];
  return plan.steps.flatMap((step) => plumbOf(model, plan, step, solids) ?? []);
});

const composed = remembered((plumb: Plumb, format: 'page' | 'small') => composePlumb(plumb, FORMATS[format].bench, draw));

describe.each(workSizes)('the plumb line of $name', (size) => {
  it.each(['page', 'small'] as const)('is drawn with its figures clear of each other, on paper of a %s', (format) => {
    for (const plumb of plumbs(size)) {
      const pictures = composed(plumb, format);
      expect(pictures.map((picture) => [overlaps(picture.labels), outside(picture), pointsOutside(picture)])).toEqual(pictures.map(() => [[], [], []]));
      const told = pictures.map(texts);
      const measured = plumb.sides.flatMap(({ off, range: [least, most] }) => [String(off), String(least), String(most)]);
      expect(told[0]).toEqual(expect.arrayContaining(measured));
      for (const picture of pictures) expect(picture.height).toBeLessThanOrEqual(FORMATS[format].most);
    }
  });

  it('tells when it leans which steps hold it, and afterwards where to look it up', () => {
    for (const plumb of plumbs(size)) {
      const told = composed(plumb, 'page').flatMap(texts);
      const { held, is, step } = plumb;
      if (is === 'again') expect(told).toEqual(expect.arrayContaining([String(step), String(held.steps[0]), String(FRAMES.drawn)]));
      else expect(told).toEqual(expect.arrayContaining([held.steps[0], held.steps.at(-1)].map(String)));
    }
  });

  it('has of the cords of what leans those tinted that have grown longer', () => {
    for (const plumb of plumbs(size).filter(({ is }) => is === 'again')) {
      const shown: Shown = { leans: 'away', hand: null, cords: true };
      for (const side of plumb.sides) {
        const cords = leaning(plumb, side, shown, { x: 0, y: 0, width: 55, height: 54 }, draw).flatMap((mark) => (mark.mark === 'line' && mark.points.length === 2 && (mark.pen.width === 0.9 || mark.pen.width === 2.2) && mark.pen.colour === 'ink' ? [mark] : []));
        const lengths = (wide: number): readonly number[] => cords.filter(({ pen }) => pen.width === wide).map(({ points: [[ax, ay] = [NaN, NaN], [bx, by] = [NaN, NaN]] }) => Math.hypot(bx - ax, by - ay));
        const [tinted, plain] = [lengths(2.2), lengths(0.9)];
        if (tinted.length + plain.length === 0) continue;
        expect([plain.length > 0, tinted.length > 0]).toEqual([true, true]);
        expect(Math.min(...tinted)).toBeGreaterThan(Math.max(...plain));
      }
    }
  });

  it('is pushed at the side of the work that is away from the string, and the string hangs nearer to the foot then', () => {
    const box = { x: 0, y: 0, width: 55, height: 54 };
    for (const plumb of plumbs(size)) {
      for (const side of plumb.sides) {
        const way = Math.sign(onPlane(elevationOf([], side.view, draw), side.out)[0]);
        const shown = (of: Partial<Shown>): readonly Mark[] => leaning(plumb, side, { leans: 'upright', hand: null, cords: false, ...of }, box, draw);
        const [upright, pushed] = [shown({}), shown({ leans: 'away', hand: 'pushes' })];
        const [before, after] = [upright, pushed].map(gaps);
        expect(before?.[0]).toBeCloseTo(before?.[1] ?? NaN, 6);
        expect(after?.[0]).toBeCloseTo(before?.[0] ?? NaN, 6);
        expect((after?.[1] ?? NaN) * way).toBeLessThan((after?.[0] ?? NaN) * way - 1);
        // The arrow's point and the hand's palm are on the other side of the leg than the string.
        const heads = pushed.flatMap((mark) => (mark.mark === 'area' && mark.rings[0]?.length === 3 ? [mark.rings[0][0] ?? [NaN, NaN]] : []));
        const [tip] = heads.slice(-1);
        expect(((tip?.[0] ?? NaN) - stringAt(pushed)) * way).toBeLessThan(-5);
        // Leaning towards the string it hangs further from the foot, and is pushed back from there.
        const other = shown({ leans: 'towards', hand: 'pushes' });
        const [above, below] = gaps(other);
        expect((below ?? NaN) * way).toBeGreaterThan((above ?? NaN) * way + 1);
        const [back] = other.flatMap((mark) => (mark.mark === 'area' && mark.rings[0]?.length === 3 ? [mark.rings[0]] : [])).slice(-1);
        expect(((back?.[0]?.[0] ?? NaN) - (back?.[1]?.[0] ?? NaN)) * way).toBeLessThan(0);
      }
    }
  });
});

/** Where the string hangs, mm of paper. */
function stringAt(marks: readonly Mark[]): number {
  const found = marks.flatMap((mark) => (mark.mark === 'line' && mark.pen.width === 0.45 && mark.pen.colour === 'ink' ? [mark.points[0]?.[0] ?? NaN] : []));
  expect(found).toHaveLength(1);
  return found[0] ?? NaN;
}

/** The string's distances, above and below, with the way they go, mm of paper. */
const gaps = (marks: readonly Mark[]): readonly number[] =>
  marks.flatMap((mark) => (mark.mark === 'line' && mark.pen.name === 'dimension' ? [(mark.points[1]?.[0] ?? NaN) - (mark.points[0]?.[0] ?? NaN)] : []));
