import { messages } from '../messages.ts';
import type { FieldPath } from '../yaml-source.ts';
import { bare, callable, each, indexNamesOf, kitName, type Entry, type Growing } from './growing.ts';
import { references } from './references.ts';
import { directionField, lengthField, measuredField, type Instance, type Scope } from './scope.ts';
import type { Named, SkeletonPanel, Triple } from './types.ts';

type Given = Entry<'panels'>;

/** What every panel has, for each instance; null where it cannot be told. */
type Common = (instance: Instance) => (Named & { readonly panel: string; readonly face: Triple }) | null;

export function writePanel(scope: Scope, growing: Growing, name: string, given: Given): void {
  const at = (field: string): FieldPath => ['panels', name, field];
  const panel = kitName(scope, at('panel'), given.panel ?? scope.kit.panels[0] ?? '', scope.kit.panels, messages.structure.kitPanel);
  const face = directionField(scope, at('face'), given.is === 'tray' ? 'down' : given.face, indexNamesOf(given));
  const common: Common = (instance) => {
    const looks = face(instance.indexes);
    return panel === null || looks === null ? null : { ...bare(instance), panel, face: looks };
  };
  if (given.is === 'flat') writeFlat(scope, growing, name, given, common);
  else writeLooped(scope, growing, name, given, common);
}

function writeFlat(scope: Scope, growing: Growing, name: string, given: Extract<Given, { is: 'flat' }>, common: Common): void {
  const indexNames = indexNamesOf(given);
  const at = (field: string): FieldPath => ['panels', name, field];
  const on = references(scope, at('on'), given.on, indexNames, callable(growing, 'bars'));
  const [length, over] = [lengthField(scope, at('length'), given.length, indexNames), lengthField(scope, at('over'), given.over, indexNames)];
  const lift = measuredField(scope, at('lift'), given.lift, indexNames, ['length']);
  each(scope, 'panels', growing, name, given.for, (instance): readonly SkeletonPanel[] | null => {
    const [whole, called] = [common(instance), on(instance.indexes)];
    const own = { length: length(instance.indexes), over: over(instance.indexes), lift: lift(instance.indexes) ?? 0 };
    const isShort = (given.length !== undefined && own.length === null) || (given.over !== undefined && own.over === null);
    return whole === null || called === null || isShort ? null : [{ ...whole, ...own, is: 'flat', on: called.map((bar) => bar.name), pinned: given.pinned }];
  });
}

function writeLooped(scope: Scope, growing: Growing, name: string, given: Exclude<Given, { is: 'flat' }>, common: Common): void {
  const indexNames = indexNamesOf(given);
  const at = (field: string): FieldPath => ['panels', name, field];
  const loop = references(scope, at('loop'), given.loop, indexNames, callable(growing, 'bars'));
  const wrap = given.wrap === 'all' ? loop : references(scope, at('wrap'), given.wrap, indexNames, callable(growing, 'bars'));
  const depth = lengthField(scope, at('depth'), given.is === 'tray' ? given.depth : undefined, indexNames);
  each(scope, 'panels', growing, name, given.for, (instance): readonly SkeletonPanel[] | null => {
    const [whole, round, folded] = [common(instance), loop(instance.indexes), wrap(instance.indexes)];
    if (whole === null || round === null || folded === null) return null;
    if (folded.some((bar) => !round.includes(bar))) {
      scope.tell(at('wrap'), messages.structure.inLoop);
      return null;
    }
    const called = { ...whole, loop: round.map((bar) => bar.name), wrap: folded.map((bar) => bar.name) };
    if (given.is === 'wrapped') return [{ ...called, is: 'wrapped' }];
    const deep = depth(instance.indexes);
    return deep === null ? null : [{ ...called, is: 'tray', depth: deep }];
  });
}
