import { chained, endsOfTube, moved, placed, turned, type Model, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import type { Mark, Scene } from '../types.ts';
import { stageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';
import { tell } from '../told.ts';
import { sceneName, type StepGivens, type WorkScene } from './work-scene.ts';

/** From a post's upper end to the bracket on it at least, white between it and a joint's sleeve, and the steps in which its place is sought, mm. */
const UNDER_TOP = 40;
const BESIDE_SLEEVE = 20;
const SOUGHT = 10;
/** A joint is on a post whose axis it is nearer to than this, mm. */
const ON_POST = 10;
/** A piece of the wall is shown behind the brackets: past them on either side, above and below them, and how thick, mm. */
const PIECE = { aside: 160, above: 140, below: 240, thickness: 40 } as const;
/** How far before the wall the arrow onto a bracket begins, mm. */
const ARROW = 260;

/** From the tube's axis to the wall where the kit has no bracket, mm. */
const PLAIN_REACH = 60;

/** A place for a bracket: on the axis of an upright tube at the back. */
interface WallPlace {
  readonly at: Vec3;
  readonly outside: number;
}

const isUpright = (part: Part): boolean => {
  const [[, , low], [, , high]] = endsOfTube(part) ?? [[0, 0, 0], [0, 0, 0]];
  const [[x], [far]] = endsOfTube(part) ?? [[0], [1]];
  return Math.abs(high - low) > 10 && Math.abs((far ?? 1) - (x ?? 0)) < 1;
};

/** Near the top of the outermost two of the rearmost upright tubes; those that the item has brackets on where it has any. */
export function wallPlaces({ parts, kit }: Pick<Model, 'parts' | 'kit'>): readonly WallPlace[] {
  const brackets = parts.flatMap(({ shape, pose }): readonly WallPlace[] =>
    (shape.form === 'fitting' && shape.fitting.is === 'wall-bracket' ? [{ at: placed(pose, [0, 0, 0]), outside: shape.outside }] : []));
  if (brackets.length > 0) return brackets;
  const joints = parts.filter(({ kind }) => kind === 'joint').map(({ pose }) => placed(pose, [0, 0, 0]));
  const away = Math.max(kit.joint.sleeveBelow, kit.joint.sleeveAbove) + BESIDE_SLEEVE;
  const freeUnder = ([x, y, z]: Vec3): number => {
    const taken = joints.filter((at) => Math.hypot(at[0] - x, at[1] - y) < ON_POST).map((at) => at[2]);
    const tries = Array.from({ length: Math.floor(z / SOUGHT) }, (_, step) => z - UNDER_TOP - step * SOUGHT);
    return tries.find((height) => taken.every((joint) => Math.abs(joint - height) > away)) ?? z - UNDER_TOP;
  };
  const posts = parts.filter(isUpright).flatMap((part): readonly WallPlace[] => {
    const ends = endsOfTube(part);
    if (ends === null || part.shape.form !== 'tube') return [];
    const top = ends[0][2] > ends[1][2] ? ends[0] : ends[1];
    return [{ at: [top[0], top[1], freeUnder(top)], outside: part.shape.outside }];
  });
  const back = Math.max(...posts.map(({ at }) => at[1]));
  const rear = posts.filter(({ at }) => back - at[1] < 1).toSorted((a, b) => a.at[0] - b.at[0]);
  return rear.filter((_, index) => index === 0 || index === rear.length - 1);
}

function wallScene({ model, step, solids }: StepGivens, off: number): Scene {
  const hand = stageHand(model, step, solids);
  const { pose: standing } = step.standing;
  const kind = model.kit.catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket');
  const reach = kind?.reach ?? PLAIN_REACH;
  const places = wallPlaces(model);
  const holds = step.detail.on !== 'wall' || step.detail.wall !== 'board';
  const own = model.parts.some(({ shape }) => shape.form === 'fitting' && shape.fitting.is === 'wall-bracket');
  const bracketOf = ({ outside }: WallPlace): Shape => (kind === undefined
    ? { form: 'plate', width: 40, height: 80, thickness: reach, holes: [] }
    : { form: 'fitting', fitting: kind, outside, inside: 0 });
  return {
    id: sceneName(step),
    bodies: [
      ...step.present.map((id) => hand.body(id, 'present')),
      hand.prop({ tool: 'wall' }, pieceOf(places), chained(standing, wallPose(places, reach)), 'pale'),
      ...(holds && !own ? places.map((place, index) => hand.prop({ tool: `bracket-${index + 1}` }, bracketOf(place), chained(standing, moved([place.at[0], place.at[1] - off, place.at[2]]), ...(kind === undefined ? [turned([1, 0, 0], -Math.PI / 2)] : [])), 'new')) : []),
    ],
    marks: holds ? [
      ...places.map(({ at: [x, y, z] }): Mark => ({ mark: 'arrow', path: [placed(standing, [x, y - ARROW, z]), placed(standing, [x, y - ARROW / 5, z])] })),
      { mark: 'label', at: placed(standing, places.at(-1)?.at ?? [0, 0, 0]), told: tell.times(places.length) },
    ] : [],
    view: STANDARD_VIEW,
  };
}

/** A plate on edge behind the brackets. */
function pieceOf(places: readonly WallPlace[]): Shape {
  const [xs, zs] = [places.map(({ at }) => at[0]), places.map(({ at }) => at[2])];
  return { form: 'plate', width: Math.max(...xs) - Math.min(...xs) + 2 * PIECE.aside, height: Math.max(...zs) - Math.min(...zs) + PIECE.above + PIECE.below, thickness: PIECE.thickness, holes: [] };
}

function wallPose(places: readonly WallPlace[], reach: number) {
  const [xs, ys, zs] = ([0, 1, 2] as const).map((axis) => places.map(({ at }) => at[axis])) as [number[], number[], number[]];
  const middle = (Math.max(...zs) + PIECE.above + Math.min(...zs) - PIECE.below) / 2;
  return chained(moved([(Math.min(...xs) + Math.max(...xs)) / 2, Math.max(...ys) + reach + PIECE.thickness, middle]), turned([1, 0, 0], Math.PI / 2));
}

/** The whole item before its wall, an arrow onto each bracket; on a wall that holds nothing, without them. */
export const wallWork: WorkScene = {
  scene: (givens) => wallScene(givens, 0),
  moment: (givens, done) => wallScene(givens, ARROW * (1 - done)),
};
