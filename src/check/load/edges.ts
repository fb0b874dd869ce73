import { placed } from '../../model/index.ts';
import type { Face } from '../../read/index.ts';
import { partsOf } from '../parts.ts';
import { baysOf } from './bays.ts';
import type { Case } from '../types.ts';

/** Distances between the posts' middle lines along and across, mm. */
export const spansOf = ({ model: { pattern: { axes } } }: Pick<Case, 'model'>): readonly [number, number] => [2 * axes[0], 2 * axes[1]];

/** How far a deck stands out over its tubes' middle lines, mm. */
export const overhangOf = ({ model: { pattern } }: Pick<Case, 'model'>): number => pattern.wrapRadius + pattern.thickness;

/** Edge of a deck that somebody can sit on or lean on. */
export interface OpenEdge {
  readonly tubes: 'long-tube' | 'short-tube';
  /** Of its tube, and across the deck, mm. */
  readonly span: number;
  readonly across: number;
  readonly parts: readonly string[];
}

const faces: readonly Face[] = ['front', 'back', 'left', 'right'];

/** The top deck's edges without a guard: a flat panel over them, on a bed over the mattress by as much as a guard must be. */
export function openEdges(given: Case): readonly OpenEdge[] {
  const { model, declared: { mattress }, limits: { guardHeight } } = given;
  const [x, y] = spansOf(given);
  const top = Math.max(...model.deckTops) + (mattress === null ? 0 : mattress.thickness + guardHeight.value - model.kit.tube.outsideDiameter / 2);
  const guarded = baysOf(model).filter(({ by, high }) => by === 'plate' && high > top).flatMap((bay) => bay.faces);
  return faces.filter((face) => !guarded.includes(face)).map((face) => {
    const long = face === 'front' || face === 'back';
    const tubes = long ? 'long-tube' as const : 'short-tube' as const;
    return { tubes, span: long ? x : y, across: long ? y : x, parts: tubesOn(given, face, tubes) };
  });
}

/** The tubes of decks on a side of the item. */
function tubesOn({ model }: Case, face: Face, tubes: OpenEdge['tubes']): readonly string[] {
  const decks = model.groups.filter(({ kind }) => kind === 'deck').map(({ name }) => name);
  const axis = tubes === 'long-tube' ? 1 : 0;
  const way = face === 'front' || face === 'left' ? -1 : 1;
  return partsOf(model, tubes).filter(({ group, pose }) => group !== null && decks.includes(group) && way * placed(pose, [0, 0, 0])[axis] > 0).map(({ id }) => id);
}
