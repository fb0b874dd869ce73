import { checkModel, defaultLimits, type Finding, type Limits, type Report } from '../../src/check/index.ts';
import type { Model } from '../../src/model/index.ts';
import { declaredOf } from './items.ts';

/** The report of a model, for the people that its item file declares. */
export const reportOf = (model: Model, limits: Limits = defaultLimits): Report => checkModel(model, declaredOf(model), limits);

/** The one finding of that name; throws where there is none. */
export function findingOf(model: Model, name: string, limits: Limits = defaultLimits): Finding {
  const { findings } = reportOf(model, limits);
  const found = findings.find((finding) => finding.name === name);
  if (!found) throw new Error(`no finding ${name} among ${findings.map((finding) => finding.name).join(', ')}`);
  return found;
}

/** Names of the findings with that verdict, in order, without repeats. */
export const namesWith = (model: Model, verdict: Finding['verdict']): readonly string[] =>
  [...new Set(reportOf(model).findings.filter((finding) => finding.verdict === verdict).map((finding) => finding.name))];
