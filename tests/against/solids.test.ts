// Meshes against closed forms of prisms (C), and against the volumes of the solid kernel manifold-3d.
import { describe, expect, it } from 'vitest';
import { FLAT, placed, turnsAt, patternWrap, WRAPPED, type Flap, type Folding, type Mesh, type Shape, type Side, type Vec3 } from '../../src/model/index.ts';
import { meshVolume, openEdges } from '../support/meshes.ts';
import { areaOf } from '../support/polygons.ts';
import { partOf, rackModel, sizes, solids } from '../support/rack.ts';

/** Area of a regular polygon of `sides` drawn in (shaft) or round (hole) a circle. */
const inscribed = (diameter: number, sides: number): number => (sides / 2) * Math.sin((2 * Math.PI) / sides) * (diameter / 2) ** 2;
const circumscribed = (diameter: number, sides: number): number => sides * Math.tan(Math.PI / sides) * (diameter / 2) ** 2;

/** Positions are float32 in the kernel: about 1e-7 of a metre. */
const closeTo = (value: number, wanted: number, share: number): void => {
  expect(Math.abs(value / wanted - 1), `${value} against ${wanted}`).toBeLessThan(share);
};

const standard = rackModel('standard');
const { pattern } = standard;
const panel = (folding: Folding): Shape => ({ form: 'panel', pattern, folding });
const shapes = [...new Map(sizes.flatMap((size) => rackModel(size).parts).map(({ kind, shape }) => [JSON.stringify(shape), { kind, shape }])).values()];
const order: readonly Side[] = ['left', 'right', 'front', 'back'];
const stages = Array.from({ length: 11 }, (_, index) => index / 10);

/** Each side at a stage of folding, the sides before it done. */
const foldings = order.flatMap((side, index) => stages.map((stage) => ({
  side, stage, folding: { ...order.slice(0, index).reduce<Folding>((done, before) => ({ ...done, [before]: 1 }), FLAT), [side]: stage },
})));

const width = (flap: Flap): number => flap.to - flap.from;
/** By hand: every pin goes right through its tab and is longer than that by what it goes into the middle part. */
const punched = (pattern.holes.length / 2) * standard.kit.panelPin.length;
const flatVolume = areaOf(pattern.outline) * pattern.thickness - punched * circumscribed(standard.kit.panelPin.diameter, 16);

/** Volume that the creases of a flap crush: at each, two right triangles t by t·tan(turn/2), k = 1. */
const crushed = (flap: Flap, turns: readonly number[]): number =>
  turns.reduce((sum, turn) => sum + pattern.thickness ** 2 * Math.tan(turn / 2) * width(flap), 0);

/** The skin that bridges the open half-cut: a triangle of two sides as long as the skin is thick. */
const bridge = (flap: Flap, tab: number): number => (pattern.skin ** 2 / 2) * Math.sin(tab) * width(flap);

describe('meshes of all parts of all sizes', () => {
  it('are closed and wound outwards: each edge twice, once each way', () => {
    expect(shapes.length).toBeGreaterThan(15);
    for (const { kind, shape } of shapes) {
      expect([kind, openEdges(solids.mesh(shape))]).toEqual([kind, 0]);
      expect([kind, meshVolume(solids.mesh(shape)) > 0]).toEqual([kind, true]);
    }
  });

  it('hold the volume that the kernel tells', () => {
    for (const { shape } of shapes) closeTo(meshVolume(solids.mesh(shape)), solids.volume(shape), 1e-5);
  });

  it('are plain numbers, every triangle of three different corners that exist', () => {
    for (const { shape } of shapes) {
      const { positions, triangles } = solids.mesh(shape);
      expect(positions.every(Number.isFinite)).toBe(true);
      expect(triangles.length % 3).toBe(0);
      expect(triangles.every((corner) => corner < positions.length / 3)).toBe(true);
    }
  });

  it('notice a mesh with a hole and one turned inside out (the checks themselves)', () => {
    const { positions, triangles } = solids.mesh(partOf(standard, 'deck-1/panel').shape);
    const holed: Mesh = { positions, triangles: triangles.slice(3) };
    const turned: Mesh = { positions, triangles: triangles.slice().reverse() };
    expect(openEdges(holed)).toBe(3);
    expect(meshVolume(turned)).toBeLessThan(0);
  });
});

