import type { Finisher } from '../../booklet/index.ts';
import { planTubes } from '../../cut/index.ts';
import { cachedDrawer, pictureGroups, type Format, type LineDrawer, type PictureGroups } from '../../draw/index.ts';
import { loadSolids, type Solids } from '../../model/index.ts';
import { planItem } from '../../plan/index.ts';
import { finishedScene, withEnds } from '../../scene/index.ts';
import { sizeName } from './size-name.ts';
import type { PictureSets, Work, Works } from './types.ts';

/** Does one job after another. */
export type Hand = <Kind extends Work>(work: Kind, given: Works[Kind]['given']) => Promise<Works[Kind]['made']>;

type GuideWriter = (given: Works['guide']['given'], solids: Solids) => Promise<Works['guide']['made']>;

type Doing = { readonly [Kind in Work]: (given: Works[Kind]['given']) => Promise<Works[Kind]['made']> };

/** A hand keeps what it found out of the size it draws, and the languages it has read. */
export function newHand(): Hand {
  const doing: Doing = { plan: planned, finish: finisher(), ...drawer() };
  return (work, given) => doing[work](given);
}

/** The solid kernel keeps every shape it built: one for the proof of each size, let go after it. */
const planned = async (given: Works['plan']['given']): Promise<Works['plan']['made']> => planWith(given, await loadSolids());

/** How a size is put together, fixed to no wall, and how its tubes are sawn. */
export async function planWith({ model, order }: Works['plan']['given'], solids: Solids): Promise<Works['plan']['made']> {
  return { plan: planItem(model, order, solids), cuts: await planTubes(model) };
}

/** What is kept of the size that is drawn. */
interface Bench {
  readonly of: string;
  readonly solids: Solids;
  readonly draw: LineDrawer;
  groups: PictureGroups<Format> | null;
}

function drawer(): Omit<Doing, 'plan' | 'finish'> {
  let last: Bench | null = null;
  const write = guideWriter();
  const benchOf = async (of: string): Promise<Bench> => {
    if (last?.of !== of) last = { of, solids: await loadSolids(), draw: cachedDrawer(), groups: null };
    return last;
  };
  return {
    ready: async ({ of, model }) => {
      const { solids, draw } = await benchOf(of);
      const { bodies, view } = withEnds(model, solids, finishedScene(model, solids));
      draw(bodies, view);
      return null;
    },
    draw: async ({ of, from, to, model, plan, cuts, formats }) => {
      const bench = await benchOf(of);
      const groups = bench.groups ??= pictureGroups({ model, plan, cuts, solids: bench.solids }, formats, bench.draw);
      return Array.from({ length: to - from }, (_, index) => allSets(groups.draw(from + index)));
    },
    // Most solids of the guide are those of the pictures; where another size is drawn meanwhile, that goes on with its own.
    guide: async (given) => write(given, last?.of === sizeName(given) ? last.solids : await loadSolids()),
  };
}

/** A set that was not asked for is empty. */
const allSets = ({ page = [], small = [], thumb = [] }: Partial<PictureSets>): PictureSets => ({ page, small, thumb });

/** What finishes pages is loaded with the first of them. */
function finisher(): Doing['finish'] {
  let finish: Promise<Finisher> | null = null;
  return async (given) => (await (finish ??= import('../../booklet/print/finisher.ts').then(({ newFinisher }) => newFinisher())))(given);
}

/** What writes guides is loaded with the first of them: it brings all pages and words along. */
function guideWriter(): GuideWriter {
  let writer: Promise<GuideWriter> | null = null;
  return async (given, solids) => (await (writer ??= import('./guide-writer.ts').then(({ newGuideWriter }) => newGuideWriter())))(given, solids);
}
