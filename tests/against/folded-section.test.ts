// The folded flap against closed-form trigonometry of facets round a circle (C); an independent walk along the printed lines.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axesFor, creasePlaces, flatPattern, foldSection, halfCutPlace, runToHalfCut, runToInnerFace, wrapOf, type Section, type Vec2, type Wrap,
} from '../../src/model/index.ts';
import { widestGap } from '../../src/model/wrap.ts';
import { kitFor, type WrapChoice } from '../support/kits.ts';
import { areaOf, isSimple, toSegment } from '../support/polygons.ts';
import { walkedTo } from '../support/walk.ts';

const DEG = Math.PI / 180;
const START = -40;

/** The inner and the outer face of a finished section, each from the panel's middle to the tab's edge. */
function facesOf({ outline }: Section, wrap: Wrap): { readonly inner: readonly Vec2[]; readonly outer: readonly Vec2[] } {
  const outer = outline.slice(0, wrap.creases + 3);
  return { outer, inner: outline.slice(wrap.creases + 3).reverse() };
}

const point = (list: readonly Vec2[], index: number): Vec2 => list.at(index) ?? [Number.NaN, Number.NaN];
const between = ([ax, ay]: Vec2, [bx, by]: Vec2): number => Math.hypot(bx - ax, by - ay);
const middle = ([ax, ay]: Vec2, [bx, by]: Vec2): Vec2 => [(ax + bx) / 2, (ay + by) / 2];

/** Between the first two creases. */
const spacingOf = (wrap: Wrap): number => (creasePlaces(wrap)[1] ?? NaN) - (creasePlaces(wrap)[0] ?? NaN);

/** Inner facets between neighbouring creases. */
const facets = (wrap: Wrap): readonly (readonly [Vec2, Vec2])[] => {
  const { inner } = facesOf(foldSection(wrap, 1, START), wrap);
  return Array.from({ length: wrap.creases - 1 }, (_, index) => [point(inner, index + 1), point(inner, index + 2)]);
};

const anyWrap: fc.Arbitrary<WrapChoice> = fc.record({
  tube: fc.double({ min: 16, max: 60, noNaN: true }),
  clearance: fc.double({ min: 0, max: 2, noNaN: true }),
  thickness: fc.double({ min: 2, max: 12, noNaN: true }),
  skin: fc.constant(0.8),
  neutralLayer: fc.double({ min: 0, max: 1, noNaN: true }),
  turnBack: fc.double({ min: 25 * DEG, max: 70 * DEG, noNaN: true }),
  tightest: fc.double({ min: 15 * DEG, max: 50 * DEG, noNaN: true }),
});

describe('the usual flap: tube 28, clearance 0.5, panel 9, k 1, five creases of 45° and the half-cut', () => {
  const wrap = wrapOf(kitFor({ tube: 28, clearance: 0.5, thickness: 9, neutralLayer: 1, turnBack: 45 * DEG, tightest: 45 * DEG }));
  const { inner } = facesOf(foldSection(wrap, 1, START), wrap);

  it('creases stand 19.468 mm apart, the first half of that past the axis line (C)', () => {
    expect(wrap.creases).toBe(5);
    expect(spacingOf(wrap)).toBeCloseTo(19.468, 3);
    expect(creasePlaces(wrap)).toHaveLength(5);
    creasePlaces(wrap).forEach((place, index) => expect(place).toBeCloseTo(19.4680 * (index + 0.5), 3));
  });

  it('the line of the run\'s inner face meets the panel\'s inner face 35.006 mm inside the tangent point (C)', () => {
    const last = point(inner, 5);
    const end = point(inner, 6);
    const meeting = last[0] - (last[1] * (end[0] - last[0])) / (end[1] - last[1]);
    expect(meeting).toBeCloseTo(-14.5 * (1 + Math.SQRT2), 6);
    expect(meeting).toBeCloseTo(-35.006, 3);
    expect(runToInnerFace(14.5, 45 * DEG)).toBeCloseTo(35.006, 3);
  });

  it('the run comes down at 45°, its last tangent point 14.5 (1 − cos 225°) over the inner face', () => {
    const [last, end] = [point(inner, 5), point(inner, 6)];
    expect(Math.atan2(end[1] - last[1], end[0] - last[0])).toBeCloseTo(-135 * DEG, 9);
    const half = 14.5 * Math.tan(22.5 * DEG);
    const tangent: Vec2 = [last[0] + half * Math.cos(225 * DEG), last[1] + half * Math.sin(225 * DEG)];
    expect(tangent[0]).toBeCloseTo(14.5 * Math.sin(225 * DEG), 9);
    expect(tangent[1]).toBeCloseTo(14.5 * (1 - Math.cos(225 * DEG)), 9);
  });

  it('the half-cut stands t·tan(β/2) before that meeting, for the hinge lies on the outer skin', () => {
    expect(runToHalfCut(14.5, 9, 45 * DEG)).toBeCloseTo(35.0061 - 9 * Math.tan(22.5 * DEG), 3);
    expect(halfCutPlace(wrap)).toBeCloseTo(5 * 19.4680 + 35.0061 - 3.7279, 3);
    const { tab } = foldSection(wrap, 1, START);
    expect(tab.hinge[0]).toBeCloseTo(-(35.0061 + 3.7279), 3);
  });
});

