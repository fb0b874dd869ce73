import type { z } from 'zod';
import { messages } from '../messages.ts';
import { nearestName } from '../nearest.ts';
import { namesOfKind } from '../piece-names.ts';
import { goodEntries, sectionEntries } from '../validate.ts';
import type { FieldPath } from '../yaml-source.ts';
import { callable, type Growing } from './growing.ts';
import { references } from './references.ts';
import { placeSchema } from './schema.ts';
import { lengthField, measuredField, type Scope } from './scope.ts';
import type { Use } from '../types.ts';
import type { Place, PlaceUse } from './types.ts';

/** Decks and panels of a short form by name, each with what it is for. */
export type ShortPieces = ReadonlyMap<string, PlaceUse>;

/** Newtons that a kilogram weighs (standard gravity, ISO 80000-4). */
const WEIGHT = 9.80665;

/** What carries a load that a file may tell; anything else is tested with the load of its use, and a load told of it would be forgotten. */
const LADEN: readonly PlaceUse[] = ['table', 'shelf', 'box'];

/** What the decks and the flat panels of a short form are for: it follows from the item's use, by which they are checked. */
export const USE_OF_DECKS: Readonly<Record<Use, PlaceUse>> = { storage: 'shelf', table: 'table', seat: 'seat', bed: 'bed' };
export const USE_OF_PANELS: Readonly<Record<Use, PlaceUse>> = { storage: 'screen', table: 'screen', seat: 'backrest', bed: 'screen' };

/** The decks and panels of a short form by what the file's use makes of them; an unknown use is told elsewhere. */
export function shortPieces(raw: unknown, use: unknown): ShortPieces {
  const [known = 'storage'] = (Object.keys(USE_OF_DECKS) as Use[]).filter((each) => each === use);
  return new Map([
    ...namesOfKind(raw, 'deck').map((name) => [name, USE_OF_DECKS[known]] as const),
    ...namesOfKind(raw, 'panel').map((name) => [name, USE_OF_PANELS[known]] as const),
  ]);
}

/**
 * What the panels are for, in one size. `pieces` are the decks and panels of a short form, each with what it is for, which a place may name as well;
 * a panel of points and bars that is in no place would be checked for nothing, and is told.
 */
export function writePlaces(scope: Scope, raw: unknown, growing: Growing, pieces: ShortPieces): readonly Place[] {
  const given = goodEntries(raw, placeSchema);
  const places = [...given].map(([name, place]) => placeOf(scope, name, place, growing, pieces));
  const told = places.flatMap((place) => place ?? []);
  if (told.length === sectionEntries(raw).length) tellUnplaced(scope, growing, told);
  return told;
}

function placeOf(scope: Scope, name: string, given: z.output<typeof placeSchema>, growing: Growing, pieces: ShortPieces): Place | null {
  const at = (field: string): FieldPath => ['places', name, field];
  const panels = (typeof given.panel === 'string' ? [given.panel] : given.panel).map((word, index) =>
    panelsOf(scope, typeof given.panel === 'string' ? at('panel') : [...at('panel'), index], word, growing, pieces));
  const mattress = lengthField(scope, at('mattress'), given.mattress, [])({});
  if (given.mattress !== undefined && given.use !== 'bed') scope.tell(at('mattress'), messages.structure.mattressOnBed);
  const load = loadOf(scope, at('load'), given.load);
  const other = panels.flatMap((each) => each ?? []).find((word) => (pieces.get(word) ?? given.use) !== given.use);
  if (other !== undefined) scope.tell(at('use'), messages.structure.useOfPiece(other, pieces.get(other) ?? given.use));
  if (given.load !== undefined && pieces.size > 0) scope.tell(at('load'), messages.structure.loadOfDecks);
  else if (given.load !== undefined && !LADEN.includes(given.use)) scope.tell(at('load'), messages.structure.loadOfUse(given.use, LADEN));
  return panels.some((each) => each === null) ? null : { name, use: given.use, panels: panels.flatMap((each) => each ?? []), load, mattress };
}

function tellUnplaced(scope: Scope, { panels }: Growing, places: readonly Place[]): void {
  for (const panel of panels.values()) {
    if (!places.some((place) => place.panels.includes(panel.name))) scope.tellOf(panel, messages.structure.unplaced(panel.of), messages.structure.noPlace(panel.name));
  }
}

/** A bare name calls all panels of that name; a piece of a short form goes by its name. */
function panelsOf(scope: Scope, path: FieldPath, word: string, growing: Growing, pieces: ShortPieces): readonly string[] | null {
  if (pieces.has(word)) return [word];
  const alike = [...growing.panels.values()].filter(({ of }) => of === word).map((panel) => panel.name);
  if (alike.length > 0) return alike;
  if (pieces.size > 0) {
    const names = [...pieces.keys()];
    scope.tell(path, messages.structure.unknown(messages.structure.panel, nearestName(word, names), names));
    return null;
  }
  return references(scope, path, word, [], callable(growing, 'panels'))({})?.map((panel) => panel.name) ?? null;
}

/** A force, or the weight of a mass, in N. */
function loadOf(scope: Scope, path: FieldPath, text: string | number | undefined): number | null {
  if (text === undefined) return null;
  const placed = scope.read(path, text, []);
  if (placed === null || !placed.needs.every((name) => Object.hasOwn(scope.values, name))) return null;
  const asForce = measuredField(scope, path, text, [], [dimensionOf(scope, placed) === 'mass' ? 'mass' : 'force'])({});
  if (asForce === null) return null;
  if (asForce > 0) return dimensionOf(scope, placed) === 'mass' ? asForce * WEIGHT : asForce;
  scope.tell(path, messages.structure.loadKind);
  return null;
}

function dimensionOf(scope: Scope, placed: { readonly value: (names: Scope['values']) => { readonly dimension: string } }): string {
  try {
    return placed.value(scope.values).dimension;
  } catch {
    return 'force';
  }
}
