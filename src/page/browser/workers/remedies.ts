import { checkModel, remediesFor, type Finding, type Remedy } from '../../../check/index.ts';
import { buildModel } from '../../../model/index.ts';
import { declaredFor } from '../../../read/index.ts';
import type { Subject } from './messages.ts';
import { itemOf } from './subject.ts';

/**
 * For each parameter, one after the other, the nearest value in its range that makes a check pass and lets no other fail
 * that did not. Yields null for a parameter that has none, so that whoever waits can count.
 */
export function remediesOf(subject: Subject, finding: Finding['name']): Generator<Remedy | null> {
  const item = itemOf(subject);
  const fails = failsOf(checkModel(buildModel(item, subject.size), declaredFor(item, subject.size)).findings);
  const itemWith = (values: Subject['values']) => itemOf({ ...subject, values: { ...subject.values, ...values } });
  return remediesFor({ item, size: subject.size, itemWith }, ({ findings }) => {
    const those = findings.filter(({ name }) => name === finding);
    return those.length > 0 && those.every(({ verdict }) => verdict === 'pass') && [...failsOf(findings)].every((name) => fails.has(name));
  });
}

const failsOf = (findings: readonly Finding[]): ReadonlySet<Finding['name']> => new Set(findings.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name));
