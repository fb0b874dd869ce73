import { FITTINGS } from '../catalogue/fittings.ts';
import { messages } from '../messages.ts';
import { dimensionedText } from '../dimensioned-text.ts';
import { quoted, type FieldPath } from '../yaml-source.ts';
import { bare, callable, each, indexNamesOf, kitName, less, type Entry, type Growing } from './growing.ts';
import { reference } from './references.ts';
import { directionField, measuredField, type Scope } from './scope.ts';
import type { SkeletonBar, SkeletonFitting, SkeletonPoint } from './types.ts';

type Given = Entry<'fittings'>;
type Where = SkeletonFitting['at'];

export function writeFitting(scope: Scope, growing: Growing, name: string, given: Given): void {
  const indexNames = indexNamesOf(given);
  const at = (field: string): FieldPath => ['fittings', name, field];
  const fitting = kitName(scope, at('fitting'), given.fitting, [...scope.kit.fittings.keys()], messages.structure.kitFitting);
  const on = reference(scope, at('on'), given.on, indexNames, callable(growing, 'bars'));
  const point = reference(scope, at('at'), given.at, indexNames, callable(growing, 'points'));
  const along = measuredField(scope, at('along'), given.along, indexNames, ['length']);
  const panel = reference(scope, at('panel'), given.panel, indexNames, callable(growing, 'panels'));
  const face = given.face === undefined ? () => null : directionField(scope, at('face'), given.face, indexNames);
  if (fitting !== null && !fieldsFit(scope, at, fitting, given)) {
    growing.broken.fittings.add(name);
    return;
  }
  each(scope, 'fittings', growing, name, given.for, (instance) => {
    const [bar, where] = [on(instance.indexes), placeOn(given.at === undefined ? along(instance.indexes) : point(instance.indexes))];
    const [held, looks] = [panel(instance.indexes), face(instance.indexes)];
    if (bar === null || where === null || fitting === null) return null;
    if ((given.panel !== undefined && held === null) || (given.face !== undefined && looks === null)) return null;
    if (!isOnBar(scope, at, growing, bar, where, isPlug(scope, fitting))) return null;
    return [{ ...bare(instance), fitting, on: bar.name, at: where, panel: held?.name ?? null, face: looks }];
  });
}

const placeOn = (given: SkeletonPoint | number | null): Where | null =>
  (given === null ? null : typeof given === 'number' ? { along: given } : { point: given.name });

/** What is told of a fitting's kind; null for none of the kit. */
function factsOf(scope: Scope, fitting: string): Pick<(typeof FITTINGS)['hinge'], 'isPlug' | 'holdsPanel' | 'hasFace'> | null {
  const is = scope.kit.fittings.get(fitting);
  return is === undefined ? null : FITTINGS[is];
}

const isPlug = (scope: Scope, fitting: string): boolean => factsOf(scope, fitting)?.isPlug === true;

/** The fields that this kind of fitting needs, and none that it has no use for. */
function fieldsFit(scope: Scope, at: (field: string) => FieldPath, fitting: string, given: Given): boolean {
  const { holdsPanel = false, hasFace = false } = factsOf(scope, fitting) ?? {};
  const say = messages.structure;
  const odd: readonly (readonly [string, string])[] = [
    ...((given.at === undefined) === (given.along === undefined) ? [[given.at === undefined ? 'at' : 'along', say.atOrAlong] as const] : []),
    ...(holdsPanel && given.panel === undefined ? [['panel', say.needsPanel] as const] : []),
    ...(!holdsPanel && given.panel !== undefined ? [['panel', say.noPanel] as const] : []),
    ...(hasFace && given.face === undefined ? [['face', say.needsFace] as const] : []),
    ...(isPlug(scope, fitting) && given.along !== undefined ? [['along', say.atEnd(given.on)] as const] : []),
  ];
  for (const [field, remedy] of odd) scope.tell(at(field), remedy);
  return odd.length === 0;
}

function isOnBar(scope: Scope, at: (field: string) => FieldPath, { points }: Growing, bar: SkeletonBar, where: Where, plug: boolean): boolean {
  if ('point' in where) {
    const isOn = where.point === bar.from || where.point === bar.to || (!plug && bar.through.includes(where.point));
    if (!isOn) scope.tell(at('at'), plug ? messages.structure.atEnd(bar.name) : messages.structure.onBar(bar.name), quoted(where.point));
    return isOn;
  }
  const [from, to] = [points.get(bar.from), points.get(bar.to)];
  const length = from === undefined || to === undefined ? 0 : Math.hypot(...less(to.at, from.at));
  const isWithin = where.along > 0 && where.along < length;
  if (!isWithin) scope.tell(at('along'), messages.structure.alongBar, dimensionedText({ value: where.along, dimension: 'length' }));
  return isWithin;
}
