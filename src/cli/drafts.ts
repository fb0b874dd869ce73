import { join } from 'node:path';
import type { Report } from '../check/index.ts';
import type { TubeCutPlan } from '../cut/index.ts';
import { inOnePiece, pictureGroupCount, type Format, type Picture } from '../draw/index.ts';
import type { Keep } from '../keep/index.ts';
import { keptLater } from '../keep/index.ts';
import type { Model } from '../model/index.ts';
import { fixedTo, type Plan } from '../plan/index.ts';
import type { Item } from '../read/index.ts';
import { sizeName, type Crew, type PictureSets, type Works } from './crew/index.ts';
import type { Part, Progress } from './progress.ts';
import { drawableSize, soundSize } from './sound.ts';
import { COST } from './costs.ts';

/** A size that is checked, before it is planned and drawn, and the folder its files go to. */
export interface Draft {
  readonly folder: string;
  readonly item: Item;
  readonly model: Model;
  readonly report: Report;
  /** Its share of the progress. */
  readonly part: Part;
}

/** How a size is put together, and how its tubes are sawn. */
export interface Planned {
  readonly plan: Plan;
  readonly cuts: TubeCutPlan;
}

/** A size of an item, and how it is put together. */
export interface PlannedSize extends Planned {
  readonly item: string;
  readonly size: string;
  readonly model: Model;
}

interface DraftOptions {
  readonly despiteFindings?: boolean;
  readonly out: string;
  /** Copies that will be printed of it. */
  readonly copies: number;
}

/** Pictures of a size before its steps are known: about so many for each part, and some for the item. */
const picturesGuessed = ({ parts }: Model): number => 26 + parts.length / 3;

/** The work that a size will be, before its steps are known, in units of the progress. */
export const expectedWork = (model: Model, copies: number): number => Math.round(COST.plan + picturesGuessed(model) + COST.guide + copies * COST.copy);

/** Throws when a check fails, unless it is to be printed all the same and can be. */
export function checkedDraft(item: Item, size: string, { despiteFindings, out, copies }: DraftOptions, told: Pick<Progress, 'part'>): Draft {
  const { model, report } = despiteFindings === true ? drawableSize(item, size) : soundSize(item, size, ', or print it stamped with --despite-findings');
  const part = told.part(`${item.name} ${size}`, expectedWork(model, copies));
  return { folder: join(out, item.name, size), item, model, report, part };
}

/** Plans sizes, each once however often it is asked for. */
export interface Planner {
  /** Throws when the order of work is refused. */
  readonly of: (draft: Draft, turn: number) => Promise<Planned>;
  /** Begins with a size that is not checked yet. What comes of it is told when it is asked for. */
  readonly begin: (size: Unchecked) => void;
}

/** What the order of a size's steps hangs on. */
type Unchecked = Pick<Draft, 'item' | 'model'>;

export function newPlanner(crew: Crew, keep: Keep): Planner {
  const begun: { readonly of: Unchecked; readonly plan: Promise<Planned> }[] = [];
  const unfixed = (size: Unchecked, turn: number): Promise<Planned> => {
    // An earlier revision of an item has another order under the same names.
    const known = begun.find(({ of }) => of.item === size.item && of.model.size === size.model.size);
    if (known !== undefined) return known.plan;
    const plan = keptUnfixed(keep, size, (given) => {
      const made = crew.run('plan', given, turn);
      crew.offer('ready', { of: sizeName(size), model: size.model });
      return made;
    });
    begun.push({ of: size, plan });
    return plan;
  };
  const planned = new Map<Draft, Promise<Planned>>();
  const newPlanned = async (draft: Draft, turn: number): Promise<Planned> => {
    const made = fixed(draft, await unfixed(draft, turn));
    draft.part.done('its order of work', COST.plan);
    return made;
  };
  return {
    of: (draft, turn) => {
      const found = planned.get(draft) ?? newPlanned(draft, turn);
      planned.set(draft, found);
      return found;
    },
    begin: (size) => { unfixed(size, 0).catch(() => undefined); },
  };
}

/** The plan that was kept, or a new one. */
export const keptPlan = async (keep: Keep, draft: Pick<Draft, 'item' | 'model' | 'report'>, plan: PlanUnfixed): Promise<Planned> =>
  fixed(draft, await keptUnfixed(keep, draft, plan));

type PlanUnfixed = (given: Works['plan']['given']) => Promise<Planned>;

/** As it is before its checks tell whether it is fixed to a wall: so it is kept, whatever they tell. */
const keptUnfixed = (keep: Keep, { item: { order }, model }: Unchecked, plan: PlanUnfixed): Promise<Planned> =>
  keptLater(keep, keep.key('plan', model, order), () => plan({ model, order }));

const fixed = ({ model, report: { advice: { wall } } }: Pick<Draft, 'model' | 'report'>, { plan, cuts }: Planned): Planned =>
  ({ plan: fixedTo(wall, model, plan), cuts });

/** Most groups of pictures that are drawn at once in one thread; fewer towards the end, so that no thread is still at many when the others have none left. */
const GROUPS_AT_ONCE = 4;
const SHARE_AT_ONCE = 1 / 8;

/** From which group to before which one they are drawn at once. */
function runsOf(count: number): readonly { readonly from: number; readonly to: number }[] {
  const runs: { readonly from: number; readonly to: number }[] = [];
  for (let from = 0; from < count;) {
    const to = from + Math.min(GROUPS_AT_ONCE, Math.ceil((count - from) * SHARE_AT_ONCE));
    runs.push({ from, to });
    from = to;
  }
  return runs;
}

/** Draws what the wanted formats need, several pictures at once; one that is not wanted stays empty, but for A4 and Letter's: the size's mark is made from them. */
export async function drawnSets({ item, model }: Pick<Draft, 'item' | 'model'>, { plan, cuts }: Planned, wanted: readonly Format[], by: Drawing): Promise<PictureSets> {
  const formats = [...new Set<Format>(['page', ...wanted])];
  return keptLater(by.keep, by.keep.key('pictures', model, plan, cuts, formats), async () => {
    by.begun([]);
    const sets: (readonly PictureSets[])[] = [];
    const groups = await Promise.all(runsOf(pictureGroupCount(model, plan)).map(async (run, index) => {
      const given = { of: sizeName({ item, model }), model, plan, cuts, formats, ...run };
      const made = await by.crew.run('draw', given, by.turn);
      by.drawn(made.flatMap(({ page }) => page.map(({ id }) => id)));
      sets[index] = made;
      for (const format of new Set(wanted)) by.begun(inOrder(sets).flatMap((set) => set[format]));
      return made;
    }));
    return inOnePiece(['page', 'small', 'thumb'], groups.flat());
  });
}

/** The sets that are there before the first that is missing. */
function inOrder(sets: readonly (readonly PictureSets[] | undefined)[]): readonly PictureSets[] {
  const missing = Array.from(sets).indexOf(undefined);
  return sets.slice(0, missing < 0 ? sets.length : missing).flatMap((set) => set ?? []);
}

interface Drawing {
  readonly crew: Crew;
  readonly keep: Keep;
  readonly turn: number;
  /** Nothing was kept: it is drawn now. Told again and again, with the first pictures of a wanted format, until the last of them. */
  readonly begun: (first: readonly Picture[]) => void;
  readonly drawn: (ids: readonly string[]) => void;
}
