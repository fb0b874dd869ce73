import type { Model, Part, Side } from '../model/index.ts';
import { jobKey, type Job } from './jobs.ts';
import type { Action, Motion } from './types.ts';

/** How far the frame is held over the panel before it is laid down, and how far a pin is held off, mm. */
const FRAME_LIFT = 260;
const PIN_LIFT = 90;

type Rest = Partial<Pick<Job, 'side' | 'places' | 'brings' | 'needs' | 'motions' | 'standing'>>;

/** Everything that is done to one deck of a run, from the raw panel to the deck ready to use, in no order. */
export function deckJobs(model: Model, run: string): readonly Job[] {
  const group = model.groups.find((candidate) => candidate.piece === run);
  if (group === undefined) return [];
  const parts = model.parts.filter((part) => part.group === group.name);
  const panel = idsOf(parts, 'panel');
  const job = (action: Action, detail: string | null, rest: Rest): Job => ({
    key: jobKey(action, detail), action, side: null, run, places: [], brings: null, needs: [], motions: [], standing: 'deck-building', ...rest,
  });
  return [...panelJobs(job), ...frameJobs(parts, job), ...wrapJobs(model, parts, panel, job)];
}

type MakeJob = (action: Action, detail: string | null, rest: Rest) => Job;

const idsOf = (parts: readonly Part[], ...kinds: readonly Part['kind'][]): string[] =>
  parts.filter((part) => kinds.includes(part.kind)).map((part) => part.id);

/** The panel on the bench: marked, punched, cut, creased. */
function panelJobs(job: MakeJob): Job[] {
  const onBench: readonly Action[] = [
    'cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches', 'crease', 'half-cut',
  ];
  return onBench.map((action) => job(action, null, { standing: 'bench' }));
}

/** The frame: two ends of a short tube in two joints, then the long tubes between them. */
function frameJobs(parts: readonly Part[], job: MakeJob): Job[] {
  const end = (x: string): Part[] => parts.filter((part) =>
    part.id.endsWith(`/short-tube-${x}`) || part.id.includes(`/joint-${x}-`));
  const joints = (y: string): string[] => parts.filter((part) => part.kind === 'joint' && part.id.endsWith(`-${y}`)).map((part) => part.id);
  const longTubes = idsOf(parts, 'long-tube');
  const [socket, length] = tubeReach(parts);
  return [
    job('push-tubes', 'short', {
      places: end('left').map((part) => part.id),
      brings: [...end('left'), ...end('right')].map((part) => part.id),
      motions: [
        { kind: 'slide', parts: joints('front'), by: [0, socket, 0] },
        { kind: 'slide', parts: joints('back'), by: [0, -socket, 0] },
      ],
    }),
    job('push-tubes', 'long', {
      places: longTubes,
      needs: end('left').map((part) => part.id),
      motions: [{ kind: 'slide', parts: longTubes, by: [-length, 0, 0] }],
    }),
    job('close-frame', null, {
      places: end('right').map((part) => part.id),
      brings: [],
      needs: longTubes,
      motions: [{ kind: 'slide', parts: end('right').map((part) => part.id), by: [-socket, 0, 0] }],
    }),
  ];
}

/** Travel that takes a joint clear off a tube, and a long tube clear of the whole frame, mm. */
function tubeReach(parts: readonly Part[]): [number, number] {
  const joint = parts.find((part) => part.shape.form === 'joint')?.shape;
  const long = parts.find((part) => part.kind === 'long-tube')?.shape;
  const socket = joint?.form === 'joint' ? joint.joint.socketDepth + 60 : 0;
  return [socket, (long?.form === 'tube' ? long.length : 0) + 2 * socket];
}

/** Frame onto panel, then each side wrapped and pinned, then the deck turned the way it is used. */
function wrapJobs(model: Model, parts: readonly Part[], panel: readonly string[], job: MakeJob): Job[] {
  const frame = idsOf(parts, 'joint', 'long-tube', 'short-tube');
  const [panelId = ''] = panel;
  return [
    job('lay-frame', null, { places: panel, needs: frame, motions: [{ kind: 'slide', parts: frame, by: [0, 0, -FRAME_LIFT] }] }),
    ...model.pattern.flaps.flatMap(({ side }) => sideJobs(parts, panelId, side, job)),
    job('turn-deck', null, { standing: 'deck-building', motions: [{ kind: 'turn', axis: [1, 0, 0], angle: Math.PI }], needs: idsOf(parts, 'panel-pin') }),
  ];
}

function sideJobs(parts: readonly Part[], panel: string, side: Side, job: MakeJob): Job[] {
  const pins = idsOf(parts, 'panel-pin').filter((id) => id.includes(`/panel-pin-${side}-`));
  const down = (ids: readonly string[]): Motion[] => [{ kind: 'slide', parts: ids, by: [0, 0, -PIN_LIFT] }];
  const ends = pins.slice(0, 2);
  const middle = pins.slice(2);
  return [
    job('wrap-side', side, { side, needs: [panel], motions: [{ kind: 'fold', panel, side }] }),
    job('pin-ends', side, { side, places: ends, needs: [panel], motions: down(ends) }),
    ...(middle.length === 0 ? [] : [job('pin-middle', side, { side, places: middle, needs: [panel], motions: down(middle) })]),
  ];
}
