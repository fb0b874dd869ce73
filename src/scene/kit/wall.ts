import { chained, hasWallBrackets, moved, placed, turned, wallBracket, wallPlaces, wallReach, type Model, type Pose, type Shape, type WallPlace } from '../../model/index.ts';
import type { Mark, Scene } from '../types.ts';
import { stageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';
import { tell } from '../told.ts';
import { sceneName, type StepGivens, type WorkScene } from './work-scene.ts';

/** A piece of the wall is shown behind the brackets: past them on either side, above and below them, and how thick, mm. */
const PIECE = { aside: 160, above: 140, below: 240, thickness: 40 } as const;
/** How far before the wall the arrow onto a bracket begins, mm. */
const ARROW = 260;

function wallScene({ model, step, solids }: StepGivens, off: number): Scene {
  const hand = stageHand(model, step, solids);
  const { pose: standing } = step.standing;
  const kind = model.kit.catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket');
  const reach = wallReach(model.kit);
  const places = wallPlaces(model);
  const holds = step.detail.on !== 'wall' || step.detail.wall !== 'board';
  const own = hasWallBrackets(model);
  const bracketOf = ({ outside }: WallPlace): Shape => wallBracket(model.kit, outside);
  return {
    id: sceneName(step),
    bodies: [
      ...step.present.map((id) => hand.body(id, 'present')),
      hand.prop({ tool: 'wall' }, pieceOf(places), chained(standing, wallPose(places, reach)), 'pale'),
      ...(holds && !own ? places.map((place, index) => hand.prop({ tool: `bracket-${index + 1}` }, bracketOf(place), chained(standing, moved([place.at[0], place.at[1] - off, place.at[2]]), ...(kind === undefined ? [turned([1, 0, 0], -Math.PI / 2)] : [])), 'new')) : []),
    ],
    marks: holds ? [
      ...pushed(model, places, standing),
      { mark: 'label', at: placed(standing, places.at(-1)?.at ?? [0, 0, 0]), told: tell.times(places.length) },
      ...bracketEnlarged(places, standing),
    ] : [],
    view: STANDARD_VIEW,
  };
}

/** How far beside the item the arrow lies on the floor, and from where to where, as shares of the item's depth before its rear posts. */
const BESIDE = 130;
const PUSHED = [0.8, 0.15] as const;

/** The item is pushed to the wall: an arrow on the floor beside it, and one onto the bracket that is enlarged; the others stand behind the item. */
function pushed({ dimensions }: Model, places: readonly WallPlace[], standing: Pose): readonly Mark[] {
  const depth = dimensions.find(({ name }) => name === 'depth')?.value ?? ARROW;
  const [seen] = places.toSorted((a, b) => b.at[0] - a.at[0]);
  if (seen === undefined) return [];
  const [x, y, z] = seen.at;
  return [
    { mark: 'arrow', path: PUSHED.map((share) => placed(standing, [x + BESIDE, y - share * depth, 0])) },
    { mark: 'arrow', path: [placed(standing, [x, y - ARROW, z]), placed(standing, [x, y - ARROW / 5, z])] },
  ];
}

/** How much round a bracket is enlarged, mm. */
const RING = 85;

/** One of the brackets. */
function bracketEnlarged(places: readonly WallPlace[], standing: Pose): readonly Mark[] {
  const [first] = places.toSorted((a, b) => b.at[0] - a.at[0]);
  return first === undefined ? [] : [{ mark: 'detail', at: placed(standing, first.at), radius: RING }];
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