describe('volumes in closed form (C)', () => {
  it('a tube is a ring of 24-sided prisms', () => {
    const { outsideDiameter, wall } = standard.kit.tube;
    const ring = inscribed(outsideDiameter, 24) - inscribed(outsideDiameter - 2 * wall, 24);
    closeTo(solids.volume(partOf(standard, 'deck-1/long-tube-front').shape), 1000 * ring, 1e-5);
    closeTo(solids.volume(partOf(standard, 'deck-1/short-tube-left').shape), 500 * ring, 1e-5);
  });

  it('a pin is a shank and a head', () => {
    const { diameter, length, headDiameter, headHeight } = standard.kit.panelPin;
    closeTo(solids.volume(partOf(standard, 'deck-1/panel-pin-left-1').shape),
      inscribed(diameter, 16) * length + inscribed(headDiameter, 24) * headHeight, 1e-5);
  });

  it('drilling a post takes wall and nothing else: more than the straight walls, less than a solid bar', () => {
    const post = partOf(standard, 'post-left-front').shape;
    if (post.form !== 'tube') throw new Error('a post is a tube');
    const drilled = solids.volume({ ...post, holes: [] }) - solids.volume(post);
    const { wall, outsideDiameter } = standard.kit.tube;
    const hole = circumscribed(standard.kit.jointPin.diameter, 16);
    expect(post.holes).toHaveLength(4);
    expect(drilled).toBeGreaterThan(4 * 2 * wall * hole * 0.98);
    expect(drilled).toBeLessThan(4 * outsideDiameter * hole);
    closeTo(drilled, 4 * 2 * wall * hole, 0.05);
  });

  it('the flat panel is its outline times its thickness less its holes', () => {
    closeTo(solids.volume(panel(FLAT)), flatVolume, 1e-6);
  });

  it('the wrapped panel has lost the wedges n·t²·tan(φ/2)·width of each flap (k = 1), but for the skin\'s bridge at the half-cut', () => {
    const lost = pattern.flaps.reduce((sum, flap) => sum + crushed(flap, flap.creases.map(() => flap.creaseAngle)) - bridge(flap, flap.turnBack), 0);
    closeTo(solids.volume(panel(WRAPPED)), flatVolume - lost, 1e-4);
    expect(lost / flatVolume).toBeGreaterThan(0.04);
  });

  it('wedges and the skin\'s bridge tell the volume to a millionth when the last crease is counted as pressed', () => {
    const turns = turnsAt(patternWrap(pattern, at('left')), 0.99992);
    const lost = pattern.flaps.reduce((sum, flap) => sum + crushed(flap, turns.creases) - bridge(flap, turns.tab), 0);
    closeTo(solids.volume(panel(WRAPPED)), flatVolume - lost, 1e-6);
  });
});

describe('the panel half folded', () => {
  it.each(order)('%s: at every tenth closed, and nothing of a flap inside the base or another flap', (side) => {
    for (const { stage, folding } of foldings.filter((each) => each.side === side)) {
      const mesh = solids.mesh(panel(folding));
      expect([stage, openEdges(mesh)]).toEqual([stage, 0]);
      const expected = pattern.flaps.reduce((volume, flap) => {
        const { creases, tab } = turnsAt(patternWrap(pattern, flap), Math.min(folding[flap.side], 0.99992));
        return volume - crushed(flap, creases) + bridge(flap, tab);
      }, flatVolume);
      // A flap that runs into the base or another flap would melt with it: the union would be smaller than the sum.
      closeTo(meshVolume(mesh), expected, 2e-6);
    }
  });

  it('splits into one flap and the rest without losing anything', () => {
    for (const { side, folding } of foldings.filter((each) => each.stage === 0.6)) {
      const piece = (name: 'flap' | 'rest'): number => solids.volume({ form: 'panel', pattern, folding, split: { side, piece: name } });
      closeTo(piece('flap') + piece('rest'), solids.volume(panel(folding)), 1e-5);
    }
  });

  it('rises over the inner face and never sinks below the outer one', () => {
    for (const { folding } of foldings.filter(({ stage }) => stage > 0)) {
      const { min } = solids.box({ shape: panel(folding), pose: partPose });
      expect(min[2]).toBeGreaterThan(-pattern.thickness - 1e-3);
    }
  });
});

const partPose = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

function at(side: Side): Flap {
  const flap = pattern.flaps.find((each) => each.side === side);
  if (flap === undefined) throw new Error(`no flap ${side}`);
  return flap;
}

describe('boxes and overlaps', () => {
  it('the box round a standing shape holds every corner of its mesh', () => {
    for (const part of standard.parts) {
      const { min, max } = solids.box(part);
      const { positions } = solids.mesh(part.shape);
      for (let index = 0; index < positions.length; index += 3) {
        const corner: Vec3 = [positions[index] ?? 0, positions[index + 1] ?? 0, positions[index + 2] ?? 0];
        const outside = placed(part.pose, corner).some((value, axis) => value < (min[axis] ?? 0) - 1e-3 || value > (max[axis] ?? 0) + 1e-3);
        if (outside) throw new Error(`${part.id} has a corner out of its box`);
      }
    }
  });

  it('two equal tubes pushed a third of their length past each other share two thirds (C)', () => {
    const shape: Shape = { form: 'tube', length: 300, outside: 28, inside: 23, holes: [] };
    const shifted = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 100, 0, 0, 1];
    closeTo(solids.overlap({ shape, pose: partPose }, { shape, pose: shifted }), 200 * (inscribed(28, 24) - inscribed(23, 24)), 1e-5);
  });
});
