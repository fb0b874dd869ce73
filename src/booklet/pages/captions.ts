import type { PartKind } from '../../model/index.ts';
import type { Action, Step } from '../../plan/index.ts';
import type { BookletInput } from './types.ts';

/** Whose number a caption tells, by action; other captions tell none. */
const counted: Partial<Readonly<Record<Action, PartKind>>> = {
  'push-tubes': 'long-tube',
  'pin-ends': 'panel-pin',
  'pin-middle': 'panel-pin',
  'push-posts': 'post',
  'pin-posts': 'joint-pin',
  'pin-panel': 'joint-pin',
  brace: 'cable',
};

/** What is done in a step, as one short sentence of the locale's `actions`. */
export function caption({ words }: Pick<BookletInput, 'words'>, step: Step): string {
  const kind = counted[step.action];
  return words.t(captionKey(step), {
    ...(step.side === null ? {} : { side: words.t(`actions.sides.${step.side}`) }),
    ...(kind === undefined ? {} : { count: countOf(step, kind) }),
  });
}

/** Pushing tubes and drilling are told by what is pushed and drilled. */
function captionKey({ action, detail }: Step): string {
  if (detail.on === 'tubes') return `actions.${action}.${detail.tubes}`;
  if (action === 'drill') return `actions.drill.${detail.on === 'plate' ? 'panel' : 'posts'}`;
  return `actions.${action}`;
}

function countOf({ newParts }: Step, kind: PartKind): number {
  return newParts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.ids.length, 0);
}
