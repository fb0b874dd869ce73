import type { Part } from '../model/index.ts';
import { idsOf, makeJob, type Job } from './jobs.ts';
import type { Motion } from './types.ts';

/** Travel beyond the socket's depth that takes a part clear off, mm. */
const CLEAR = 60;

/** The left or the right end of a frame. */
type End = 'left' | 'right';

/**
 * A frame of tubes in joints: short tubes get a joint at either end, long tubes are pushed between two such ends.
 * `owner` goes into the keys, so that the frames of an item can be told apart.
 */
export function frameJobs(parts: readonly Part[], run: string, owner: string | null): readonly Job[] {
  const [short, long] = [idsOf(parts, 'short-tube'), idsOf(parts, 'long-tube')];
  if (short.length === 0) return [railJob(parts, run, owner)];
  const ends = endsJob(parts, run, owner);
  if (long.length === 0) return [{ ...ends, places: idsOf(parts, 'short-tube', 'joint'), brings: null }];
  const [socket, length] = reachOf(parts);
  const [left, right] = [endOf(parts, 'left'), endOf(parts, 'right')];
  return [
    ends,
    makeJob('push-tubes', run, owner, {
      detail: { on: 'tubes', tubes: 'long' },
      standing: 'deck-building',
      places: long,
      needs: left,
      motions: [{ kind: 'slide', parts: long, by: [-length, 0, 0] }],
    }),
    makeJob('close-frame', run, owner, {
      standing: 'deck-building',
      places: right,
      brings: [],
      needs: long,
      motions: [{ kind: 'slide', parts: right, by: [-socket, 0, 0] }],
    }),
  ];
}

const idsWhere = (parts: readonly Part[], wanted: (part: Part) => boolean): string[] => parts.filter(wanted).map((part) => part.id);

/** Whether a part stands at one end of its frame: the short tube there, or a joint. */
const isAt = ({ kind, place }: Part, end: End): boolean =>
  (kind === 'short-tube' && place.at === 'side' && place.side === end) || (kind === 'joint' && place.at === 'corner' && place.corner.x === end);

/** Everything at one end of a frame: its short tube, where it has one, and its joints. */
const endOf = (parts: readonly Part[], end: End): string[] => idsWhere(parts, (part) => isAt(part, end));

/** Joints pushed onto the ends of the short tubes. The left end stays where it is; the right one is put on later. */
function endsJob(parts: readonly Part[], run: string, owner: string | null): Job {
  const [socket] = reachOf(parts);
  const hasShort = (end: End): boolean => parts.some((part) => part.kind === 'short-tube' && isAt(part, end));
  const onShort = (y: 'front' | 'back'): string[] => idsWhere(parts, ({ kind, place }) =>
    kind === 'joint' && place.at === 'corner' && place.corner.y === y && hasShort(place.corner.x));
  return makeJob('push-tubes', run, owner, {
    detail: { on: 'tubes', tubes: 'short' },
    standing: 'deck-building',
    places: endOf(parts, 'left'),
    brings: [...endOf(parts, 'left'), ...endOf(parts, 'right')],
    motions: slides([onShort('front'), [0, socket, 0]], [onShort('back'), [0, -socket, 0]]),
  });
}

/** A rail: a long tube with a joint at either end. */
function railJob(parts: readonly Part[], run: string, owner: string | null): Job {
  const [socket] = reachOf(parts);
  const joints = (end: End): string[] => idsWhere(parts, (part) => part.kind === 'joint' && isAt(part, end));
  return makeJob('push-tubes', run, owner, {
    detail: { on: 'tubes', tubes: 'rail' },
    standing: 'deck-building',
    places: idsOf(parts, 'long-tube', 'joint'),
    motions: slides([joints('left'), [socket, 0, 0]], [joints('right'), [-socket, 0, 0]]),
  });
}

const slides = (...ways: readonly (readonly [readonly string[], readonly [number, number, number]])[]): Motion[] =>
  ways.filter(([ids]) => ids.length > 0).map(([ids, by]) => ({ kind: 'slide', parts: ids, by }));

/** Travel that takes a joint clear off a tube, and a long tube clear of the whole frame, mm. */
function reachOf(parts: readonly Part[]): readonly [number, number] {
  const joint = parts.find((part) => part.shape.form === 'joint')?.shape;
  const long = parts.find((part) => part.kind === 'long-tube')?.shape;
  const socket = joint?.form === 'joint' ? joint.joint.socketDepth + CLEAR : 0;
  return [socket, (long?.form === 'tube' ? long.length : 0) + 2 * socket];
}
