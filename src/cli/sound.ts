import { checkModel, type Report } from '../check/index.ts';
import { buildModel, type Model } from '../model/index.ts';
import { declaredFor, type Item } from '../read/index.ts';
import { FailedCheck } from './failed-check.ts';

/** A size that is proven, and what was found of it. */
export interface Sound {
  readonly model: Model;
  readonly report: Report;
}

/** Builds and checks a size. Throws when one of its checks fails; `orElse` is what could be done besides. */
export function soundSize(item: Item, size: string, orElse = ''): Sound {
  const checked = checkedSize(item, size);
  const failed = checked.report.findings.filter((finding) => finding.verdict === 'fail');
  if (failed.length === 0) return checked;
  throw new FailedCheck(`${item.source.file}: ${item.name} ${size} fails ${failed.map((finding) => finding.name).join(', ')}; see foldwright check ${item.name}${orElse}`);
}

/** The same whatever its checks say. */
export function checkedSize(item: Item, size: string): Sound {
  const model = buildModel(item, size);
  return { model, report: checkModel(model, declaredFor(item, size)) };
}
