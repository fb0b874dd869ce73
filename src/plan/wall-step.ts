import type { Model } from '../model/index.ts';
import type { WallKind } from '../read/index.ts';
import { WORK, type Action, type StepDetail } from '../work/facts.ts';
import type { Standing, Step } from './types.ts';
import { isHigh } from './reach.ts';
import { BENCH } from './found/standing.ts';

const ACTION: Action = 'fix-to-wall';

/** It stands as it is used, its back to the wall. */
const AS_USED: Standing = { ...BENCH, name: 'upright' };

/** The last step of an item that must not stand free: fixed to its wall, whatever it is built of. */
export function wallStep(model: Model, steps: readonly Step[], wall: WallKind): Step {
  const { tools, people, cautions, check, minutes, waits, supplies, sizes } = WORK[ACTION];
  const detail: StepDetail = { on: 'wall', wall };
  const ids = model.parts.map(({ id }) => id);
  return {
    number: steps.length + 1, key: ACTION, action: ACTION, detail, side: null, run: null, times: 1,
    newParts: [], present: ids, motions: [],
    drilled: ids, drillsFor: [], folded: steps.at(-1)?.folded ?? [],
    held: [], props: [], footing: { before: [], after: [] }, toHand: [], supplies: supplies?.(model, detail) ?? [], standing: AS_USED,
    tools: isHigh(model) ? [...tools, 'steps'] : tools, sizes: sizes?.(model, detail) ?? {}, people, cautions, check, minutes, waits,
  };
}
