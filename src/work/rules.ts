import type { Side } from '../model/index.ts';
import type { Pick, PlannedWork, Rule, WorkFacts } from './types.ts';

/** The facts of a kind of work; the kinds that its rules name are checked where the catalogue is put together. */
export const work = <Named extends string = never>(facts: WorkFacts<Named>): WorkFacts<Named> => facts;

/** Work of these kinds, of one side when it is told. */
export const doing = <const Named extends string>(actions: readonly Named[], side: Side | null = null): Pick<Named> =>
  ({ action, detail }) => actions.some((each) => each === action) && (side === null || ('side' in detail && detail.side === side));

/** Work on the two posts of a side. */
export const onPosts = <const Named extends string>(action: Named, side: Side): Pick<Named> => both(doing([action], side), ({ detail }) => detail.on === 'side');

/** Work on one flat panel. */
export const onPlate: Pick<never> = ({ detail }) => detail.on === 'plate';

/** Work on decks and frames, not on the item as a whole. */
export const inRun: Pick<never> = ({ run }) => run !== null;

export const onBench: Pick<never> = ({ standing }) => standing === 'bench';

/** Work on a side of a wrapped panel: folding, pinning. */
export const onPanelSide = (side: Side | null = null): Pick<never> =>
  ({ run, detail }) => run !== null && detail.on === 'side' && (side === null || detail.side === side);

export const both = <One extends string, Other extends string>(one: Pick<One>, other: Pick<Other>): Pick<One | Other> =>
  (work: PlannedWork) => one(work) && other(work);

export const either = <One extends string, Other extends string>(one: Pick<One>, other: Pick<Other>): Pick<One | Other> =>
  (work: PlannedWork) => one(work) || other(work);

export const but = <One extends string, Other extends string>(one: Pick<One>, other: Pick<Other>): Pick<One | Other> =>
  (work: PlannedWork) => one(work) && !other(work);

type MakeRule = <First extends string, Then extends string>(name: string, reason: string, first: Pick<First>, then: Pick<Then>) => Rule<First | Then>;

/** Good practice: gives way to a designer's wish. Holds within one run. */
export const rule: MakeRule = (name, reason, first, then) => ({ name, reason, firm: false, within: 'run', first, then });

/** A rule that no wish overrides. */
export const firm: MakeRule = (name, reason, first, then) => ({ ...rule(name, reason, first, then), firm: true });

/** Neighbours of a chain, as one rule a link. */
export const chain = <Named extends string>(name: string, reason: string, picks: readonly Pick<Named>[], make: MakeRule = rule): readonly Rule<Named>[] =>
  picks.slice(1).map((pick, index) => make(name, reason, picks[index] ?? pick, pick));

/** The check of a right/wrong pair of pictures. */
export const pair = (name: string) => ({ kind: 'pair', name }) as const;
