import type { Action, Caution, Tool } from '../../work/facts.ts';
import { PICTURES } from '../../work/pictures.ts';
import type { Ink } from './ink.ts';
import { lookPictures } from './looks.ts';
import { pairPictures, type PairName } from './pairs/index.ts';
import { peoplePictures } from './people.ts';
import { signOfCaution, signPictures, type SignName } from './signs/index.ts';
import { standingPictures } from './standing-load.ts';
import { toolPictures } from './tools/index.ts';
import { pageTurn, turnPictures } from './turns.ts';

/** Work called like its tool: under the plain name the registry keeps the tool. */
type LikeTool = Extract<Action, Tool>;
type ActionName = Exclude<Action, Tool> | `${LikeTool}-work`;

export type PictogramName =
  | Tool
  | ActionName
  | SignName
  | keyof typeof peoplePictures
  | keyof typeof lookPictures
  | keyof typeof turnPictures
  | keyof typeof standingPictures
  | 'page-turn'
  | `${PairName}-${'right' | 'wrong'}`;

export interface Pictogram {
  readonly name: PictogramName;
  /** Inner fragment for a viewBox `0 0 width height`; no ids, classes, styles or references. */
  readonly svg: Ink;
  /** Units: 48, or 72 for a picture of a pair. */
  readonly width: 48 | 72;
  readonly height: 48;
}

/** What the signs are of, in the order they are drawn in. */
export const actionNames = Object.keys(PICTURES) as readonly Action[];

const isLikeTool = (action: Action): action is LikeTool => action in toolPictures;
const nameOf = (action: Action): ActionName => (isLikeTool(action) ? `${action}-work` : action as Exclude<Action, Tool>);

/** Work called like its tool comes last. */
const worked = Object.fromEntries(
  [...actionNames].sort((a, b) => Number(isLikeTool(a)) - Number(isLikeTool(b))).map((action) => [nameOf(action), PICTURES[action].pictogram]),
) as Record<ActionName, Ink>;

const pairs = Object.fromEntries(
  Object.entries(pairPictures).flatMap(([name, { right, wrong }]) => [[`${name}-right`, right], [`${name}-wrong`, wrong]]),
) as Record<`${PairName}-${'right' | 'wrong'}`, Ink>;

const squares: Readonly<Record<Exclude<PictogramName, keyof typeof pairs>, Ink>> = {
  ...toolPictures,
  ...peoplePictures,
  ...lookPictures,
  ...worked,
  ...signPictures,
  ...turnPictures,
  ...standingPictures,
  'page-turn': pageTurn,
};

const isPair = (name: PictogramName): name is keyof typeof pairs => name in pairs;

export const pictogramNames: readonly PictogramName[] = [...Object.keys(squares), ...Object.keys(pairs)] as PictogramName[];

export const cautionNames = Object.keys(signOfCaution) as readonly Caution[];
export const toolNames = Object.keys(toolPictures) as readonly Tool[];
export const pairNames = Object.keys(pairPictures) as readonly PairName[];

/** The picture of one name. */
export const pictogram = (name: PictogramName): Pictogram =>
  isPair(name) ? { name, svg: pairs[name], width: 72, height: 48 } : { name, svg: squares[name], width: 48, height: 48 };

/** The picture of what a step does. */
export const actionPictogram = (action: Action): Pictogram => pictogram(nameOf(action));

/** The safety sign of a caution. */
export const signFor = (caution: Caution): Pictogram => pictogram(signOfCaution[caution]);

/** Whether the check of that name is drawn as a right/wrong pair. */
export const isPairName = (name: string): name is PairName => Object.hasOwn(pairPictures, name);

/** The right and the wrong picture of a check. */
export const pairFor = (check: PairName): { readonly right: Pictogram; readonly wrong: Pictogram } => ({
  right: pictogram(`${check}-right`),
  wrong: pictogram(`${check}-wrong`),
});
