import type { Part } from '../model/index.ts';
import { idsOf, makeJob, type Job } from './jobs.ts';
import type { Motion } from './types.ts';

/** Travel beyond the socket's depth that takes a part clear off, mm. */
const CLEAR = 60;

/**
 * A frame of tubes in joints: short tubes get a joint at either end, long tubes are pushed between two such ends.
 * `label` goes before the detail of the keys, so that the frames of an item can be told apart.
 */
export function frameJobs(parts: readonly Part[], run: string, label: string): readonly Job[] {
  const tubes = (kind: 'long-tube' | 'short-tube'): readonly string[] => idsOf(parts, kind);
  const detail = (name: string): string => `${label}${name}`;
  if (tubes('short-tube').length === 0) return [railJob(parts, run, detail('rail'))];
  const ends = endsJob(parts, run, detail('short'));
  if (tubes('long-tube').length === 0) return [{ ...ends, places: idsOf(parts, 'short-tube', 'joint'), brings: null }];
  const [socket, length] = reachOf(parts);
  const [left, right] = [endOf(parts, 'left'), endOf(parts, 'right')];
  return [
    ends,
    makeJob('push-tubes', detail('long'), run, {
      standing: 'deck-building',
      places: tubes('long-tube'),
      needs: left,
      motions: [{ kind: 'slide', parts: tubes('long-tube'), by: [-length, 0, 0] }],
    }),
    makeJob('close-frame', label === '' ? null : label.replace(/-$/, ''), run, {
      standing: 'deck-building',
      places: right,
      brings: [],
      needs: tubes('long-tube'),
      motions: [{ kind: 'slide', parts: right, by: [-socket, 0, 0] }],
    }),
  ];
}

/** Everything at one end of a frame: its short tube, where it has one, and its joints. */
const endOf = (parts: readonly Part[], x: 'left' | 'right'): string[] =>
  parts.filter((part) => part.id.endsWith(`/short-tube-${x}`) || part.id.includes(`/joint-${x}-`)).map((part) => part.id);

/** Joints pushed onto the ends of the short tubes. The left end stays where it is; the right one is put on later. */
function endsJob(parts: readonly Part[], run: string, detail: string): Job {
  const [socket] = reachOf(parts);
  const onShort = (y: 'front' | 'back'): string[] => parts.filter((part) => {
    const x = /\/joint-(left|right)-/.exec(part.id)?.[1];
    return part.kind === 'joint' && part.id.endsWith(`-${y}`) && parts.some((other) => other.id.endsWith(`/short-tube-${x ?? ''}`));
  }).map((part) => part.id);
  return makeJob('push-tubes', detail, run, {
    standing: 'deck-building',
    places: endOf(parts, 'left'),
    brings: [...endOf(parts, 'left'), ...endOf(parts, 'right')],
    motions: slides([onShort('front'), [0, socket, 0]], [onShort('back'), [0, -socket, 0]]),
  });
}

/** A rail: a long tube with a joint at either end. */
function railJob(parts: readonly Part[], run: string, detail: string): Job {
  const [socket] = reachOf(parts);
  const joints = (x: string): string[] => parts.filter((part) => part.id.includes(`/joint-${x}-`)).map((part) => part.id);
  return makeJob('push-tubes', detail, run, {
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
