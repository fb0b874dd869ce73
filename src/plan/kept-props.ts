import type { FoundStep } from './found/types.ts';

/** Work on a flap that is wrapped. */
const ON_FLAPS: readonly FoundStep['does'][] = ['wrap', 'punch-tab', 'pin-side'];

/**
 * What blocks hold stays on them as long as its flaps are wrapped: held by one flap alone it would hang. What is set in to be wrapped
 * next comes onto its blocks at once.
 */
export function keptOnBlocks(steps: readonly FoundStep[]): readonly FoundStep[] {
  return ontoBlocks(steps).reduce<readonly FoundStep[]>((told, step) => {
    const before = told.at(-1);
    const stays = before !== undefined && before.props.length > 0 && step.props.length === 0 && ON_FLAPS.includes(before.does) && ON_FLAPS.includes(step.does);
    return [...told, stays ? { ...step, props: before.props } : step];
  }, []);
}

const ontoBlocks = (steps: readonly FoundStep[]): readonly FoundStep[] => steps.map((step, index) => {
  const next = steps[index + 1];
  const moving = step.moves.flatMap(({ parts }) => parts);
  const isNext = step.does === 'set-in' && step.props.length === 0 && next?.props.every((ids) => ids.every((id) => moving.includes(id)));
  return isNext === true ? { ...step, props: next?.props ?? [] } : step;
});
