import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axesFor, flatPattern, wrapOf, type Flap, type FlatPattern, type Side, type Vec2 } from '../../src/model/index.ts';
import { kitFor, type WrapChoice } from '../support/kits.ts';
import { apart, areaOf, inside, isSimple, toOutline } from '../support/polygons.ts';
import { rackModel, sizes } from '../support/rack.ts';
import { alongX, onPanel, outOf, tabFromAbove, walkedTo } from '../support/walk.ts';

const DEG = Math.PI / 180;

interface Deck extends WrapChoice {
  readonly width: number;
  readonly depth: number;
}

/** Decks within the ranges of the rack's file, panels and tubes near the kit's. */
const anyDeck: fc.Arbitrary<Deck> = fc.record({
  width: fc.integer({ min: 500, max: 1100 }),
  depth: fc.integer({ min: 300, max: 600 }),
  tube: fc.integer({ min: 22, max: 32 }),
  thickness: fc.integer({ min: 5, max: 11 }),
  turnBack: fc.integer({ min: 40, max: 50 }).map((degrees) => degrees * DEG),
  tightest: fc.integer({ min: 25, max: 46 }).map((degrees) => degrees * DEG),
  tab: fc.integer({ min: 40, max: 48 }),
});

const patternOf = (deck: Deck): FlatPattern => {
  const kit = kitFor(deck);
  return flatPattern(kit, axesFor(kit, deck.width, deck.depth));
};

const each = (check: (pattern: FlatPattern, deck: Deck) => void): void =>
  fc.assert(fc.property(anyDeck, (deck) => check(patternOf(deck), deck)), { numRuns: 150 });

const pairs = <T>(list: readonly T[]): readonly (readonly [T, T])[] =>
  list.flatMap((one, index) => list.slice(index + 1).map((other) => [one, other] as const));

const flapOn = (pattern: FlatPattern, side: Side): Flap => {
  const flap = pattern.flaps.find((candidate) => candidate.side === side);
  if (flap === undefined) throw new Error(`no flap on ${side}`);
  return flap;
};

const sorted = (points: readonly Vec2[]): readonly string[] => points.map(([x, y]) => `${x.toFixed(6)} ${y.toFixed(6)}`.replace(/-0\.000000/g, '0.000000')).sort();

describe('the outline', () => {
  it('is a simple polygon, anticlockwise', () => each(({ outline }) => {
    expect(isSimple(outline)).toBe(true);
    expect(areaOf(outline)).toBeGreaterThan(0);
  }));

  it('is the blank less four notches with rounded corners and eight snips', () => each((pattern) => {
    const { blank, notch, notchRadius, outline } = pattern;
    const corner = flapOn(pattern, 'left').corner;
    // Quarter circle in six straights: the corner keeps the square of the radius less a quarter 24-gon.
    const kept = notchRadius ** 2 - (24 / 2) * Math.sin((2 * Math.PI) / 24) * notchRadius ** 2 / 4;
    const expected = blank[0] * blank[1] - 4 * (notch[0] * notch[1] - kept) - 8 * (corner ** 2 / 2);
    expect(areaOf(outline)).toBeCloseTo(expected, 4);
  }));

  it('fills the blank from edge to edge', () => each(({ outline, blank }) => {
    for (const axis of [0, 1] as const) {
      expect(Math.max(...outline.map((point) => point[axis]))).toBeCloseTo(blank[axis] / 2, 9);
      expect(Math.min(...outline.map((point) => point[axis]))).toBeCloseTo(-blank[axis] / 2, 9);
    }
  }));
});

describe('lines of a flap, counted from the inside line', () => {
  it('begin 3 mm inside the frame (common practice, no source)', () => each((pattern, deck) => {
    const frame = (deck.tube ?? 0) / 2;
    expect(pattern.axes[0] - frame - pattern.inside[0]).toBeCloseTo(3, 9);
    expect(pattern.axes[1] - frame - pattern.inside[1]).toBeCloseTo(3, 9);
  }));

  it('come in the order crease … crease, half-cut, pin line, edge, and the edge is the blank\'s', () => each((pattern) => {
    for (const flap of pattern.flaps) {
      const lines = [0, ...flap.creases, flap.halfCut, flap.pinLine, flap.edge];
      expect(lines).toEqual([...lines].sort((a, b) => a - b));
      expect(new Set(lines).size).toBe(lines.length);
      const axis = alongX(flap.side) ? 1 : 0;
      expect(pattern.inside[axis] + flap.edge).toBeCloseTo(pattern.blank[axis] / 2, 9);
    }
  }));

  it('put the pins 15 mm in from the tab\'s edge (common practice, no source)', () => each((pattern) => {
    for (const flap of pattern.flaps) expect(flap.edge - flap.pinLine).toBeCloseTo(15, 9);
  }));
});

