import type { Model, Part, Vec3 } from '../model/index.ts';
import { directionOf, jobKey, type Job } from './jobs.ts';
import type { Action, Motion } from './types.ts';

/** Travel that takes a post's pin or nut clear of its joint, and a deck clear of the posts, mm. */
const PIN_TRAVEL = 90;
const DECK_TRAVEL = 400;
const CABLE_TRAVEL = 60;

type Rest = Partial<Pick<Job, 'side' | 'places' | 'needs' | 'motions'>>;

/** Everything that is done to the item as a whole once its decks are made, in no order. */
export function itemJobs(model: Model): readonly Job[] {
  const decks = model.groups.flatMap((group) => group.partIds);
  const posts = model.parts.filter((part) => part.kind === 'post');
  const cut = job('cut-tubes', null, 'bench', {});
  if (posts.length === 0) return [cut];
  return [
    cut,
    job('mark-posts', null, 'bench', {}),
    job('stand-decks', null, 'on-back', { places: decks, motions: [{ kind: 'slide', parts: decks, by: [0, DECK_TRAVEL, 0] }] }),
    ...postJobs(model, 'front', 'on-back', decks),
    job('turn-item', null, 'on-back', { needs: idsAt(posts, 'front'), motions: [{ kind: 'turn', axis: [0, 0, 1], angle: Math.PI }] }),
    ...postJobs(model, 'back', 'on-front', decks),
    job('stand-up', null, 'on-front', { needs: posts.map((part) => part.id), motions: [{ kind: 'turn', axis: [1, 0, 0], angle: Math.PI / 2 }] }),
    ...model.bracedFaces.map((face) => braceJob(model, face, decks)),
  ];
}

function job(action: Action, detail: string | null, standing: Job['standing'], rest: Rest): Job {
  return { key: jobKey(action, detail), action, side: null, run: null, places: [], brings: null, needs: [], motions: [], standing, ...rest };
}

const idsAt = (parts: readonly Part[], y: 'front' | 'back'): string[] =>
  parts.filter((part) => /-(left|right)-(front|back)/.exec(part.id)?.[2] === y).map((part) => part.id);

/** The two posts of one side: pushed through the decks' joints, drilled with them, pinned. */
function postJobs(model: Model, y: 'front' | 'back', standing: Job['standing'], decks: readonly string[]): Job[] {
  const onSide = (kind: Part['kind']): Part[] => {
    const parts = model.parts.filter((part) => part.kind === kind);
    const ids = idsAt(parts, y);
    return parts.filter((part) => ids.includes(part.id));
  };
  const posts = onSide('post');
  const postIds = posts.map((part) => part.id);
  const fasteners = [...onSide('joint-pin'), ...onSide('wing-nut')];
  const length = posts[0]?.shape.form === 'tube' ? posts[0].shape.length : 0;
  return [
    job('push-posts', y, standing, { side: y, places: postIds, needs: decks, motions: [{ kind: 'slide', parts: postIds, by: [0, 0, -length - DECK_TRAVEL] }] }),
    job('drill', y, standing, { side: y, needs: postIds }),
    job('pin-posts', y, standing, {
      side: y,
      places: fasteners.map((part) => part.id),
      needs: postIds,
      motions: fasteners.map((part): Motion => ({ kind: 'slide', parts: [part.id], by: scaled(directionOf(part.pose, [0, 0, -1]), PIN_TRAVEL) })),
    }),
  ];
}

function braceJob(model: Model, face: Model['bracedFaces'][number], decks: readonly string[]): Job {
  const cables = model.parts.filter((part) => part.kind === 'cable' && part.id.startsWith(`cable-${face}-`));
  return job('brace', face, 'upright', {
    side: face,
    places: cables.map((part) => part.id),
    needs: decks,
    motions: cables.map((part): Motion => ({ kind: 'slide', parts: [part.id], by: scaled(directionOf(part.pose, [0, 0, -1]), CABLE_TRAVEL) })),
  });
}

const scaled = ([x, y, z]: Vec3, by: number): Vec3 => [x * by, y * by, z * by];
