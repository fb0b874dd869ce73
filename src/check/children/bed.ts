import { judge } from '../judge.ts';
import { idsOf, isBed } from '../parts.ts';
import { facingPlates } from './plate-gaps.ts';
import type { Check } from '../types.ts';
import { mattressOf } from './mattress.ts';

/** Height of the highest base over the floor, mm: from 600 mm a bed needs guards all round and a ladder, and is not made here. */
export const raisedBed: Check = ({ model, limits: { bedBase } }) => (isBed(model)
  ? [judge({
    name: 'raised-bed', figure: Math.max(...model.deckTops), limit: bedBase.value, bound: 'most', unit: 'mm',
    source: bedBase.source, parts: idsOf(model, 'panel'),
  })]
  : []);

/** How many sleeping places it has: over one another they would be a bunk. */
export const oneBed: Check = ({ model, limits: { sleepingPlaces } }) => (isBed(model)
  ? [judge({
    name: 'one-bed', figure: model.deckTops.length, limit: sleepingPlaces.value, bound: 'most', unit: '1',
    source: sleepingPlaces.source, parts: idsOf(model, 'panel'),
  })]
  : []);

/** Cables on a bed, where a child sleeps. */
export const bedCord: Check = ({ model, limits: { bedCords } }) => {
  if (!isBed(model)) return [];
  const cables = idsOf(model, 'cable');
  return [judge({
    name: 'bed-cord', figure: cables.length, limit: bedCords.value, bound: 'most', unit: '1', source: bedCords.source,
    parts: cables.length > 0 ? cables : idsOf(model, 'panel'),
  })];
};

/** Sides of the base with a flat panel that stands over the mattress. */
export const guardSides: Check = (given) => {
  const { model, limits: { guardSides: limit } } = given;
  const mattress = mattressOf(given);
  if (mattress === null) return [];
  const over = Math.max(...model.deckTops) + mattress.thickness;
  const guards = facingPlates(model).filter(({ top }) => top > over);
  const sides = new Set(guards.map(({ axis, inner }) => `${axis} ${Math.sign(inner)}`));
  return [judge({
    name: 'guard-sides', figure: sides.size, limit: limit.value, bound: 'least', unit: '1', source: limit.source,
    parts: guards.length > 0 ? guards.map(({ plate }) => plate.id) : idsOf(model, 'post'),
  })];
};
