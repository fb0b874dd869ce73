import { bracedFace, placed, type Model, type Solids, type Vec3 } from '../../model/index.ts';
import { onTheWay, sceneName, STANDARD_VIEW, stageHand, type Mark, type Scene, type SceneBody, type StageHand, type StepGivens, type WorkScene } from '../../scene/kit/index.ts';

/** Each cable hung on the studs. */
export const scene: WorkScene = { scene: braceScene, moment: (givens, done) => onTheWay(braceScene(givens), givens.step, done) };

/** Crossed cables hung on the studs of a face: each by its loop on its upper stud, one of them enlarged. */
function braceScene({ model, step, solids }: StepGivens): Scene {
  const hand = stageHand(model, step, solids);
  const cables = step.newParts.flatMap((group) => group.ids);
  const upperEnd = (id: string): Vec3 => placed(hand.pose(id), [lengthOf(hand, id), 0, 0]);
  return {
    id: sceneName(step),
    bodies: [...step.present.map((id) => hand.body(id, hand.part(id).kind === 'cable' ? 'pale' : 'present')), ...cables.map((id) => drawnThick(model, hand, solids, id))],
    marks: [
      ...cables.map((id) => slipOn(hand, id)),
      { mark: 'detail', at: upperEnd(cables.find((id) => comesDownRight(model, id)) ?? cables[0] ?? ''), radius: 75 },
    ],
    view: STANDARD_VIEW,
  };
}

/** Whether a cable runs from its upper left to its lower right, its face seen from outside: the flat drawings show that one. */
const comesDownRight = (model: Model, id: string): boolean => bracedFace(model, [id]).cords.some(({ low, high }) => high[0] < low[0]);

/** How far out the arrow begins that slips a loop over its stud, mm. */
const OUT = 95;

/** The upper loop of a cable on its way over the stud's head. */
function slipOn(hand: StageHand, id: string): Mark {
  const length = lengthOf(hand, id);
  return { mark: 'arrow', path: [placed(hand.pose(id), [length, 0, OUT]), placed(hand.pose(id), [length, 0, 18])] };
}

function lengthOf(hand: StageHand, id: string): number {
  const { shape } = hand.part(id);
  return shape.form === 'cable' ? shape.length : 0;
}

/** A cable is thinner on paper than a line; a new one is drawn as thick as this share of the item's height, so that it is told from the old ones. */
const THICK_SHARE = 1 / 140;

function drawnThick(model: Model, hand: StageHand, solids: Solids, id: string): SceneBody {
  const { shape } = hand.part(id);
  const height = model.dimensions.find((each) => each.name === 'height')?.value ?? 0;
  const body = hand.body(id, 'new');
  return shape.form === 'cable' ? { ...body, mesh: solids.mesh({ ...shape, diameter: Math.max(shape.diameter, height * THICK_SHARE) }) } : body;
}
