import { cross, dot, facing, jointPorts, plus, squareTo, times, unit, type Model, type Pose, type Shape, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import type { StageHand } from './stage.ts';

/** A place across a sleeve, measured from the end of it that is nearer. */
export interface InSleeve {
  /** The pose of the pin that goes through there. */
  readonly pin: Pose;
  readonly joint: Shape;
  /** From the sleeve's end, mm. */
  readonly far: number;
  /** Where the pin crosses the sleeve's axis. */
  readonly axis: Vec3;
  /** From that end into the sleeve, along its axis. */
  readonly inwards: Vec3;
}

/** The pencil mark round the sleeve, mm. */
const LINE = { wide: 2, thick: 0.4 } as const;
/** A rule laid on the sleeve with its beginning at the sleeve's end, how far it goes past the mark, and its divisions, mm. */
const RULE = { past: 14, high: 13, thick: 2, division: 4, fine: 0.7 } as const;

/** A sleeve measured from one end: a rule that begins at its rim, the mark round it, and how far that is from the rim. */
export function fromSleeveEnd({ kit }: Model, hand: StageHand, place: InSleeve, towardsEye: Vec3): { readonly bodies: readonly SceneBody[]; readonly marks: readonly Mark[] } {
  const { pin, far, axis, inwards } = place;
  const outside = jointPorts(place.joint)?.outside ?? kit.joint.sleeveDiameter;
  const out = turnedBy(pin, [0, 0, 1]);
  const rim = plus(axis, times(inwards, -far));
  const beside = sideOf(inwards, out, towardsEye);
  const below = times(out, -outside / 2);
  return {
    bodies: [hand.prop({ tool: 'sleeve-mark' }, markShape(place.joint, outside), facing(axis, inwards, ...acrossOf(inwards, out)), 'drawn'), ...rule(hand, place, plus(rim, times(beside, outside / 2)), beside)],
    marks: [{ mark: 'length', from: plus(rim, below), to: plus(axis, below), away: times(out, -outside * 0.6), told: tell.mm(far) }],
  };
}

/** Square to the sleeve and the pin, on the side that the eye sees. */
function sideOf(inwards: Vec3, out: Vec3, towardsEye: Vec3): Vec3 {
  const side = unit(cross(inwards, out));
  return dot(side, towardsEye) < 0 ? times(side, -1) : side;
}

/** Own y and z of what runs along the sleeve. */
function acrossOf(along: Vec3, out: Vec3): readonly [Vec3, Vec3] {
  const up = squareTo(out, along) ?? squareTo([0, 0, 1], along) ?? [0, 0, 1];
  return [cross(up, along), up];
}

function markShape(joint: Shape, outside: number): Shape {
  const isSquare = joint.form === 'ported-joint' && joint.joint.profile === 'square';
  return { form: 'tube', length: LINE.wide, outside: outside + 2 * LINE.thick, inside: outside - 1, holes: [], ...(isSquare ? { profile: 'square' as const } : {}) };
}

/** The rule from the rim on, its face to the eye, with its divisions. */
function rule(hand: StageHand, { far, inwards }: InSleeve, begins: Vec3, beside: Vec3): readonly SceneBody[] {
  const length = far + RULE.past;
  const up = cross(beside, inwards);
  const face = (along: number, over: number, off: number): Pose => facing(plus(plus(plus(begins, times(inwards, along)), times(up, over)), times(beside, off)), inwards, up, beside);
  const divisions = Array.from({ length: Math.floor(length / RULE.division) }, (_, index) => (index + 0.5) * RULE.division);
  return [
    hand.prop({ tool: 'rule' }, { form: 'plate', width: length, height: RULE.high, thickness: RULE.thick, holes: [] }, face(length / 2, 0, 0), 'present'),
    ...divisions.map((along, index) => hand.prop({ tool: `rule-${index}` }, { form: 'plate', width: RULE.fine, height: RULE.high * 0.4, thickness: 0.3, holes: [] }, face(along, RULE.high * 0.3, RULE.thick), 'drawn')),
  ];
}
