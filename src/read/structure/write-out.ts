import { messages } from '../messages.ts';
import { quoted, type FieldPath } from '../yaml-source.ts';
import type { GivenStructure } from './given.ts';
import { bare, callable, each, indexNamesOf, kitName, less, SAME_PLACE, type Entry, type Growing } from './growing.ts';
import { mirrored } from './mirror.ts';
import { reference, references } from './references.ts';
import { directionField, tripleField, type Scope } from './scope.ts';
import type { SkeletonPoint, Triple } from './types.ts';
import { writeFitting } from './write-fittings.ts';
import { writePanel } from './write-panels.ts';

/** Writes out the sections of a file, points first, into `growing`. */
export function writeOut(scope: Scope, given: GivenStructure, growing: Growing): void {
  for (const kind of ['points', 'bars', 'panels', 'cables', 'fittings'] as const) for (const name of given.unread[kind]) growing.broken[kind].add(name);
  given.points.forEach((entry, name) => { writePoint(scope, growing, name, entry); });
  given.bars.forEach((entry, name) => { writeBar(scope, growing, name, entry); });
  given.panels.forEach((entry, name) => { writePanel(scope, growing, name, entry); });
  given.cables.forEach((entry, name) => { writeCable(scope, growing, name, entry); });
  given.fittings.forEach((entry, name) => { writeFitting(scope, growing, name, entry); });
}

function writePoint(scope: Scope, growing: Growing, name: string, given: Entry<'points'>): void {
  const at = tripleField(scope, ['points', name, 'at'], given.at, indexNamesOf(given), 'length');
  const planes = given.mirror === undefined ? [] : typeof given.mirror === 'string' ? [given.mirror] : given.mirror;
  each(scope, 'points', growing, name, given.for, (instance) => {
    const place = at(instance.indexes);
    if (place === null) return null;
    return planes.reduce<readonly SkeletonPoint[]>((sofar, plane) => sofar.flatMap((point) =>
      [0, 1].map((side) => ({ ...point, name: `${point.name}.${side}`, index: [...point.index, side], at: side === 0 ? point.at : mirrored(point.at, plane) }))),
    [{ ...bare(instance), at: place }]);
  });
}

function writeBar(scope: Scope, growing: Growing, name: string, given: Entry<'bars'>): void {
  const points = callable(growing, 'points');
  const indexNames = indexNamesOf(given);
  const at = (field: string): FieldPath => ['bars', name, field];
  const [from, to] = [reference(scope, at('from'), given.from, indexNames, points), reference(scope, at('to'), given.to, indexNames, points)];
  const through = given.through === undefined ? () => [] : references(scope, at('through'), given.through, indexNames, points);
  const tube = kitName(scope, at('tube'), given.tube ?? scope.kit.tubes[0] ?? '', scope.kit.tubes, messages.structure.kitTube);
  each(scope, 'bars', growing, name, given.for, (instance) => {
    const [first, last, between] = [from(instance.indexes), to(instance.indexes), through(instance.indexes)];
    if (first === null || last === null || between === null || tube === null) return null;
    const onWay = inOrderOnWay(scope, at, first, last, between);
    return onWay === null ? null : [{ ...bare(instance), from: first.name, to: last.name, through: onWay.map((point) => point.name), tube, pinned: given.pinned }];
  });
}

const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

function inOrderOnWay(scope: Scope, at: (field: string) => FieldPath, from: SkeletonPoint, to: SkeletonPoint, between: readonly SkeletonPoint[]): readonly SkeletonPoint[] | null {
  const way = less(to.at, from.at);
  const length = Math.hypot(...way);
  if (length <= SAME_PLACE) {
    scope.tell(at('to'), messages.structure.twoPoints, quoted(to.name));
    return null;
  }
  const placed = between.map((point) => ({ point, along: dot(less(point.at, from.at), way) / length }));
  const beside = placed.find(({ point, along }) => along < SAME_PLACE || along > length - SAME_PLACE
    || Math.sqrt(Math.max(0, dot(less(point.at, from.at), less(point.at, from.at)) - along ** 2)) > SAME_PLACE);
  if (beside !== undefined) {
    scope.tell(at('through'), messages.structure.onTheWay(beside.point.name), quoted(beside.point.name));
    return null;
  }
  return placed.toSorted((a, b) => a.along - b.along).map(({ point }) => point);
}

function writeCable(scope: Scope, growing: Growing, name: string, given: Entry<'cables'>): void {
  const points = callable(growing, 'points');
  const indexNames = indexNamesOf(given);
  const at = (field: string): FieldPath => ['cables', name, field];
  const [from, to] = [reference(scope, at('from'), given.from, indexNames, points), reference(scope, at('to'), given.to, indexNames, points)];
  const face = directionField(scope, at('face'), given.face, indexNames);
  each(scope, 'cables', growing, name, given.for, (instance) => {
    const [first, last, looks] = [from(instance.indexes), to(instance.indexes), face(instance.indexes)];
    if (first === null || last === null || looks === null) return null;
    if (first !== last) return [{ ...bare(instance), from: first.name, to: last.name, face: looks }];
    scope.tell(at('to'), messages.structure.twoPoints, quoted(last.name));
    return null;
  });
}

