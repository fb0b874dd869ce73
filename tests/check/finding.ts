import { checkModel, type Finding } from '../../src/check/index.ts';
import type { Model } from '../../src/model/index.ts';

/** The one finding of that name; throws where there is none. */
export function findingOf(model: Model, name: string): Finding {
  const { findings } = checkModel(model);
  const found = findings.find((finding) => finding.name === name);
  if (!found) throw new Error(`no finding ${name} among ${findings.map((finding) => finding.name).join(', ')}`);
  return found;
}

/** Names of the findings with that verdict, in order, without repeats. */
export const namesWith = (model: Model, verdict: Finding['verdict']): readonly string[] =>
  [...new Set(checkModel(model).findings.filter((finding) => finding.verdict === verdict).map((finding) => finding.name))];
