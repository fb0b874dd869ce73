import { checkModel, type FindingName, type Report } from '../check/index.ts';
import { buildModel, type Model } from '../model/index.ts';
import { declaredFor, type Item } from '../read/index.ts';
import { FailedCheck } from './failed-check.ts';

/** A size that is proven, and what was found of it. */
export interface Sound {
  readonly model: Model;
  readonly report: Report;
}

/** What is larger than any piece of its kit can be cut from none, so that there is no plan of its cuts to draw. */
const CUT_FROM_NOTHING: readonly FindingName[] = ['stock-panel', 'stock-plate', 'stock-tube'];

/** Builds and checks a size. Throws when one of its checks fails; `orElse` is what could be done besides, where it can be drawn. */
export function soundSize(item: Item, size: string, orElse = ''): Sound {
  const checked = checkedSize(item, size);
  const failed = failedChecks(checked);
  if (failed.length === 0) return checked;
  throw new FailedCheck(`${failing(item, size, failed)}${failed.some((name) => CUT_FROM_NOTHING.includes(name)) ? '' : orElse}`);
}

/** Builds and checks a size that is drawn whatever its checks say. Throws where it cannot be. */
export function drawableSize(item: Item, size: string): Sound {
  const checked = checkedSize(item, size);
  const undrawn = failedChecks(checked).filter((name) => CUT_FROM_NOTHING.includes(name));
  if (undrawn.length === 0) return checked;
  throw new FailedCheck(`${failing(item, size, undrawn)}: what no piece of its kit is large enough for is not drawn`);
}

const failedChecks = ({ report }: Sound): readonly FindingName[] => report.findings.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name);

const failing = (item: Item, size: string, checks: readonly FindingName[]): string => `${item.source.file}: ${item.name} ${size} fails ${checks.join(', ')}; see foldwright check ${item.name}`;

/** The same whatever its checks say. */
export function checkedSize(item: Item, size: string): Sound {
  const model = buildModel(item, size);
  return { model, report: checkModel(model, declaredFor(item, size)) };
}
