import type { Model } from '../model/index.ts';
import type { Limit, Limits } from './limits.ts';
import type { Case } from './types.ts';

/** The limits that hang on what an item is used for. */
export interface Rules {
  /** On every strength and on buckling, over the used-stock factor. */
  readonly factor: Limit;
  readonly tubeRatio: Limit;
  readonly panelRatio: Limit;
  /** Load that it must bear, N; null for storage, which is told what it bears. */
  readonly test: Limit | null;
}

/** Storage stands laden for years; a seat, table or bed is judged at a short test load that is over its use. */
export function rulesOf({ model, limits }: Pick<Case, 'model' | 'limits'>): Rules {
  const test = testLoadOf(model, limits);
  if (!test) return { factor: limits.factorOfSafety, tubeRatio: limits.tubeDeflectionRatio, panelRatio: limits.panelSagRatio, test };
  return { factor: limits.testFactor, tubeRatio: limits.testDeflectionRatio, panelRatio: limits.testSagRatio, test };
}

function testLoadOf(model: Model, limits: Limits): Limit | null {
  switch (model.use) {
    case 'storage': return null;
    case 'table': return limits.tableTest;
    case 'bed': return limits.bedTest;
    case 'seat': return seatTest(model, limits);
  }
}

/** Number of the school size mark that a size is named after (`mark-3`), or null. */
function schoolMark({ size }: Model): number | null {
  const mark = /^mark-(\d)$/.exec(size)?.[1];
  return mark === undefined ? null : Number(mark);
}

/** Body mass goes about as height to the power 2.5, and seat height as body height; up to the seat of an adult. */
function seatTest(model: Model, limits: Limits): Limit {
  const { seatTest: adult, adultSeat, loadStep } = limits;
  const share = seatShare(model, limits);
  if (share === 1) return adult;
  return {
    ...adult, value: Math.ceil((adult.value * share) / loadStep.value) * loadStep.value,
    source: `${adult.source}; for school size marks × (seat height / ${adultSeat.value} mm)^2.5, ${adultSeat.source}`,
  };
}

/** Share of an adult's test forces that a school seat is tested with, 0 to 1; 1 for any other seat. */
export function seatShare(model: Model, limits: Limits): number {
  const height = Math.max(...model.deckTops);
  return schoolMark(model) === null ? 1 : Math.min(1, (height / limits.adultSeat.value) ** 2.5);
}

/** Furniture that a child uses: beds, and whatever is named after a school size mark. */
export const isForChildren = (model: Model): boolean => model.use === 'bed' || schoolMark(model) !== null;
