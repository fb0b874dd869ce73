import type { Model, Part, Side } from '../model/index.ts';
import { frameJobs } from './frame-jobs.ts';
import { idsOf, makeJob, type Job } from './jobs.ts';
import type { Action, Motion } from './types.ts';

/** How far the frame is held over the panel before it is laid down, and how far a pin is held off, mm. */
const FRAME_LIFT = 260;
const PIN_LIFT = 90;

/** Everything that is done to one sub-assembly of a run, from the raw parts to a deck or frame ready to use, in no order. */
export function runJobs(model: Model, run: string): readonly Job[] {
  const group = model.groups.find((candidate) => candidate.piece === run);
  if (group === undefined) return [];
  const parts = model.parts.filter((part) => part.group === group.name);
  if (group.kind === 'frame') return frameJobs(parts, run, run);
  const owner = isFirstDeck(model, run) ? null : run;
  const [panel = ''] = idsOf(parts, 'panel');
  return [...panelJobs(run, owner), ...frameJobs(parts, run, owner), ...wrapJobs(model, parts, panel, run, owner)];
}

/** The keys of the first deck's steps are plain; those of further deck pieces carry the piece's name. */
const isFirstDeck = (model: Model, run: string): boolean =>
  model.groups.find((group) => group.kind === 'deck')?.piece === run;

/** The panel on the bench: marked, punched, cut, creased. */
function panelJobs(run: string, owner: string | null): Job[] {
  const onBench: readonly Action[] = [
    'cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches', 'crease', 'half-cut',
  ];
  return onBench.map((action) => makeJob(action, run, owner, {}));
}

/** Frame onto panel, then each side wrapped and pinned, then the deck turned the way it is used. */
function wrapJobs(model: Model, parts: readonly Part[], panel: string, run: string, owner: string | null): Job[] {
  const frame = idsOf(parts, 'joint', 'long-tube', 'short-tube');
  return [
    makeJob('lay-frame', run, owner, {
      standing: 'deck-building', places: [panel], needs: frame, motions: [{ kind: 'slide', parts: frame, by: [0, 0, -FRAME_LIFT] }],
    }),
    ...model.pattern.flaps.flatMap(({ side }) => sideJobs(parts, panel, side, run, owner)),
    makeJob('turn-deck', run, owner, {
      standing: 'deck-building', motions: [{ kind: 'turn', axis: [1, 0, 0], angle: Math.PI }], needs: idsOf(parts, 'panel-pin'),
    }),
  ];
}

function sideJobs(parts: readonly Part[], panel: string, side: Side, run: string, owner: string | null): Job[] {
  const pins = idsOf(parts.filter(({ place }) => place.at === 'tab' && place.side === side), 'panel-pin');
  const down = (ids: readonly string[]): Motion[] => [{ kind: 'slide', parts: ids, by: [0, 0, -PIN_LIFT] }];
  const job = (action: Action, places: readonly string[], motions: readonly Motion[]): Job =>
    makeJob(action, run, owner, { detail: { on: 'side', side }, standing: 'deck-building', places, needs: [panel], motions });
  const [ends, middle] = [pins.slice(0, 2), pins.slice(2)];
  return [
    job('wrap-side', [], [{ kind: 'fold', panel, side }]),
    job('pin-ends', ends, down(ends)),
    ...(middle.length === 0 ? [] : [job('pin-middle', middle, down(middle))]),
  ];
}
