import type { Model, Part } from '../../model/index.ts';
import type { Draft } from './steps.ts';
import type { BatchLine } from './line.ts';
import type { Bits } from './bits.ts';
import { isFlatPanel } from './pieces.ts';
import { partsIn } from './steps.ts';
import type { Ground } from './ground.ts';

/** What names in keys are made of: the model's parts, and whose they are. */
export interface Naming {
  readonly parts: ReadonlyMap<string, Part>;
  readonly groups: Model['groups'];
}

/** The name of a batch: the piece of the item file that it is all of; else the pieces that its parts are of, and a number. */
export function batchName(ground: Ground, naming: Naming, { set, copies }: Pick<BatchLine, 'set' | 'copies'>, number: number): string {
  const pieces = piecesOf(ground, naming, copies);
  const ids = new Set(partsIn(ground, set));
  const whole = naming.groups.find(({ partIds }) => partIds.length === ids.size && partIds.every((id) => ids.has(id)));
  if (whole !== undefined && pieces.length === 1) return whole.piece;
  return [...pieces, number].join('-');
}

function piecesOf(ground: Ground, { parts, groups }: Naming, copies: readonly Bits[]): readonly string[] {
  const names = new Set(copies.flatMap((copy) => partsIn(ground, copy)).map((id) => parts.get(id)?.group));
  return [...new Set(groups.filter(({ name }) => names.has(name)).map(({ piece }) => piece))];
}

/** Whose a batch's steps are, for their keys: nothing for the first deck's, the pieces' names for others. */
export function ownerOf(ground: Ground, naming: Naming, copies: readonly Bits[]): string | null {
  const pieces = piecesOf(ground, naming, copies);
  const first = naming.groups.find(({ kind }) => kind === 'deck')?.piece;
  const told = pieces.filter((piece) => piece !== first || pieces.length > 1);
  return told.length === 0 ? null : told.join('-');
}

/** The key of a step: what is done, whose it is, and on what. */
export function keyFor(naming: Naming, draft: Draft, owner: string | null, inBatch: boolean): string {
  const behind = [owner, onWhat(naming, draft)].filter((each) => each !== null).join('-');
  const does = actionName(naming, draft, inBatch);
  return behind === '' ? does : `${does}:${behind}`;
}

function actionName(naming: Naming, draft: Draft, inBatch: boolean): string {
  switch (draft.does) {
    case 'push': return 'push-tubes';
    case 'close': return 'close-frame';
    case 'push-through': return 'push-posts';
    case 'lay-panel': return 'hold-panel';
    case 'wrap': return 'wrap-side';
    case 'hang': return 'brace';
    case 'pin': return plateOf(naming, draft) === null ? 'pin-posts' : 'pin-panel';
    case 'turn': return !inBatch && (draft.turns?.to[2] ?? 0) > 0.9 ? 'stand-up' : 'turn-item';
    default: return draft.does;
  }
}

function onWhat(naming: Naming, draft: Draft): string | null {
  switch (draft.does) {
    case 'push': return barsOf(naming, draft);
    case 'lay-panel':
    case 'drill':
    case 'pin': return plateOf(naming, draft) ?? draft.side;
    case 'slide-on': return slidOn(naming, draft);
    case 'cut-panel': return draft.letter;
    case 'turn':
    case 'close':
    case 'lay-frame':
    case 'set-in': return null;
    default: return draft.side;
  }
}

/** The kind of tube that a push is about: raw ones that come to hand with it, else those that move. */
function barsOf({ parts }: Naming, { moves, newParts }: Draft): string | null {
  const bars = (ids: readonly string[]): readonly Part[] => ids.flatMap((id) => parts.get(id) ?? []).filter(({ shape }) => shape.form === 'tube');
  const moving = bars(moves.flatMap((move) => move.parts));
  const kinds = new Set([bars(newParts), moving].find((found) => found.length > 0)?.map(({ kind }) => kind));
  if (kinds.has('short-tube')) return 'short';
  if (!kinds.has('long-tube')) return null;
  return moving.length > 0 ? 'long' : 'rail';
}

function plateOf({ parts }: Naming, { moves, drillsFor, newParts }: Draft): string | null {
  const isPlate = (id: string): boolean => isFlatPanel(parts.get(id)?.shape);
  const place = drillsFor.map((id) => parts.get(id)?.place).find((each) => each?.at === 'plate');
  if (place?.at === 'plate') return place.plate;
  const held = moves.flatMap(({ closes }) => closes.flatMap((connection) => (connection.is === 'pin' ? connection.holds : [])));
  return [...held, ...newParts].find(isPlate) ?? null;
}

function slidOn({ parts, groups }: Naming, { moves }: Draft): string | null {
  const names = new Set(moves.flatMap((move) => move.parts).map((id) => parts.get(id)?.group));
  const pieces = [...new Set(groups.filter(({ name }) => names.has(name)).map(({ piece }) => piece))];
  return pieces.length === 0 ? null : pieces.join('-');
}
