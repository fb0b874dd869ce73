import { messages } from '../messages.ts';
import { nearestName } from '../nearest.ts';
import type { FieldPath } from '../yaml-source.ts';
import type { GivenStructure } from './given.ts';
import type { Callable } from './references.ts';
import { instancesOf, type Instance, type Scope, type Section } from './scope.ts';
import type { Named, Skeleton, SkeletonBar, SkeletonCable, SkeletonFitting, SkeletonPanel, SkeletonPoint, Triple } from './types.ts';

/** A skeleton while it grows: parts by name, and the names whose parts could not all be made. */
export interface Growing {
  readonly points: Map<string, SkeletonPoint>;
  readonly bars: Map<string, SkeletonBar>;
  readonly panels: Map<string, SkeletonPanel>;
  readonly cables: Map<string, SkeletonCable>;
  readonly fittings: Map<string, SkeletonFitting>;
  readonly broken: Readonly<Record<Exclude<Section, 'uses'>, Set<string>>>;
}

export const newGrowing = (): Growing => ({
  points: new Map(), bars: new Map(), panels: new Map(), cables: new Map(), fittings: new Map(),
  broken: { points: new Set(), bars: new Set(), panels: new Set(), cables: new Set(), fittings: new Set() },
});

export const grown = ({ points, bars, panels, cables, fittings }: Growing): Skeleton =>
  ({ points: [...points.values()], bars: [...bars.values()], panels: [...panels.values()], cables: [...cables.values()], fittings: [...fittings.values()] });

export const callable = <Kind extends 'points' | 'bars' | 'panels'>(growing: Growing, kind: Kind): Callable<Growing[Kind] extends Map<string, infer Part extends Named> ? Part : never> =>
  ({ what: WORDS[kind], parts: growing[kind], broken: growing.broken[kind] }) as never;

const WORDS = { points: messages.structure.point, bars: messages.structure.bar, panels: messages.structure.panel } as const;

export type Entry<Kind extends Exclude<keyof GivenStructure, 'unread'>> = GivenStructure[Kind] extends ReadonlyMap<string, infer Given> ? Given : never;

/** Makes the parts of one entry by `make`; an entry with a part that could not be made is marked as broken. */
export function each<Part extends Named>(
  scope: Scope, section: Exclude<Section, 'uses'>, growing: Growing, name: string, repeats: Readonly<Record<string, string>> | undefined,
  make: (instance: Instance) => readonly Part[] | null,
): void {
  const instances = instancesOf(scope, section, name, repeats);
  if (instances.length === 0) growing.broken[section].add(name);
  const all = growing[section] as unknown as Map<string, Part>;
  for (const instance of instances) {
    const parts = make(instance);
    if (parts === null) growing.broken[section].add(name);
    for (const part of parts ?? []) all.set(part.name, part);
  }
}

export const indexNamesOf = ({ for: repeats }: { readonly for?: Readonly<Record<string, string>> | undefined }): readonly string[] => Object.keys(repeats ?? {});

/** The fields that every part has, without what only the writing needs. */
export const bare = ({ name, of, index, position, field }: Instance): Named => ({ name, of, index, position, field });

/** The name of a kit's part that a field gives; null and told when the kit has none such. */
export function kitName(scope: Scope, path: FieldPath, given: string, known: readonly string[], what: string): string | null {
  if (known.includes(given)) return given;
  scope.tell(path, messages.structure.unknown(what, nearestName(given, known), known));
  return null;
}

/** Points nearer to each other, or to a line, than this are one, or on it, mm. */
export const SAME_PLACE = 0.5;

export const less = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
