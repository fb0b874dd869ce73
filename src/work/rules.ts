import type { Side } from '../model/index.ts';
import type { Action } from './facts.ts';
import type { Pick, Rule } from './types.ts';

/** Work of these kinds, of one side when it is told. */
export const doing = (actions: readonly Action[], side: Side | null = null): Pick =>
  ({ action, detail }) => actions.includes(action) && (side === null || ('side' in detail && detail.side === side));

/** Work on the two posts of a side. */
export const onPosts = (action: Action, side: Side): Pick =>
  (work) => work.action === action && work.detail.on === 'side' && work.detail.side === side;

/** Work on decks and frames, not on the item as a whole. */
export const inRun: Pick = ({ run }) => run !== null;

/** Work on a side of a wrapped panel: folding, pinning. */
export const onPanelSide = (side: Side | null = null): Pick =>
  ({ run, detail }) => run !== null && detail.on === 'side' && (side === null || detail.side === side);

/** Good practice: gives way to a designer's wish. Holds within one run. */
export const rule = (name: string, reason: string, first: Pick, then: Pick): Rule => ({ name, reason, firm: false, within: 'run', first, then });

/** A rule that no wish overrides. */
export const firm = (name: string, reason: string, first: Pick, then: Pick): Rule => ({ ...rule(name, reason, first, then), firm: true });

/** Neighbours of a chain, as one rule a link. */
export const chain = (name: string, reason: string, picks: readonly Pick[], make: typeof rule = rule): readonly Rule[] =>
  picks.slice(1).map((pick, index) => make(name, reason, picks[index] ?? pick, pick));

/** The check of a right/wrong pair of pictures. */
export const pair = (name: string) => ({ kind: 'pair', name }) as const;
