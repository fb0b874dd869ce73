import { cornersOf, placed, type Group, type Model, type Part } from '../model/index.ts';
import { plateJobs } from './plate-jobs.ts';
import { backwards, idsOf, makeJob, type Job } from './jobs.ts';
import type { Motion } from './types.ts';

/** Travel that takes a post's pin or nut clear of its joint, a deck clear of the posts, and a loop over its stud, mm. */
const PIN_TRAVEL = 90;
const DECK_TRAVEL = 400;
const CABLE_TRAVEL = 60;

/** Everything that is done to the item as a whole once its decks and frames are made, in no order. */
export function itemJobs(model: Model): readonly Job[] {
  const posts = model.parts.filter((part) => part.kind === 'post');
  const [onBoth, onBackOnly] = [groupParts(model, isOnFront), groupParts(model, (group) => !isOnFront(group))];
  return [
    makeJob('cut-tubes', null, null, {}),
    ...plateJobs(model),
    makeJob('mark-posts', null, null, {}),
    makeJob('stand-decks', null, null, { standing: 'on-back', places: onBoth, motions: [{ kind: 'slide', parts: onBoth, by: [0, DECK_TRAVEL, 0] }] }),
    ...postJobs(model, 'front', 'on-back', onBoth),
    makeJob('turn-item', null, null, { standing: 'on-back', needs: idsAt(posts, 'front'), motions: [{ kind: 'turn', axis: [0, 0, 1], angle: Math.PI }] }),
    ...(onBackOnly.length === 0 ? [] : [
      makeJob('set-rails', null, null, { standing: 'on-front', places: onBackOnly, needs: onBoth, motions: [{ kind: 'slide', parts: onBackOnly, by: [0, -DECK_TRAVEL, 0] }] }),
    ]),
    ...postJobs(model, 'back', 'on-front', [...onBoth, ...onBackOnly]),
    makeJob('stand-up', null, null, { standing: 'on-front', needs: posts.map((part) => part.id), motions: [{ kind: 'turn', axis: [1, 0, 0], angle: Math.PI / 2 }] }),
    ...model.bracedFaces.map((face) => braceJob(model, face, onBoth)),
  ];
}

/** Whether the front posts go through a group. */
const isOnFront = (group: Group): boolean => cornersOf(group.sides).some((corner) => corner.y === 'front');

const groupParts = (model: Model, wanted: (group: Group) => boolean): readonly string[] =>
  model.groups.filter(wanted).flatMap((group) => group.partIds);

const idsAt = (parts: readonly Part[], y: 'front' | 'back'): string[] => partsAt(parts, y).map((part) => part.id);

const partsAt = (parts: readonly Part[], y: 'front' | 'back'): Part[] =>
  parts.filter((part) => (placed(part.pose, [0, 0, 0])[1] < 0) === (y === 'front'));

/** The two posts of one side: pushed through the joints, drilled with them, pinned. */
function postJobs(model: Model, y: 'front' | 'back', standing: Job['standing'], through: readonly string[]): Job[] {
  const posts = partsAt(model.parts.filter((part) => part.kind === 'post'), y);
  const postIds = posts.map((part) => part.id);
  const joinings = model.joinings.filter(({ by, parts }) => by.startsWith('joint-pin-') && parts.some((id) => postIds.includes(id)));
  const pins = joinings.map(({ by }) => by);
  const joints = joinings.flatMap(({ parts }) => parts.filter((id) => id.includes('/joint-')));
  const fasteners = model.parts.filter((part) => pins.includes(part.id) || joinings.some(({ parts }) => part.kind === 'wing-nut' && parts.includes(part.id)));
  const length = Math.max(0, ...posts.map((part) => (part.shape.form === 'tube' ? part.shape.length : 0)));
  return [
    makeJob('push-posts', y, null, { standing, side: y, places: postIds, needs: through, motions: [{ kind: 'slide', parts: postIds, by: [0, 0, -length - DECK_TRAVEL] }] }),
    makeJob('drill', y, null, { standing, side: y, needs: postIds, drills: { pins, parts: [...postIds, ...joints] } }),
    makeJob('pin-posts', y, null, {
      standing, side: y, places: fasteners.map((part) => part.id), needs: postIds,
      motions: fasteners.map((part): Motion => ({ kind: 'slide', parts: [part.id], by: backwards(part, PIN_TRAVEL) })),
    }),
  ];
}

function braceJob(model: Model, face: Model['bracedFaces'][number], needs: readonly string[]): Job {
  const cables = model.parts.filter((part) => part.kind === 'cable' && part.id.startsWith(`cable-${face}-`));
  return makeJob('brace', face, null, {
    standing: 'upright', side: face, places: idsOf(cables, 'cable'), needs,
    motions: cables.map((part): Motion => ({ kind: 'slide', parts: [part.id], by: backwards(part, CABLE_TRAVEL) })),
  });
}
