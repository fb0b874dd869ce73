import { checkModel, defaultLimits, type Finding, type Limits, type Report } from '../../src/check/index.ts';
import type { Model } from '../../src/model/index.ts';
import { items, modelOf, reportOf as shared } from '../support/items.ts';
import { remembered } from '../support/remembered.ts';
import { declaredOf } from './items.ts';

/** That of an item as its file stands is the one that all tests share. */
const byDefault = remembered((model: Model): Report => {
  const item = items.find(({ name, sizes }) => name === model.item && sizes.some((size) => size.name === model.size));
  return item !== undefined && modelOf(item, model.size) === model ? shared(item, model.size) : checkModel(model, declaredOf(model));
});

/** The report of a model, for the people that its item file declares. */
export const reportOf = (model: Model, limits: Limits = defaultLimits): Report => (limits === defaultLimits ? byDefault(model) : checkModel(model, declaredOf(model), limits));

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
