import type { Model, Part, Side } from '../model/index.ts';
import { backwards, makeJob, type Job } from './jobs.ts';
import type { Motion } from './types.ts';

/** Travel that brings a plate from the middle of the item to its tubes, and its pins and nuts clear of it, mm. */
const PLATE_TRAVEL = 120;
const PIN_TRAVEL = 90;

/** Flat panels: each kind cut and punched, each one held to its tubes, drilled through and pinned. */
export function plateJobs(model: Model): readonly Job[] {
  const several = model.plates.length > 1;
  return [
    ...model.plates.map((plate, index) =>
      makeJob('cut-panel', several ? 'abcdefgh'[index] ?? null : null, null, { times: plate.partIds.length })),
    ...model.parts.filter((part) => part.kind === 'flat-panel').flatMap((plate) => fittingJobs(model, plate)),
  ];
}

function fittingJobs(model: Model, plate: Part): Job[] {
  const side = sideOf(plate.id);
  const joinings = model.joinings.filter(({ parts }) => parts.includes(plate.id));
  const tubes = [...new Set(joinings.flatMap(({ parts }) => parts.filter((id) => id.includes('-tube-'))))];
  const pins = joinings.map(({ by }) => by);
  const fasteners = model.parts.filter((part) => pins.includes(part.id) || joinings.some(({ parts }) => part.kind === 'wing-nut' && parts.includes(part.id)));
  const common = { standing: 'upright' as const, side };
  return [
    makeJob('hold-panel', plate.id, null, { ...common, places: [plate.id], needs: tubes, motions: [{ kind: 'slide', parts: [plate.id], by: backwards(plate, PLATE_TRAVEL) }] }),
    makeJob('drill', plate.id, null, { ...common, needs: [plate.id], drills: { pins, parts: tubes } }),
    makeJob('pin-panel', plate.id, null, {
      ...common, places: fasteners.map((part) => part.id), needs: [plate.id],
      motions: fasteners.map((part): Motion => ({ kind: 'slide', parts: [part.id], by: backwards(part, PIN_TRAVEL) })),
    }),
  ];
}

const sideOf = (id: string): Side => (/-(left|right|front|back)$/.exec(id)?.[1] ?? 'back') as Side;
