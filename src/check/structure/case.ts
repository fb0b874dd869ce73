import type { Model } from '../../model/index.ts';
import type { Declared } from '../../read/index.ts';
import type { Limits } from '../limits.ts';
import { sideForce } from '../load/push.ts';
import type { Finding } from '../types.ts';
import { bearingsOf, type Bearing } from './bearings.ts';
import { contactsOf, edgesOf, type Contact, type Edge } from './ground.ts';
import { ladensOf, type Laden } from './laden.ts';
import { skeletonOf, type Skeleton } from './skeleton.ts';
import { standingOf, type Standing } from './stands.ts';
import { ladenWeight } from './weights.ts';

/** What the checks of an item of points and bars look at; worked out once. */
export interface StructureCase {
  readonly model: Model;
  readonly declared: Declared;
  readonly limits: Limits;
  readonly skeleton: Skeleton;
  readonly bearings: readonly Bearing[];
  readonly contacts: readonly Contact[];
  readonly edges: readonly Edge[];
  readonly standing: Standing | null;
  readonly ladens: readonly Laden[];
}

export type StructureCheck = (given: StructureCase) => readonly Finding[];

export function structureCase(model: Model, declared: Declared, limits: Limits): StructureCase {
  const skeleton = skeletonOf(model);
  const contacts = contactsOf(skeleton);
  const [bearings, standing] = [bearingsOf(skeleton, limits), standingOf(skeleton, limits)];
  const push = sideForce(limits, ladenWeight({ model, limits, bearings }));
  return { model, declared, limits, skeleton, contacts, bearings, standing, edges: edgesOf(contacts), ladens: ladensOf(skeleton, limits, standing, bearings, push) };
}

/** The same with a share of its load on each panel in use, in the order of `bearings`; a lid's is somebody's who leans on it, and stays. */
export const withShares = (given: StructureCase, shares: readonly number[]): StructureCase => ({
  ...given, bearings: given.bearings.map((bearing, index) => {
    const share = bearing.place.use === 'lid' ? 1 : shares[index] ?? 1;
    return { ...bearing, share, load: share * bearing.load, placed: share * bearing.placed };
  }),
});

/** The finding with the least margin alone. */
export const worst = (findings: readonly Finding[]): readonly Finding[] => findings.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
