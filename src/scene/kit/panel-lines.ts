import { chained, moved, turned, type FlatPattern, type Pattern, type Shape, type Side, type Vec3 } from '../../model/index.ts';
import type { FlapName } from '../../plan/index.ts';
import type { StageHand } from './stage.ts';
import type { SceneBody } from '../types.ts';

/** A line on the panel is a strip of this width and height, mm. */
const STRIP = { width: 1.2, height: 0.3 };

/** A line along one side of a panel, in the panel's coordinates, mm. */
interface Line {
  readonly side: Side;
  readonly out: number;
  readonly middle: number;
  readonly length: number;
}

/** The inside line, as far as the notches leave it, and the creases of each flap that still lies flat, as thin pale strips. */
export function panelLines(hand: StageHand, panelId: string, folded: readonly FlapName[]): readonly SceneBody[] {
  const done = folded.filter(({ panel }) => panel === panelId).map(({ flap }) => flap);
  return linesOf(hand.part(panelId).shape, done).map(({ side, out, middle, length }, index) => {
    const strip: Shape = { form: 'strip', length, width: STRIP.width, height: STRIP.height };
    const along: Vec3 = [out, side === 'front' || side === 'right' ? middle : -middle, 0];
    return hand.prop({ partId: panelId, id: `line-${index + 1}` }, strip,
      chained(hand.pose(panelId), turned([0, 0, 1], (QUARTERS[side] * Math.PI) / 2), moved(along), turned([0, 0, 1], Math.PI / 2)), 'pale');
  });
}

const QUARTERS: Readonly<Record<Side, number>> = { right: 0, back: 1, left: 2, front: 3 };

function linesOf(shape: Shape, done: readonly string[]): readonly Line[] {
  switch (shape.form) {
    case 'panel': return linesRound(shape.pattern, done);
    case 'folded': return bendsOf(shape.pattern, done);
    default: return [];
  }
}

function linesRound({ inside: [ix, iy], flaps }: FlatPattern, done: readonly string[]): readonly Line[] {
  const outer = (side: Side): number => (side === 'left' || side === 'right' ? ix : iy);
  return flaps.filter(({ side }) => !done.includes(side)).flatMap(({ side, creases, halfCut, to }) =>
    [0, ...creases, halfCut].map((at): Line => ({ side, out: outer(side) + at, middle: 0, length: 2 * to })));
}

const bendsOf = ({ flaps }: Pattern, done: readonly string[]): readonly Line[] =>
  flaps.filter(({ name }) => !done.includes(name)).flatMap(({ side, root, bends, strips }) => bends.map(({ at }): Line => {
    const strip = strips.find(({ from, to }) => at >= from && at <= to) ?? strips[0];
    const [start, end] = [strip?.start ?? 0, strip?.end ?? 0];
    return { side, out: root + at, middle: (start + end) / 2, length: end - start };
  }));
