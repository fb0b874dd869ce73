import { messages } from '../messages.ts';
import { nearestName } from '../nearest.ts';
import { goodEntries } from '../validate.ts';
import type { FieldPath } from '../yaml-source.ts';
import { callable, type Growing } from './growing.ts';
import { references } from './references.ts';
import { placeSchema } from './schema.ts';
import { lengthField, measuredField, type Scope } from './scope.ts';
import type { Place } from './types.ts';

/** Newtons that a kilogram weighs (standard gravity, ISO 80000-4). */
const WEIGHT = 9.80665;

/** What the panels are for, in one size. `pieces` are the decks and panels of a short form, which a place may name as well. */
export function writePlaces(scope: Scope, raw: unknown, growing: Growing, pieces: readonly string[]): readonly Place[] {
  return [...goodEntries(raw, placeSchema)].flatMap(([name, given]) => {
    const at = (field: string): FieldPath => ['places', name, field];
    const panels = (typeof given.panel === 'string' ? [given.panel] : given.panel).map((word, index) =>
      panelsOf(scope, typeof given.panel === 'string' ? at('panel') : [...at('panel'), index], word, growing, pieces));
    const mattress = lengthField(scope, at('mattress'), given.mattress, [])({});
    if (given.mattress !== undefined && given.use !== 'bed') scope.tell(at('mattress'), messages.structure.mattressOnBed);
    const load = loadOf(scope, at('load'), given.load);
    return panels.some((each) => each === null) ? [] : [{ name, use: given.use, panels: panels.flatMap((each) => each ?? []), load, mattress }];
  });
}

/** A bare name calls all panels of that name; a piece of a short form goes by its name. */
function panelsOf(scope: Scope, path: FieldPath, word: string, growing: Growing, pieces: readonly string[]): readonly string[] | null {
  if (pieces.includes(word)) return [word];
  const alike = [...growing.panels.values()].filter(({ of }) => of === word).map((panel) => panel.name);
  if (alike.length > 0) return alike;
  if (pieces.length > 0) {
    scope.tell(path, messages.structure.unknown(messages.structure.panel, nearestName(word, pieces), pieces));
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
