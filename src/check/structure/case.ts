import type { Model } from '../../model/index.ts';
import type { Declared } from '../../read/index.ts';
import type { Limits } from '../limits.ts';
import type { Finding } from '../types.ts';
import { bearingsOf, type Bearing } from './bearings.ts';
import { contactsOf, edgesOf, type Contact, type Edge } from './ground.ts';
import { skeletonOf, type Skeleton } from './skeleton.ts';
import { standingOf, type Standing } from './stands.ts';

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
  /** Of the loads that the places are tested with, how much is laid on. */
  readonly share: number;
}

export type StructureCheck = (given: StructureCase) => readonly Finding[];

export function structureCase(model: Model, declared: Declared, limits: Limits): StructureCase {
  const skeleton = skeletonOf(model);
  const contacts = contactsOf(skeleton);
  return { model, declared, limits, skeleton, contacts, bearings: bearingsOf(skeleton, limits), edges: edgesOf(contacts), standing: standingOf(skeleton, limits), share: 1 };
}

/** The same with a share of the loads on its places; a lid's is somebody's who leans on it, and stays. */
export const withShare = (given: StructureCase, share: number): StructureCase => ({
  ...given, share, bearings: given.bearings.map((bearing) => (bearing.place.use === 'lid' ? bearing : { ...bearing, load: share * bearing.load, placed: share * bearing.placed })),
});

/** The finding with the least margin alone. */
export const worst = (findings: readonly Finding[]): readonly Finding[] => findings.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
