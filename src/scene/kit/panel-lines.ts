import { chained, isMadeInside, moved, turned, type FlatPattern, type Pattern, type Shape, type Side, type Vec3 } from '../../model/index.ts';
import type { FlapName } from '../../plan/index.ts';
import { panelSign } from './panel-sign.ts';
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
  /** Of the lower side of the strip: on the inner face, which is at nought, or under the outer one. */
  readonly level: number;
}

/**
 * The inside line, as far as the notches leave it, and the creases of each flap that still lies flat, as thin pale strips on
 * the face that they are made on; and the sign of the marked face.
 */
export function panelLines(hand: StageHand, panelId: string, folded: readonly FlapName[], offset: Vec3 = [0, 0, 0]): readonly SceneBody[] {
  const done = folded.filter(({ panel }) => panel === panelId).map(({ flap }) => flap);
  const lines = linesOf(hand.part(panelId).shape, done);
  const pose = chained(moved(offset), hand.pose(panelId));
  return [...lines.map(({ side, out, middle, length, level }, index) => {
    const strip: Shape = { form: 'strip', length, width: STRIP.width, height: STRIP.height };
    const along: Vec3 = [out, side === 'front' || side === 'right' ? middle : -middle, level];
    return hand.prop({ partId: panelId, id: `line-${index + 1}` }, strip,
      chained(pose, turned([0, 0, 1], (QUARTERS[side] * Math.PI) / 2), moved(along), turned([0, 0, 1], Math.PI / 2)), 'pale');
  }), ...panelSign(hand, panelId, offset)];
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
    [0, ...creases, halfCut].map((at): Line => ({ side, out: outer(side) + at, middle: 0, length: 2 * to, level: 0 })));
}

const bendsOf = ({ flaps, thickness }: Pattern, done: readonly string[]): readonly Line[] =>
  flaps.filter(({ name }) => !done.includes(name)).flatMap(({ side, root, bends, strips }) => bends.map((bend): Line => {
    const { at } = bend;
    const strip = strips.find(({ from, to }) => at >= from && at <= to) ?? strips[0];
    const [start, end] = [strip?.start ?? 0, strip?.end ?? 0];
    return { side, out: root + at, middle: (start + end) / 2, length: end - start, level: isMadeInside(bend) ? 0 : -thickness - STRIP.height };
  }));