describe('pins', () => {
  it('lie in the outline, a head\'s radius and more from every edge', () => each((pattern, deck) => {
    const head = kitFor(deck).panelPin.headDiameter;
    for (const { at, in: where } of pattern.holes) {
      expect(inside(pattern.outline, at)).toBe(true);
      expect(toOutline(pattern.outline, at)).toBeGreaterThan(where === 'tab' ? head / 2 : head);
    }
  }));

  it('go through tab and base: a hole in the tab comes down on its hole in the base', () => each((pattern) => {
    for (const flap of pattern.flaps) {
      const down = outOf(pattern, flap.side) + walkedTo(pattern, flap, flap.pinLine).a;
      const under = flap.pins.map((along) => onPanel(flap.side, along, down));
      expect(sorted(pattern.holes.filter((hole) => hole.in === 'base' && hole.side === flap.side).map(({ at }) => at))).toEqual(sorted(under));
      const flat = flap.pins.map((along) => onPanel(flap.side, along, pattern.inside[alongX(flap.side) ? 1 : 0] + flap.pinLine));
      expect(sorted(pattern.holes.filter((hole) => hole.in === 'tab' && hole.side === flap.side).map(({ at }) => at))).toEqual(sorted(flat));
    }
  }));

  it('never stand nearer to each other than a head is wide', () => each((pattern, deck) => {
    const head = kitFor(deck).panelPin.headDiameter;
    for (const where of ['tab', 'base'] as const) {
      for (const [one, other] of pairs(pattern.holes.filter((hole) => hole.in === where))) {
        expect(Math.hypot(one.at[0] - other.at[0], one.at[1] - other.at[1])).toBeGreaterThan(head);
      }
    }
  }));

  it('stand at both ends first, then evenly, no further apart than 300 mm, and not one too many', () => each((pattern) => {
    for (const { pins, from, to } of pattern.flaps) {
      expect(pins.slice(0, 2)).toEqual([from + 25, to - 25]);
      const along = [...pins].sort((a, b) => a - b);
      const bays = along.slice(1).map((at, index) => at - (along[index] ?? Number.NaN));
      for (const bay of bays) expect(bay).toBeCloseTo(bays[0] ?? Number.NaN, 9);
      expect(Math.max(...bays)).toBeLessThanOrEqual(300 + 1e-6);
      if (bays.length > 1) expect((to - from - 50) / (bays.length - 1)).toBeGreaterThan(300);
    }
  }));

  it('have their whole head on the snipped tab', () => each((pattern, deck) => {
    const radius = kitFor(deck).panelPin.headDiameter / 2;
    for (const flap of pattern.flaps) {
      const tab = tabFromAbove(pattern, flap);
      for (const { at } of pattern.holes.filter((hole) => hole.in === 'base' && hole.side === flap.side)) {
        expect(inside(tab, at)).toBe(true);
        expect(toOutline(tab, at)).toBeGreaterThan(radius);
      }
    }
  }));
});

describe('folded tabs', () => {
  it('of neighbours keep apart by at least the notch\'s gap along the side', () => each((pattern, deck) => {
    for (const [one, other] of pairs(pattern.flaps).filter(([a, b]) => alongX(a.side) !== alongX(b.side))) {
      // Both snips are at 45°: a gap along the side is gap/√2 straight across.
      expect(apart(tabFromAbove(pattern, one), tabFromAbove(pattern, other))).toBeGreaterThanOrEqual(kitFor(deck).practice.notchGap / Math.SQRT2 - 1e-6);
    }
  }));

  it('of neighbours keep apart by the notch\'s gap straight across, as tabCorner says', () => each((pattern, deck) => {
    for (const [one, other] of pairs(pattern.flaps).filter(([a, b]) => alongX(a.side) !== alongX(b.side))) {
      expect(apart(tabFromAbove(pattern, one), tabFromAbove(pattern, other))).toBeGreaterThanOrEqual(kitFor(deck).practice.notchGap - 1e-6);
    }
  }));

  it('of opposite sides do not meet', () => each((pattern) => {
    for (const [one, other] of pairs(pattern.flaps).filter(([a, b]) => alongX(a.side) === alongX(b.side))) {
      expect(apart(tabFromAbove(pattern, one), tabFromAbove(pattern, other))).toBeGreaterThan(20);
    }
  }));

  it('would run into each other unsnipped where the notch is small (the check itself)', () => {
    const pattern = patternOf({ width: 1000, depth: 500, thickness: 11, tube: 32, tab: 48 });
    const unsnipped = pattern.flaps.map((flap) => tabFromAbove(pattern, { ...flap, corner: 1e-6 }));
    expect(Math.min(...pairs(unsnipped).map(([one, other]) => apart(one, other)))).toBe(0);
  });
});

