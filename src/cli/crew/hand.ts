import { planTubes } from '../../cut/index.ts';
import { pictureGroups, type Format, type PictureGroups } from '../../draw/index.ts';
import { loadSolids } from '../../model/index.ts';
import { planItem } from '../../plan/index.ts';
import type { Drawing, PictureSets, Work, Works } from './types.ts';

/** Does one job after another. */
export type Hand = <Kind extends Work>(work: Kind, given: Works[Kind]['given']) => Promise<Works[Kind]['made']>;

type Doing = { readonly [Kind in Work]: (given: Works[Kind]['given']) => Promise<Works[Kind]['made']> };

/** A hand keeps what it found out of the size it draws, and the languages it has read. */
export function newHand(): Hand {
  const doing: Doing = { plan: planned, draw: drawer(), guide: guideWriter() };
  return (work, given) => doing[work](given);
}

/** The solid kernel keeps every shape it built: one for the proof of each size, let go after it. */
async function planned({ model, order, wall }: Works['plan']['given']): Promise<Works['plan']['made']> {
  return { plan: planItem(model, order, await loadSolids(), wall), cuts: await planTubes(model) };
}

function drawer(): Doing['draw'] {
  let last: { readonly of: string; readonly groups: PictureGroups<Format> } | null = null;
  return async ({ from, to, ...drawing }) => {
    const groups = last?.of === drawing.of ? last.groups : await groupsOf(drawing);
    last = { of: drawing.of, groups };
    return Array.from({ length: to - from }, (_, index) => allSets(groups.draw(from + index)));
  };
}

/** A set that was not asked for is empty. */
const allSets = ({ page = [], small = [], thumb = [] }: Partial<PictureSets>): PictureSets => ({ page, small, thumb });

const groupsOf = async ({ model, plan, cuts, formats }: Drawing): Promise<PictureGroups<Format>> =>
  pictureGroups({ model, plan, cuts, solids: await loadSolids() }, formats);

/** What writes guides is loaded with the first of them: it brings all pages and words along. */
function guideWriter(): Doing['guide'] {
  let writer: Promise<Doing['guide']> | null = null;
  return async (given) => (await (writer ??= import('./guide-writer.ts').then(({ newGuideWriter }) => newGuideWriter())))(given);
}
