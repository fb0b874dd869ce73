import type { Model, PartKind } from '../../model/index.ts';
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
export function caption({ words, model }: Pick<BookletInput, 'words' | 'model'>, step: Step): string {
  const kind = counted[step.action];
  return words.t(captionKey(model, step), {
    ...(step.side === null ? {} : { side: words.t(`actions.sides.${step.side}`) }),
    ...(kind === undefined ? {} : { count: countOf(step, kind) }),
  });
}

/** `push-tubes:short` and `push-tubes:foot-frame-short` have the same caption, another than `push-tubes:long`. */
function captionKey(model: Model, step: Step): string {
  const { action, key } = step;
  switch (action) {
    case 'push-tubes': return `actions.push-tubes.${key.split(/[:-]/).at(-1) ?? ''}`;
    case 'drill': return `actions.drill.${drillsPanel(model, step) ? 'panel' : 'posts'}`;
    default: return `actions.${action}`;
  }
}

/** Whether the step's holes are for pins that hold a flat panel. */
function drillsPanel({ parts, joinings }: Model, { drillsFor }: Step): boolean {
  const flat = new Set(parts.filter((part) => part.kind === 'flat-panel').map((part) => part.id));
  return joinings.some(({ by, parts: held }) => drillsFor.includes(by) && held.some((id) => flat.has(id)));
}

function countOf({ newParts }: Step, kind: PartKind): number {
  return newParts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.ids.length, 0);
}
