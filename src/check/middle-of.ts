import { alongSide, bendTurnsAt, outwards, placed, reachedAt, type FlatPattern, type Lug, type Part, type Pattern, type PatternFlap, type Shape, type Vec2, type Vec3 } from '../model/index.ts';

/** Mass and where its middle is, kg and mm. */
export interface Heap {
  readonly mass: number;
  readonly at: Vec3;
}

/** Bodies of known masses and middles as one: the composite body of statics. */
export function heapOf(heaps: readonly Heap[]): Heap {
  const mass = heaps.reduce((sum, each) => sum + each.mass, 0);
  const mean = (axis: 0 | 1 | 2): number => heaps.reduce((sum, each) => sum + each.mass * each.at[axis], 0) / mass;
  return { mass, at: [mean(0), mean(1), mean(2)] };
}

/** A part's mass at the middle of its mass, in the finished item's coordinates. */
export const partHeap = ({ mass, pose, shape }: Pick<Part, 'mass' | 'pose' | 'shape'>): Heap => ({ mass, at: placed(pose, middleOf(shape)) });

/** Middle of a part's mass in its own coordinates, mm, to the nearest few mm: all a centre of gravity needs. */
export function middleOf(shape: Shape): Vec3 {
  switch (shape.form) {
    case 'tube':
    case 'joint':
    case 'ported-joint':
    case 'fitting': return [0, 0, 0];
    case 'folded': return foldedMiddle(shape.pattern);
    case 'plate': return [0, 0, shape.thickness / 2];
    case 'panel': return [0, 0, panelMiddle(shape.pattern)];
    case 'pin': return [0, 0, pinMiddle(shape)];
    case 'strip':
    case 'patch':
    case 'wing-nut': return [0, 0, shape.height / 2];
    case 'cable': return [shape.length / 2, 0, 0];
  }
}

/** Shank under the head, head over it, each by its volume. */
function pinMiddle({ diameter, length, headDiameter, headHeight }: Extract<Shape, { form: 'pin' }>): number {
  const [shank, head] = [diameter ** 2 * length, headDiameter ** 2 * headHeight];
  return (head * headHeight - shank * length) / 2 / (shank + head);
}

/** Height of a folded panel's middle: the floor half a thickness under its inner face, wraps round the tubes, tabs on top. */
function panelMiddle(pattern: FlatPattern): number {
  const floor = 4 * pattern.axes[0] * pattern.axes[1];
  const strips = pattern.flaps.map((flap) => ({
    wrap: (flap.to - flap.from) * flap.halfCut,
    tab: (flap.to - flap.from) * (flap.edge - flap.halfCut),
  }));
  const sum = (pick: 'wrap' | 'tab'): number => strips.reduce((total, strip) => total + strip[pick], 0);
  const moment = -floor * pattern.thickness / 2 + sum('wrap') * pattern.wrapRadius + sum('tab') * pattern.thickness / 2;
  return moment / (floor + sum('wrap') + sum('tab'));
}

/** The middle of a panel folded home: its floor, and every facet of its flaps and lugs, each by its area. */
function foldedMiddle(pattern: Pattern): Vec3 {
  const floor = { mass: Math.abs(areaAndMiddle(pattern.base).area), at: [...areaAndMiddle(pattern.base).middle, -pattern.thickness / 2] as unknown as Vec3 };
  return heapOf([floor, ...pattern.flaps.flatMap((flap) => [...flapFacets(pattern, flap), ...flap.lugs.map((lug) => lugFacet(pattern, flap, lug))])]).at;
}

/** Area and centroid of a polygon (shoelace). */
function areaAndMiddle(ring: readonly Vec2[]): { readonly area: number; readonly middle: Vec2 } {
  let [area, x, y] = [0, 0, 0];
  ring.forEach(([ax, ay], place) => {
    const [bx, by] = ring[(place + 1) % ring.length] ?? [ax, ay];
    const turn = (ax * by - bx * ay) / 2;
    [area, x, y] = [area + turn, x + (turn * (ax + bx)) / 3, y + (turn * (ay + by)) / 3];
  });
  return { area, middle: [x / area, y / area] };
}

/** Each stretch of a flap between two bends, its mass told as its area. */
function flapFacets(pattern: Pattern, flap: PatternFlap): readonly Heap[] {
  const turns = bendTurnsAt(flap.bends, flap.order, 1);
  return flap.strips.flatMap(({ from, to, start, end }) => {
    const cuts = [from, ...flap.bends.map(({ at }) => at).filter((at) => at > from && at < to), to].sort((a, b) => a - b);
    return cuts.slice(1).map((until, place): Heap => {
      const [since, along] = [cuts[place] ?? until, (start + end) / 2];
      const { at: [a, b], heading } = reachedAt(pattern, flap.bends, turns, (since + until) / 2);
      const half = pattern.thickness / 2;
      return { mass: (until - since) * (end - start), at: inPanel(flap, along, a + half * Math.sin(heading), b - half * Math.cos(heading)) };
    });
  });
}

/** A lug lies on the inner face of the next wall, turned about the corner: its middle is taken where it is pinned. */
function lugFacet(pattern: Pattern, flap: PatternFlap, lug: Lug): Heap {
  const first = lug.bends[0]?.at ?? lug.edge;
  const { at: [away, into] } = reachedAt(pattern, lug.bends, bendTurnsAt(lug.bends, [...lug.bends.keys()], 1), (first + lug.edge) / 2);
  const { at: [a, b], heading } = reachedAt(pattern, flap.bends, bendTurnsAt(flap.bends, flap.order, 1), (lug.from + lug.to) / 2);
  return { mass: (lug.edge - first) * (lug.to - lug.from), at: inPanel(flap, lug.end * away, a - into * Math.sin(heading), b + into * Math.cos(heading)) };
}

/** A place of a flap's section, `a` outwards from its root line and `b` over the inner face, `along` its side, in the panel's coordinates. */
function inPanel({ side, root }: PatternFlap, along: number, a: number, b: number): Vec3 {
  const [[ox, oy], [ax, ay]] = [outwards(side), alongSide(side)];
  return [ox * (root + a) + ax * along, oy * (root + a) + ay * along, b];
}
