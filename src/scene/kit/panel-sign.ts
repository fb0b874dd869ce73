import { chained, dot, moved, turned, type Pose, type Shape, type Vec2, type Vec3 } from '../../model/index.ts';
import type { SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import type { StageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';

/** The sign is as high as this share of the shorter side of the panel's middle part, within these limits, mm. */
const HEIGHT = { share: 0.24, least: 24, most: 110 };
/** Its places as shares of its height: a mast, and a pennant from there. */
const PENNANT = { from: 0.45, tip: 0.72, to: 1, out: 0.75 };
/** The dashes of a line of it that is seen through the panel. */
const DASHES = { mast: 5, pennant: 3 };
/** From the edges of the middle part, as a share of half its sides: clear of the tabs that come to lie there, and at the same place on every drawing. */
export const SIGN_INSET = 0.45;
const STRIP = { width: 2, height: 0.3 };

/** A straight piece of the sign on a face, in that face's own coordinates, mm. */
interface Piece {
  readonly from: Vec2;
  readonly to: Vec2;
}

/**
 * The sign of the marked face on a panel, as the worker has drawn it: near the lower left corner of that face. Where that face
 * looks away from the eye it is dashed on the near one, as if seen through the panel, when that is asked for. Nothing on other parts.
 */
export function panelSign(hand: StageHand, panelId: string, offset: Vec3 = [0, 0, 0], isSeenThrough = false): readonly SceneBody[] {
  const face = markedFaceOf(hand.part(panelId).shape);
  if (face === null) return [];
  const pose = chained(moved(offset), hand.pose(panelId));
  const isUp = dot(turnedBy(pose, [0, 0, face.looks]), STANDARD_VIEW.towardsEye) > 0;
  if (!isUp && !isSeenThrough) return [];
  const { half: [x, y], upper, lower, looks } = face;
  const height = Math.min(HEIGHT.most, Math.max(HEIGHT.least, HEIGHT.share * 2 * Math.min(x, y)));
  const level = isUp === looks > 0 ? upper : lower - STRIP.height;
  const place = ([along, up]: Vec2): Vec2 => [looks * (along * height - (1 - SIGN_INSET) * x), up * height - (1 - SIGN_INSET) * y];
  const [foot, top, tip, root] = ([[0, 0], [0, PENNANT.to], [PENNANT.out, PENNANT.tip], [0, PENNANT.from]] as const).map(place) as [Vec2, Vec2, Vec2, Vec2];
  const lines = isUp
    ? [{ from: foot, to: top }]
    : [...dashes(foot, top, DASHES.mast), ...dashes(top, tip, DASHES.pennant), ...dashes(tip, root, DASHES.pennant)];
  const pennant: Shape = { form: 'patch', outline: looks > 0 ? [root, tip, top] : [top, tip, root], height: STRIP.height };
  const on = (index: number, shape: Shape, at: Pose): SceneBody => hand.prop({ partId: panelId, id: `sign-${index}` }, shape, at, 'drawn');
  return [
    ...lines.map(({ from, to }, index) => on(index + 1, ...stripFrom(from, to, level, pose))),
    ...(isUp ? [on(0, pennant, chained(pose, moved([0, 0, level])))] : []),
  ];
}

const dashes = (from: Vec2, to: Vec2, count: number): readonly Piece[] => Array.from({ length: count }, (_, index): Piece => {
  const at = (share: number): Vec2 => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
  return { from: at(index / (count - 0.4)), to: at((index + 0.6) / (count - 0.4)) };
});

function stripFrom(from: Vec2, to: Vec2, level: number, pose: Pose): [Shape, Pose] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const middle: Vec3 = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, level];
  return [{ form: 'strip', length: Math.hypot(dx, dy), ...STRIP }, chained(pose, moved(middle), turned([0, 0, 1], Math.atan2(dy, dx)))];
}

/** A panel's middle part in its own coordinates, mm. */
interface MarkedFace {
  /** Half its sides. */
  readonly half: Vec2;
  /** Levels of its faces. */
  readonly upper: number;
  readonly lower: number;
  /** Whether its marked face looks up (1) or down (−1). */
  readonly looks: 1 | -1;
}

function markedFaceOf(shape: Shape): MarkedFace | null {
  const looks = (holes: readonly { readonly depth?: number | null }[]): 1 | -1 => (holes.some(({ depth = null }) => depth !== null) ? -1 : 1);
  switch (shape.form) {
    case 'panel': return { half: shape.pattern.inside, upper: 0, lower: -shape.pattern.thickness, looks: 1 };
    case 'plate': return { half: [shape.width / 2, shape.height / 2], upper: shape.thickness, lower: 0, looks: looks(shape.holes) };
    case 'folded': {
      const { base, thickness, form, holes } = shape.pattern;
      return { half: [Math.max(...base.map(([x]) => x)), Math.max(...base.map(([, y]) => y))], upper: 0, lower: -thickness, looks: form === 'flat' ? looks(holes) : 1 };
    }
    default: return null;
  }
}
