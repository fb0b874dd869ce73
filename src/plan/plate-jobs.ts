import type { JoiningBy, Model, Part } from '../model/index.ts';
import { backwards, makeJob, type Job } from './jobs.ts';
import type { Motion } from './types.ts';

/** Travel that brings a plate from the middle of the item to its tubes, and its pins and nuts clear of it, mm. */
const PLATE_TRAVEL = 120;
const PIN_TRAVEL = 90;

const LETTERS = 'abcdefgh';

/** Flat panels: each kind cut and punched, each one held to its tubes, drilled through and pinned. */
export function plateJobs(model: Model): readonly Job[] {
  const several = model.plates.length > 1;
  return [
    ...model.plates.map((plate, index) =>
      makeJob('cut-panel', null, null, { detail: { on: 'plates', index, letter: several ? LETTERS[index] ?? null : null }, times: plate.partIds.length })),
    ...model.parts.filter((part) => part.kind === 'flat-panel').flatMap((plate) => fittingJobs(model, plate)),
  ];
}

function fittingJobs(model: Model, plate: Part): Job[] {
  const joinings = model.joinings.filter((each): each is JoiningBy<'plate-pin'> => each.by === 'plate-pin' && each.plate === plate.id);
  const tubes = [...new Set(joinings.map(({ tube }) => tube))];
  const pins = joinings.map(({ pin }) => pin);
  const fasteners = model.parts.filter(({ id }) => joinings.some(({ pin, nut }) => pin === id || nut === id));
  const side = plate.place.at === 'side' ? plate.place.side : 'back';
  const common = { standing: 'upright', detail: { on: 'plate', plate: plate.id, side } } as const;
  return [
    makeJob('hold-panel', null, null, { ...common, places: [plate.id], needs: tubes, motions: [{ kind: 'slide', parts: [plate.id], by: backwards(plate, PLATE_TRAVEL) }] }),
    makeJob('drill', null, null, { ...common, needs: [plate.id], drills: { pins, parts: tubes } }),
    makeJob('pin-panel', null, null, {
      ...common, places: fasteners.map((part) => part.id), needs: [plate.id],
      motions: fasteners.map((part): Motion => ({ kind: 'slide', parts: [part.id], by: backwards(part, PIN_TRAVEL) })),
    }),
  ];
}
