import { times } from '../../model/index.ts';
import { wallsOf } from './box-pieces.ts';
import type { Box } from './boxes.ts';
import { poseFor } from './poses.ts';
import { isPunchedThere, punchDraft, type Draft } from './steps.ts';
import type { Fold, FoldedFlap } from './types.ts';
import { against, axisOf } from './vectors.ts';

/** What is folded together, one after the other: the corner tabs, the walls that carry them, the walls that close the box. */
function turnsOf({ part, pattern, folded }: Box): readonly (readonly Fold[])[] {
  const walls = wallsOf(pattern);
  const fold = (flap: string): Fold => ({ panel: part.id, flap, from: 0, to: folded.find((each) => each.flap === flap)?.stage ?? 0 });
  return [
    walls.flatMap(({ lugs }) => lugs.map(({ name }) => fold(name))),
    walls.filter(({ lugs }) => lugs.length > 0).map(({ name }) => fold(name)),
    walls.filter(({ lugs }) => lugs.length === 0).map(({ name }) => fold(name)),
  ].filter((folds) => folds.length > 0);
}

/** Way of a pin of a corner tab, mm. */
const PIN_TRAVEL = 90;

/** A box as steps: what is folded together, then the pins of its corners. Nothing else is there yet. */
export function boxDrafts(box: Box): readonly Draft[] {
  const { part, pins } = box;
  const up = axisOf(part.pose, 2);
  const common: Omit<Draft, 'does' | 'folds' | 'moves' | 'newParts' | 'present' | 'folded' | 'foldedAfter'> = {
    turns: null, works: [], drillsFor: [], up, pose: poseFor(up), onBench: false, side: null, letter: null, people: 1, held: [], props: [], inHand: [], costs: [],
  };
  const turns = turnsOf(box);
  const folded = (count: number): readonly FoldedFlap[] => turns.slice(0, count).flatMap((folds) => folds.map(({ panel, flap, to }) => ({ panel, flap, stage: to })));
  const turned = turns.map((folds, index): Draft => ({
    ...common, does: 'turn-up', folds, moves: [], newParts: index === 0 ? [part.id] : [], present: index === 0 ? [] : [part.id],
    folded: folded(index), foldedAfter: folded(index + 1),
  }));
  if (pins.length === 0) return turned;
  const moves = pins.map((each) => ({ parts: [each.pin], by: times(against(each.out), PIN_TRAVEL), closes: [each] }));
  const pinned: Draft = { ...common, does: 'pin-corners', folds: [], moves, newParts: pins.map(({ pin }) => pin), present: [part.id], folded: box.folded, foldedAfter: box.folded };
  return [...turned, ...(isPunchedThere(part.shape) ? [punchDraft(pinned, pinned.newParts)] : []), pinned];
}
