import { flatHoles, notchHoles, type PanelHole } from '../../model/index.ts';
import { ACTIONS, WORK, type BenchWork, type PanelFeatures } from '../../work/facts.ts';
import type { Ground } from './ground.ts';
import { poseFor } from './poses.ts';
import type { Draft } from './steps.ts';
import type { Unit } from './units.ts';

/** Work on the bench for one kind of panel, or for all tubes, and how often it is done. */
export interface BenchJob {
  readonly work: BenchWork;
  readonly times: number;
  /** The parts that are made so; the first is shown. */
  readonly parts: readonly string[];
  /** Of several kinds alike, which one. */
  readonly letter: string | null;
}

/** Bench work on a panel that is wrapped, in the catalogue's order, with what asks for it. */
const ON_PANEL = ACTIONS.flatMap((action) => {
  const { askedByPanel } = WORK[action];
  return askedByPanel === undefined ? [] : [{ work: action as BenchWork, isAsked: askedByPanel }];
});

/** Tubes are sawn, those to be marked are while their ends are bare, and all ends are filed and capped, before all else. */
export const tubeJobs = (ground: Ground): readonly BenchJob[] => [
  ...jobIf('cut-tubes', partsOf(ground, 'tube')), ...markJobs(ground), ...jobIf('cap-ends', partsOf(ground, 'tube')),
];

/** For each kind of wrapped panel its bench work; a feature that it lacks asks for none. */
export function wrappedJobs(ground: Ground): readonly (readonly BenchJob[])[] {
  return [...alike(ground, 'panel'), ...alike(ground, 'folded').filter(([first]) => isBent(ground, first))].map((units) => {
    // The first part of a unit is the panel; a box has its pins too.
    const parts = units.flatMap((unit) => unit.parts.slice(0, 1));
    const features = featuresOf(ground, units);
    return ON_PANEL.filter(({ isAsked }) => features !== null && isAsked(features)).map(({ work }) => ({ work, times: parts.length, parts, letter: null }));
  });
}

function featuresOf(ground: Ground, [first]: readonly Unit[]): PanelFeatures | null {
  const id = first?.parts[0] ?? '';
  const shape = ground.units.parts.get(id)?.shape;
  if (shape?.form !== 'panel' && shape?.form !== 'folded') return null;
  const flaps = ground.units.flaps.get(id) ?? [];
  const { pattern } = shape;
  return {
    creases: flaps.some(({ creases }) => creases > 0), halfCuts: flaps.some(({ halfCuts }) => halfCuts > 0),
    holes: flatHoles<PanelHole>(pattern).length + notchHoles(pattern).length > 0, corners: pattern.outline.length > 4,
  };
}

/** For each kind of flat panel: cut and punched in one. */
export function plateJobs(ground: Ground): readonly BenchJob[] {
  const kinds = [...alike(ground, 'plate'), ...alike(ground, 'folded').filter(([first]) => !isBent(ground, first))];
  return kinds.map((units, index): BenchJob => ({
    work: 'cut-panel', times: units.length, parts: units.flatMap((unit) => unit.parts), letter: kinds.length > 1 ? String.fromCharCode(A + index) : null,
  }));
}

const A = 97;

const isBent = (ground: Ground, unit: Unit | undefined): boolean => (ground.units.flaps.get(unit?.parts[0] ?? '') ?? []).length > 0;

/** Bars that go through sleeves get the places of these marked. */
function markJobs(ground: Ground): readonly BenchJob[] {
  const bars = new Set(ground.links.filter(({ is }) => is === 'sleeve').map(({ a }) => a));
  return jobIf('mark-posts', [...bars].flatMap((index) => ground.units.all[index]?.parts ?? []));
}

const jobIf = (work: BenchWork, parts: readonly string[]): readonly BenchJob[] => (parts.length === 0 ? [] : [{ work, times: 1, parts, letter: null }]);

const unitsOf = (ground: Ground, form: string): readonly Unit[] =>
  ground.units.all.filter((unit) => unit.is === 'part' && ground.units.parts.get(unit.parts[0] ?? '')?.shape.form === form);

const partsOf = (ground: Ground, form: string): readonly string[] => unitsOf(ground, form).flatMap((unit) => unit.parts);

function alike(ground: Ground, form: string): readonly (readonly Unit[])[] {
  const units = unitsOf(ground, form);
  return [...new Set(units.map(({ look }) => look))].map((look) => units.filter((unit) => unit.look === look));
}

/** A bench job as a step: nothing moves, nothing is there yet. */
export function benchDraft({ work, letter, parts }: BenchJob): Draft {
  return {
    does: work, moves: [], folds: [], turns: null, newParts: [], present: [], folded: [], foldedAfter: [], works: parts, drillsFor: [],
    up: [0, 0, 1], pose: poseFor([0, 0, 1]), onBench: true, side: null, letter, people: 1, held: [], props: [], inHand: [], costs: [],
  };
}
