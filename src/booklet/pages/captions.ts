import type { PartKind } from '../../model/index.ts';
import type { Action, Step } from '../../plan/index.ts';
import type { Words } from '../words/index.ts';

/** Whose number a caption tells, by action; other captions tell none. */
const counted: Partial<Readonly<Record<Action, PartKind>>> = {
  'pin-ends': 'panel-pin',
  'pin-middle': 'panel-pin',
  'push-posts': 'post',
  'pin-posts': 'joint-pin',
  brace: 'cable',
};

/** What is done in a step, as one short sentence of the locale's `actions`. */
export function caption(words: Words, step: Step): string {
  const kind = counted[step.action];
  return words.t(captionKey(step), {
    ...(step.side === null ? {} : { side: words.t(`actions.sides.${step.side}`) }),
    ...(kind === undefined ? {} : { count: countOf(step, kind) }),
  });
}

/** Steps such as `crease:short` and `crease:long` are told apart by the detail in their key. */
function captionKey({ action, key, side }: Step): string {
  const detail = key.split(':')[1];
  return detail === undefined || detail === side ? `actions.${action}` : `actions.${action}.${detail}`;
}

function countOf({ newParts }: Step, kind: PartKind): number {
  return newParts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.ids.length, 0);
}
