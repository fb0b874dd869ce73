import type { Model, PartKind } from '../../../model/index.ts';
import { RULES, type OrderReason, type Plan, type Step } from '../../../plan/index.ts';
import type { Why } from './messages.ts';

/** Why a step comes where it does: what comes before it for a reason, and what it must come before. Reasons of one sort are told together. */
export function whysOf({ steps, reasons }: Plan, model: Model, step: Step): readonly Why[] {
  const number = (key: string): number | null => steps.find((each) => each.key === key)?.number ?? null;
  const kinds = new Map(model.parts.map(({ id, kind }) => [id, kind]));
  const sentences = new Map(RULES.map(({ name, reason }) => [name, reason]));
  const found = reasons.flatMap((link): readonly Why[] => {
    const sort = sortOf(link);
    // What would be in the way is told of the step that goes first, all else of the one that waits.
    const [here, other] = sort === 'in-the-way' ? [link.first, link.then] : [link.then, link.first];
    const at = number(other);
    if (here !== step.key || at === null) return [];
    const parts = link.parts.flatMap((id) => kinds.get(id) ?? []);
    return [{ why: sort, steps: [at], parts, rule: sort === 'practice' ? sentences.get(link.rule) ?? null : null }];
  });
  return found.reduce<readonly Why[]>(joined, []);
}

const sortOf = ({ rule }: OrderReason): Why['why'] => (rule === 'needed' || rule === 'designer' ? rule : rule === 'geometry' ? 'in-the-way' : 'practice');

function joined(told: readonly Why[], next: Why): readonly Why[] {
  const same = told.findIndex(({ why, rule }) => why === next.why && rule === next.rule);
  return same < 0 ? [...told, next] : told.map((each, index) => (index === same
    ? { ...each, steps: ordered([...each.steps, ...next.steps]), parts: [...new Set<PartKind>([...each.parts, ...next.parts])] } : each));
}

const ordered = (numbers: readonly number[]): readonly number[] => [...new Set(numbers)].sort((one, other) => one - other);
