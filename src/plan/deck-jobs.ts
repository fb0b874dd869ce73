import type { Model, Part, Side } from '../model/index.ts';
import { ACTIONS, WORK, type AskedBy } from '../work/facts.ts';
import { frameJobs } from './frame-jobs.ts';
import { idsOf, makeJob, type Job } from './jobs.ts';

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

const askedByPanel = ACTIONS.filter((action) => WORK[action].askedBy?.feature === 'panel');

/** The panel on the bench: marked, punched, cut, creased. */
function panelJobs(run: string, owner: string | null): Job[] {
  return askedByPanel.map((action) => makeJob(action, run, owner, {}));
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

/** The work that a side of a panel asks for; of pins in its middle, only where it has some. */
function sideJobs(parts: readonly Part[], panel: string, side: Side, run: string, owner: string | null): Job[] {
  const pins = idsOf(parts.filter(({ place }) => place.at === 'tab' && place.side === side), 'panel-pin');
  return ACTIONS.flatMap((action): Job[] => {
    const { askedBy } = WORK[action];
    if (askedBy?.feature !== 'side') return [];
    const moves = movedOnSide(askedBy.moves, panel, side, pins);
    return moves === null ? [] : [makeJob(action, run, owner, { detail: { on: 'side', side }, standing: 'deck-building', needs: [panel], ...moves })];
  });
}

/** What moves on a side: its flap, or pins that come down into it; null where it has none of these. */
function movedOnSide(moves: Extract<AskedBy, { feature: 'side' }>['moves'], panel: string, side: Side, pins: readonly string[]): Pick<Job, 'places' | 'motions'> | null {
  switch (moves) {
    case 'flap': return { places: [], motions: [{ kind: 'fold', panel, flap: side, side }] };
    case 'end-pins': return pinned(pins.slice(0, 2));
    case 'middle-pins': return pins.length > 2 ? pinned(pins.slice(2)) : null;
    case 'nothing': return { places: [], motions: [] };
  }
}

const pinned = (ids: readonly string[]): Pick<Job, 'places' | 'motions'> =>
  ({ places: ids, motions: [{ kind: 'slide', parts: ids, by: [0, 0, -PIN_LIFT] }] });