describe('notches', () => {
  it('leave the joints\' sockets free by the gap: a flap ends before the socket begins', () => each((pattern, deck) => {
    const { joint, practice } = kitFor(deck);
    for (const flap of pattern.flaps) {
      const along = alongX(flap.side) ? pattern.axes[0] : pattern.axes[1];
      expect(along - (joint.stop + joint.socketDepth) - flap.to).toBeCloseTo(practice.notchGap, 9);
      expect(flap.from).toBe(-flap.to);
    }
  }));

  it('are square, and end at the flap\'s ends', () => each(({ notch, blank, flaps }) => {
    expect(notch[0]).toBe(notch[1]);
    for (const flap of flaps) expect(blank[alongX(flap.side) ? 0 : 1] / 2 - notch[0]).toBeCloseTo(flap.to, 9);
  }));
});

describe('invariants', () => {
  const mirror = ([x, y]: Vec2): Vec2 => [y, x];

  it('width and depth changed about give the pattern mirrored in the diagonal', () => {
    fc.assert(fc.property(anyDeck, (deck) => {
      const [one, other] = [patternOf(deck), patternOf({ ...deck, width: deck.depth, depth: deck.width })];
      expect(mirror(other.blank)).toEqual(one.blank);
      expect(mirror(other.inside)).toEqual(one.inside);
      expect(sorted(other.outline.map(mirror))).toEqual(sorted(one.outline));
      for (const where of ['tab', 'base'] as const) {
        const places = (pattern: FlatPattern): readonly Vec2[] => pattern.holes.filter((hole) => hole.in === where).map(({ at }) => at);
        expect(sorted(places(other).map(mirror))).toEqual(sorted(places(one)));
      }
      const turned: Readonly<Record<Side, Side>> = { left: 'front', front: 'left', right: 'back', back: 'right' };
      for (const flap of one.flaps) expect({ ...flapOn(other, turned[flap.side]), side: flap.side }).toEqual(flap);
    }), { numRuns: 60 });
  });

  it('opposite sides are alike: the pattern is its own mirror image both ways', () => each(({ outline, holes }) => {
    for (const [sx, sy] of [[-1, 1], [1, -1], [-1, -1]] as const) {
      expect(sorted(outline.map(([x, y]): Vec2 => [sx * x, sy * y]))).toEqual(sorted(outline));
      expect(sorted(holes.map(({ at: [x, y] }): Vec2 => [sx * x, sy * y]))).toEqual(sorted(holes.map(({ at }) => at)));
    }
  }));

  it('a thicker panel, a fatter tube or a wider tab never makes the blank smaller', () => {
    fc.assert(fc.property(anyDeck, fc.integer({ min: 1, max: 4 }), (deck, more) => {
      const side = (changes: Partial<Deck>): number => patternOf({ ...deck, ...changes }).blank[0];
      // A thicker panel takes more round the tube than its earlier half-cut saves.
      expect(side({ thickness: (deck.thickness ?? 9) + more })).toBeGreaterThan(side({}));
      expect(side({ tube: (deck.tube ?? 28) + more })).toBeGreaterThan(side({}));
      expect(side({ tab: (deck.tab ?? 45) + more })).toBeCloseTo(side({}) + 2 * more, 9);
    }), { numRuns: 60 });
  });
});

describe.each(sizes)('the rack\'s own pattern, size %s', (size) => {
  const { pattern, kit } = rackModel(size);

  it('fits the panel as delivered', () => {
    expect(Math.max(...pattern.blank)).toBeLessThanOrEqual(kit.panel.length);
    expect(Math.min(...pattern.blank)).toBeLessThanOrEqual(kit.panel.width);
  });

  it('was drawn for the wrap of its kit', () => {
    const wrap = wrapOf(kit);
    for (const flap of pattern.flaps) {
      expect(flap.creases).toHaveLength(wrap.creases);
      expect(flap.creaseAngle).toBe(wrap.creaseAngle);
    }
  });
});
