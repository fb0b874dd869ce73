// Sway of posts and decks against rigid posts on springs and the stiff deck on walls, worked by hand (C).
import { describe, expect, it } from 'vitest';
import { factor, solveFactored } from '../../../src/check/frame/factor.ts';
import { standOf } from '../../../src/check/frame/index.ts';
import { standInputOf } from '../../../src/check/stand/stand-input.ts';
import { defaultLimits } from '../../../src/check/index.ts';
import { modelOf } from '../items.ts';
import { pushDeck, tautDiagonalStiffness, type Wall } from '../../against/rigid-deck.ts';
import { FrameError, type Drift, type SwayCable, type SwayInput, type SwayLevel } from '../../../src/check/frame/index.ts';

const [X, Y] = [1040, 540];
const EA = 60_000;
type Face = 'front' | 'right' | 'back' | 'left';
/** Posts: 0 front left, 1 front right, 2 back right, 3 back left. */
const sides: Readonly<Record<Face, readonly [number, number]>> = { front: [0, 1], right: [1, 2], back: [2, 3], left: [3, 0] };
const ring = Object.values(sides);
const runOf = (face: Face): number => (face === 'front' || face === 'back' ? X : Y);

const crossed = (faces: readonly Face[], low: number, high: number): readonly SwayCable[] => faces.flatMap((face) => {
  const [a, b] = sides[face];
  return [[a, b], [b, a]].map(([from = 0, to = 0]) => ({ from: { post: from, height: low }, to: { post: to, height: high } }));
});

const deck = (height: number): SwayLevel => ({ height, tubes: ring, stiffened: true });
const kitTube = { modulus: 23_000, area: 235.62, second: 18_690, usedStockFactor: 0.7 };
/** Posts and tubes so stiff that only the cables give. */
const stiffTube = { modulus: 2e7, area: 235.62, second: 1e7, usedStockFactor: 1 };

function rack(more: Partial<SwayInput>): SwayInput {
  return {
    posts: [[0, 0], [X, 0], [X, Y], [0, Y]].map(([x = 0, y = 0]) => ({ x, y, foot: 0, top: 1500 })),
    levels: [deck(140), deck(1450)], cables: crossed(['back', 'left', 'right'], 140, 1450),
    tube: kitTube, cableStiffness: EA, force: 40, ...more,
  };
}

interface Sway {
  readonly withCables: Drift | 'mechanism';
  readonly withoutCables: Drift | 'mechanism';
  readonly cablePulls: readonly number[];
}

/** With the cables, and with them taken off. */
function swayOf(input: SwayInput): Sway {
  const braced = standOf(input);
  const bare = standOf({ ...input, cables: [] });
  return { withCables: braced?.drift ?? 'mechanism', withoutCables: bare?.drift ?? 'mechanism', cablePulls: braced?.cablePulls ?? [] };
}

function driftOf(input: SwayInput): Drift {
  const { withCables } = swayOf(input);
  if (withCables === 'mechanism') throw new Error('gives way');
  return withCables;
}

const wall = (face: Face, rise: number): Wall => {
  const run = runOf(face);
  const offset = { front: -Y / 2, back: Y / 2, left: -X / 2, right: X / 2 }[face];
  return { along: run === X ? 'x' : 'y', offset, stiffness: tautDiagonalStiffness(EA, Math.hypot(run, rise), run) };
};