describe('every finished flap', () => {
  it('has its tab flat: hinge and outer skin at the height of the thickness, inner face at 0', () => {
    fc.assert(fc.property(anyWrap, (choice) => {
      const wrap = wrapOf(kitFor(choice));
      const section = foldSection(wrap, 1, START);
      const { inner, outer } = facesOf(section, wrap);
      expect(section.tab.heading).toBeCloseTo(Math.PI, 9);
      expect(Math.abs(section.tab.hinge[1] - wrap.thickness)).toBeLessThan(1e-9);
      expect(Math.abs(point(outer, -1)[1] - wrap.thickness)).toBeLessThan(1e-9);
      for (const index of [-1, -2]) expect(Math.abs(point(inner, index)[1])).toBeLessThan(1e-9);
      expect(point(inner, -1)[0]).toBeCloseTo(-(wrap.path.hingeInside + wrap.tab), 9);
    }), { numRuns: 300 });
  });

  it('closes just so when it is walked along the lines printed on the pattern', () => {
    fc.assert(fc.property(anyWrap, (choice) => {
      const kit = kitFor(choice);
      const pattern = flatPattern(kit, axesFor(kit, 1000, 500));
      for (const flap of pattern.flaps) {
        const edge = walkedTo(pattern, flap, flap.edge);
        expect(Math.abs(edge.b - pattern.thickness)).toBeLessThan(1e-9);
        expect(edge.heading).toBeCloseTo(Math.PI, 9);
        expect(walkedTo(pattern, flap, flap.halfCut + 1e-9).a).toBeCloseTo(-wrapOf(kit).path.hingeInside, 6);
      }
    }), { numRuns: 100 });
  });

  it('touches the circle round the tube with every facet and leaves the widest gap at the creases (C)', () => {
    fc.assert(fc.property(anyWrap, (choice) => {
      const wrap = wrapOf(kitFor(choice));
      const axis: Vec2 = [0, wrap.radius];
      const clearance = choice.clearance ?? 0;
      for (const facet of facets(wrap)) {
        expect(Math.abs(toSegment(axis, facet) - wrap.radius)).toBeLessThan(1e-9);
        const [from] = facet;
        const tube = (choice.tube ?? 0) / 2;
        expect(between(axis, from) - tube).toBeCloseTo(widestGap(wrap, clearance), 9);
      }
    }), { numRuns: 200 });
  });

  it('is a simple outline, anticlockwise, at every stage from flat to done', () => {
    // A run shorter than the panel is thick has no room for the ends of the half-cut.
    fc.assert(fc.property(anyWrap, fc.double({ min: 0, max: 0.999, noNaN: true }), (choice, stage) => {
      const wrap = wrapOf(kitFor(choice));
      fc.pre(runToHalfCut(wrap.radius, wrap.thickness, wrap.turnBack) > wrap.thickness);
      const { outline } = foldSection(wrap, stage, -5);
      const clean = outline.filter((at, index) => between(at, point(outline, (index + 1) % outline.length)) > 1e-9);
      expect(areaOf(clean)).toBeGreaterThan(0);
      expect(isSimple(clean)).toBe(true);
    }), { numRuns: 300 });
  });
});

describe('figures of facets round a tube (C)', () => {
  // Tube 32, 270° in six creases: turn-back 90°; no clearance, tube face to panel's inner face.
  const wrap = wrapOf(kitFor({ tube: 32, clearance: 0, thickness: 5, neutralLayer: 0, turnBack: 90 * DEG, tightest: 45 * DEG }));

  it('tube 32, six creases of 45°: pitch 13.2548, gap 1.3183 mm', () => {
    expect(wrap.creases).toBe(6);
    expect(spacingOf(wrap)).toBeCloseTo(13.2548, 4);
    expect(widestGap(wrap, 0)).toBeCloseTo(1.3183, 4);
    for (const [from, to] of facets(wrap)) expect(between(from, to)).toBeCloseTo(13.2548, 4);
  });

  it('tube 25, 45° a crease: gap 1.0299 mm at the apex', () => {
    const flap = flatPattern(kitFor({ tube: 25, clearance: 0, turnBack: 45 * DEG, tightest: 45 * DEG }), [500, 250]).flaps[0];
    expect(flap?.widestGap).toBeCloseTo(1.0299, 4);
  });

  it('tangent points stand a chord 2R sin(θ/2) apart with a sagitta R (1 − cos(θ/2))', () => {
    const touching = facets(wrap).map(([from, to]) => middle(from, to));
    touching.slice(1).forEach((at, index) => {
      const before = point(touching, index);
      expect(between(before, at)).toBeCloseTo(2 * 16 * Math.sin(22.5 * DEG), 9);
      expect(16 - between([0, 16], middle(before, at))).toBeCloseTo(16 * (1 - Math.cos(22.5 * DEG)), 9);
    });
  });

  it('a crease of 90° in a 5 mm panel crushes a groove of 2 t tan(φ/2) = 10.000 mm', () => {
    const sharp = wrapOf(kitFor({ tube: 30, thickness: 5, neutralLayer: 1, turnBack: 90 * DEG, tightest: 90 * DEG }));
    expect(sharp.creases).toBe(3);
    for (const [from, to] of facets(sharp)) expect(spacingOf(sharp) - between(from, to)).toBeCloseTo(10, 9);
  });
});
