import type { Declared, People } from '../read/index.ts';
import type { Limit, Limits } from './limits.ts';
import type { Case } from './types.ts';

/** The limits that hang on what an item is used for. */
export interface Rules {
  /** On every strength and on buckling, over the used-stock factor. */
  readonly factor: Limit;
  /** The same on a brittle skin. */
  readonly skinFactor: Limit;
  readonly tubeRatio: Limit;
  readonly panelRatio: Limit;
  /** Load that it must bear, N; null for storage, which is told what it bears. */
  readonly test: Limit | null;
  /** How many times the load of the use the test load is. */
  readonly impact: Limit;
  /** Breadth of a load that stands in one place, and how far its middle stands inside an edge, mm. */
  readonly pad: Limit;
  readonly padInset: number;
  /** How hard it is pushed sideways, N, for strength. */
  readonly push: Limit;
}

/** Storage stands laden for years; a seat, table or bed is judged at a short test load that is over its use. */
export function rulesOf({ model, limits }: Pick<Case, 'model' | 'limits'>): Rules {
  const { pad, padInset: { value: padInset }, furniturePush: push } = limits;
  switch (model.use) {
    case 'storage': return {
      factor: limits.factorOfSafety, skinFactor: limits.factorOfSafety, tubeRatio: limits.tubeDeflectionRatio, panelRatio: limits.panelSagRatio,
      test: null, impact: { ...limits.tableImpact, value: 1 }, pad: limits.box, padInset: limits.box.value / 2, push: limits.storagePush,
    };
    case 'table': return { ...shortTest(limits, limits.tableImpact), test: limits.tableTest, pad, padInset, push };
    case 'bed': return { ...shortTest(limits, limits.bedImpact), test: limits.bedTest, pad, padInset, push };
    case 'seat': return { ...shortTest(limits, limits.seatImpact), test: limits.seatTest, pad, padInset, push };
  }
}

/** Where the test load is from, as findings tell it after other sources, and how much of it is laid on where that is not all. */
export const testSource = ({ test }: Pick<Rules, 'test'>, share: number): string =>
  (test === null ? '' : `; ${share < 1 ? `${(100 * share).toFixed(1)} % of it, for the reserve: ` : ''}${test.source}`);

/** Of the test load that is laid on: less than all where the reserve asks for it. */
export const testShare = (given: Pick<Case, 'model' | 'limits' | 'load'>): number => {
  const { test } = rulesOf(given);
  return test === null ? 1 : Math.min(1, given.load / test.value);
};

function shortTest({ testFactor, brittleFactor, testDeflectionRatio, testSagRatio }: Limits, impact: Limit) {
  const brittle = brittleFactor.value / impact.value;
  const skinFactor = brittle > testFactor.value ? { ...brittleFactor, value: brittle } : testFactor;
  return { factor: testFactor, skinFactor, tubeRatio: testDeflectionRatio, panelRatio: testSagRatio, impact } as const;
}

/** Furniture made for children. */
export const isForChildren = ({ people }: Declared): boolean => people === 'pupils' || people === 'small-children';

/** How far what nothing uses may stand out, mm: where a child reaches it, by what is published; else by our own default. */
export const standingOut = ({ declared, limits }: Pick<Case, 'declared' | 'limits'>): Limit => (isNearChildren(declared) ? limits.snag : limits.standsOut);

/** Furniture that a child uses or reaches. */
export const isNearChildren = ({ people }: Declared): boolean => people !== ('adults' satisfies People);