describe('stiff posts and decks on cables', () => {
  it.each<readonly [string, readonly Face[]]>([
    ['four faces', ['front', 'right', 'back', 'left']], ['three faces', ['back', 'left', 'right']],
  ])('crossed from the feet to the top on %s: F / Σ k, and the turn of the deck (C)', (_, faces) => {
    const found = driftOf(rack({ tube: stiffTube, levels: [deck(1450)], cables: crossed(faces, 0, 1450) }));
    const walls = faces.map((face) => wall(face, 1450));
    expect(found.x / pushDeck(walls, 40, 'x', Y / 2).drift).toBeCloseTo(1, 3);
    expect(found.y / pushDeck(walls, 40, 'y', X / 2).drift).toBeCloseTo(1, 3);
  });

  it('crossed between two decks: rigid posts lean about their feet, F z₂² / Σ k (z₂ − z₁)² (C: work)', () => {
    const found = driftOf(rack({ tube: stiffTube, levels: [deck(400), deck(1450)], cables: crossed(['front', 'right', 'back', 'left'], 400, 1450) }));
    const k = 2 * wall('front', 1050).stiffness;
    expect(found.x / ((40 * 1450 ** 2) / (k * 1050 ** 2))).toBeCloseTo(1, 3);
  });

  it('one taut cable a face carries force / cos, the other hangs slack, both ways in turn (C)', () => {
    const { cablePulls } = swayOf(rack({ tube: stiffTube, levels: [deck(1450)], cables: crossed(['front', 'right', 'back', 'left'], 0, 1450) }));
    expect(cablePulls).toHaveLength(8);
    expect(cablePulls[0]).toBeCloseTo((20 * Math.hypot(X, 1450)) / X, 2);
    expect(cablePulls[1]).toBeCloseTo((20 * Math.hypot(X, 1450)) / X, 2);
    expect(cablePulls[2]).toBeCloseTo((20 * Math.hypot(Y, 1450)) / Y, 2);
  });
});

describe('a rack of the kit', () => {
  it('gives way without cables: its tubes are pinned', () => {
    expect(swayOf(rack({})).withoutCables).toBe('mechanism');
  });

  it('sways further than with stiff posts, and in proportion to the push', () => {
    const [real, stiff, twice] = [driftOf(rack({})), driftOf(rack({ tube: stiffTube })), driftOf(rack({ force: 80 }))];
    expect(real.x).toBeGreaterThan(stiff.x);
    expect(real.y).toBeGreaterThan(stiff.y);
    expect(twice.x / real.x).toBeCloseTo(2, 6);
    expect(twice.y / real.y).toBeCloseTo(2, 6);
  });

  it('legs under the braced decks bend as cantilevers, and more: the posts above them give at their roots (C)', () => {
    const found = driftOf(rack({ cableStiffness: 1e8, levels: [deck(400), deck(1450)], cables: crossed(['front', 'right', 'back', 'left'], 400, 1450) }));
    const EI = kitTube.modulus * kitTube.usedStockFactor * kitTube.second;
    // A post hinged at foot and top level, its braced stretch kept upright: the leg's end plus the turn at its root.
    const lean = ((10 * 400 ** 3) / (3 * EI)) * (1 + 1050 / 400);
    expect(found.x / lean).toBeCloseTo(1, 1);
  });

  it('worn tubes and softer cables sway further', () => {
    const { x, y } = driftOf(rack({}));
    const worn = driftOf(rack({ tube: { ...kitTube, usedStockFactor: 0.4 } }));
    const soft = driftOf(rack({ cableStiffness: EA / 2 }));
    [worn, soft].forEach((more) => { expect(more.x).toBeGreaterThan(x); expect(more.y).toBeGreaterThan(y); });
  });

  it('mirrored left for right it sways the same', () => {
    const input = rack({ cables: crossed(['back', 'left'], 140, 1450).concat(crossed(['front'], 140, 1450)) });
    const mirrored = { ...input, posts: input.posts.map((post) => ({ ...post, x: X - post.x })) };
    const [here, there] = [driftOf(input), driftOf(mirrored)];
    expect(there.x).toBeCloseTo(here.x, 6);
    expect(there.y).toBeCloseTo(here.y, 6);
  });

  it('stands on posts of unequal length with a frame of three tubes on top', () => {
    const posts = rack({}).posts.map((post, index) => ({ ...post, top: index < 2 ? 700 : 900 }));
    const seat = deck(440);
    const arms: SwayLevel = { height: 650, tubes: [sides.left, sides.back, sides.right], stiffened: false };
    const low: SwayLevel = { height: 120, tubes: ring, stiffened: false };
    const found = driftOf(rack({ posts, levels: [low, seat, arms], cables: crossed(['back', 'left', 'right'], 120, 650) }));
    expect(found.x).toBeGreaterThan(0);
    expect(found.x).toBeLessThan(200);
    expect(found.y).toBeLessThan(200);
  });

  it('with cables on two opposite faces only it gives way along the others', () => {
    expect(swayOf(rack({ cables: crossed(['left', 'right'], 140, 1450) }))).toEqual({ withCables: 'mechanism', withoutCables: 'mechanism', cablePulls: [] });
  });

  it('refuses a cable off its post and a level without posts, in words', () => {
    expect(() => swayOf(rack({ cables: crossed(['back'], 140, 1600) }))).toThrow('cable 0 is at 1600 mm, off post 3 (0 to 1500 mm)');
    expect(() => swayOf(rack({ levels: [] }))).toThrow(FrameError);
    expect(() => swayOf(rack({ force: 0 }))).toThrow('force is 0; it must be more than 0');
  });
});

