import { FailedCheck } from '../../src/cli/failed-check.ts';
import { buildRecord } from '../../src/cli/record.ts';
import { checkedSize, drawableSize } from '../../src/cli/sound.ts';
import { planTubes } from '../../src/cut/index.ts';
import { cachedDrawer, pictureGroups } from '../../src/draw/index.ts';
import { buildModel, loadSolids } from '../../src/model/index.ts';
import { planItem } from '../../src/plan/index.ts';
import { NoOrder } from '../../src/plan/no-order.ts';
import { FaultError, type Item } from '../../src/read/index.ts';
import { damaged } from './damage.ts';
import { negativeLength, oddNumber } from './figures.ts';
import { oneOf, randomOf } from './random.ts';
import { damagedItems, type ItemSubject } from './subjects.ts';

export interface WorkFigures {
  /** Items that were let through and are no longer what they were. */
  readonly tried: number;
  /** Of these, those that a check refuses; worked all the same, as `--despite-findings` would. */
  readonly failing: number;
  /** Those that are told to be larger than all there is to cut them from, to have no order, or a wish that cannot be. */
  readonly refused: number;
  readonly drawn: number;
  readonly faults: readonly string[];
}

type Worked = { readonly failing: boolean; readonly how: 'drawn' | 'refused' | 'escaped'; readonly why: string };

/**
 * Damages items at random, and makes of those that are let through all that a booklet is printed from: order, cuts, the
 * record and every picture. It is made, with figures that can be, or refused with a reason. The same seed gives the same items.
 */
export async function workCampaign(count: number, seed: number, tell: (line: string) => void = () => undefined): Promise<WorkFigures> {
  const random = randomOf(seed);
  const subjects = damagedItems();
  const known = new Map(subjects.map((subject) => [subject, modelText(subject.item(subject.text))]));
  const all: Worked[] = [];
  for (let turn = 0; all.length < count; turn++) {
    const subject = subjects[turn % subjects.length] ?? oneOf(random, subjects);
    const text = damaged(random, subject.text);
    const item = accepted(subject, text);
    if (item === null || modelText(item) === known.get(subject)) continue;
    const worked = await workedOut(item);
    all.push(worked);
    if (worked.how === 'escaped') tell(`turn ${turn}, ${subject.path}${worked.failing ? ', which fails a check' : ''}: ${worked.why}`);
    if (all.length % 20 === 0) tell(`${all.length} worked out`);
  }
  const of = (is: (one: Worked) => boolean): number => all.filter(is).length;
  return {
    tried: count, failing: of(({ failing }) => failing), refused: of(({ how }) => how === 'refused'), drawn: of(({ how }) => how === 'drawn'),
    faults: [...new Set(all.filter(({ how }) => how === 'escaped').map(({ why }) => why))],
  };
}

const lastSize = ({ sizes }: Item): string => sizes.at(-1)?.name ?? '';
const modelText = (item: Item): string => JSON.stringify(buildModel(item, lastSize(item)));

function accepted(subject: ItemSubject, text: string): Item | null {
  try {
    const item = subject.item(text);
    buildModel(item, lastSize(item));
    return item;
  } catch (error) {
    if (error instanceof FaultError) return null;
    throw error;
  }
}

async function workedOut(item: Item): Promise<Worked> {
  const size = lastSize(item);
  const failing = checkedSize(item, size).report.findings.some(({ verdict }) => verdict === 'fail');
  try {
    const { model, report } = drawableSize(item, size);
    const solids = await loadSolids();
    const plan = planItem(model, item.order, solids, report.advice.wall);
    const cuts = await planTubes(model);
    const groups = pictureGroups({ model, plan, cuts, solids }, ['page'], cachedDrawer());
    const pictures = Array.from({ length: groups.count }, (_, index) => groups.draw(index).page).flat();
    const record = buildRecord({ item, model, report, plan, cuts });
    const odd = oddNumber({ plan, cuts, record }, '') ?? negativeLength(record) ?? oddPicture(pictures);
    return { failing, how: odd === null ? 'drawn' : 'escaped', why: odd ?? '' };
  } catch (error) {
    if (error instanceof FaultError || error instanceof NoOrder || error instanceof FailedCheck) return { failing, how: 'refused', why: error.message };
    return { failing, how: 'escaped', why: error instanceof Error ? `${error.name}: ${error.message.slice(0, 200)} ${/\/(src\/[^\s)]+)/.exec(error.stack ?? '')?.[1] ?? ''}` : String(error) };
  }
}

/** The first picture that holds what is no number. */
function oddPicture(pictures: readonly { readonly id: string; readonly svg: string }[]): string | null {
  const odd = pictures.find(({ svg }) => /NaN|Infinity|undefined/.test(svg));
  return odd === undefined ? null : `the picture ${odd.id} holds no numbers`;
}
