import type { Model } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';

/** Whether a block is held behind the holes that a step punches: behind the wall of a box, and in its corners. */
export function isBlockHeld({ parts, connections }: Model, { drillsFor }: Step): boolean {
  const held = connections.find((each) => each.is === 'panel-pin' && drillsFor.includes(each.pin));
  const shape = held?.is === 'panel-pin' ? parts.find(({ id }) => id === held.panel)?.shape : undefined;
  return shape?.form === 'folded' && shape.pattern.form === 'tray';
}