describe('upright plates', () => {
  const plate = { from: 150, low: 1000, high: 1450, edgeStiffness: 1e9 };
  /** On the two side faces and the back, between two frames of tubes over a deck; no cables. */
  const plated = (strutStiffness: number, more: Partial<SwayInput> = {}): SwayInput => rack({
    levels: [deck(400), { height: 1000, tubes: ring, stiffened: false }, { height: 1450, tubes: ring, stiffened: false }],
    cables: [],
    plates: (['back', 'left', 'right'] as const).map((face) => ({ ...plate, posts: sides[face], to: runOf(face) - 150, strutStiffness })),
    ...more,
  });

  it('hold a frame without cables, which gives way without them', () => {
    expect(swayOf(plated(1e6)).withCables).not.toBe('mechanism');
    expect(swayOf(plated(1e6, { plates: [] })).withCables).toBe('mechanism');
  });

  it('two stiff frames racked on soft plates: posts lean about their feet, F z² / Σ k h² with k = 2 E A cos² / l (C: work)', () => {
    const EA_STRUT = 2000;
    const input = plated(EA_STRUT, { tube: stiffTube });
    const [width, height] = [Y - 300, 450];
    const length = Math.hypot(width, height);
    const k = 2 * ((2 * EA_STRUT * (width / length) ** 2) / length);
    expect(driftOf(input).y / ((40 * 1450 ** 2) / (k * height ** 2))).toBeCloseTo(1, 2);
  });

  it('stiffer plates sway less, and the bending of the tubes they are pinned to is left', () => {
    const [soft, firm, rigid] = [driftOf(plated(2000)), driftOf(plated(20_000)), driftOf(plated(1e8))];
    expect(firm.y).toBeLessThan(soft.y);
    expect(rigid.y).toBeLessThan(firm.y);
    expect(rigid.y).toBeGreaterThan(0);
  });

  it('a plate where there are no two tubes, or without size, is refused in words', () => {
    const [one] = plated(1e6).plates ?? [];
    if (!one) throw new Error('no plate');
    expect(() => swayOf(plated(1e6, { plates: [{ ...one, high: 1300 }] }))).toThrow('where there are not two tubes');
    expect(() => swayOf(plated(1e6, { plates: [{ ...one, to: 100 }] }))).toThrow('has no size');
  });
});

describe('a frame whose bars lie askew by rounding', () => {
  it('keeps its free spins free: stiffness that is rounding only holds nothing', () => {
    // A spring between two freedoms, and a third that only rounding resists: scaled to one it would hold the first.
    const factored = factor(3, Float64Array.from([2, -1, 1e-9, -1, 1, 0, 1e-9, 0, 1e-18]));
    expect(factored.rank).toBe(2);
    expect([...solveFactored(factored, Float64Array.from([0, 1, 0]))].map((value) => Number(value.toFixed(6)))).toEqual([1, 2, 0]);
  });

  it('a bed of three sizes leans alike at its open end: none is locked', () => {
    const drifts = ['nap', 'toddler', 'small-child'].map((size) => {
      const bed = modelOf('bed', size);
      const open = { ...bed, parts: bed.parts.filter(({ id }) => !id.startsWith('sill-panel')) };
      return standOf(standInputOf(open, defaultLimits))?.drift.y ?? NaN;
    });
    for (const drift of drifts) expect(drift / Math.max(...drifts)).toBeGreaterThan(0.3);
  });
});
