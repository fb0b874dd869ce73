import { FLAT, placed, type Folding, type Part, type Pose, type Side, type Vec3 } from '../model/index.ts';
import type { Action, PlannedWork, StepDetail } from '../work/facts.ts';
import type { Motion } from './types.ts';

/** A piece of work before it has its place in the order. */
export interface Job extends PlannedWork {
  /** What wishes and reasons name it by; what it works on is told by `detail`. */
  readonly key: string;
  readonly action: Action;
  /** Parts that are in their place after it and were not before. */
  readonly places: readonly string[];
  /** Parts that come to hand with it, when these are not just the ones it puts in place. */
  readonly brings: readonly string[] | null;
  /** Parts that must be in place before it. */
  readonly needs: readonly string[];
  readonly motions: readonly Motion[];
  /** Pins it drills the holes for, and the parts that get these holes. */
  readonly drills: { readonly pins: readonly string[]; readonly parts: readonly string[] } | null;
  /** How often it is done when it belongs to no run: plates cut alike. */
  readonly times: number;
}

/** Work on the thing as a whole. */
const WHOLE: StepDetail = { on: 'whole' };

/** The side that work is done on, if it is one side's. */
export const sideOf = (detail: StepDetail): Side | null => ('side' in detail ? detail.side : null);

/** The name of a job: its action, then whose it is where several are alike, then what it works on. */
function jobKey(action: Action, owner: string | null, detail: StepDetail): string {
  const behind = [owner, told(detail)].filter((each) => each !== null).join('-');
  return behind === '' ? action : `${action}:${behind}`;
}

function told(detail: StepDetail): string | null {
  switch (detail.on) {
    case 'whole': return null;
    case 'tubes': return detail.tubes;
    case 'pattern': return null;
    case 'plate': return detail.plate;
    case 'plates': return detail.letter;
    case 'side': return detail.side;
    case 'wall': return detail.wall;
  }
}

type Rest = Partial<Omit<Job, 'key' | 'action' | 'run'>>;

/** A job with what is told of it; the rest is empty. `owner` names the deck or frame where an item has several. */
export const makeJob = (action: Action, run: string | null, owner: string | null, rest: Rest): Job => ({
  key: jobKey(action, owner, rest.detail ?? WHOLE), action, detail: WHOLE, run,
  places: [], brings: null, needs: [], motions: [], drills: null, times: 1, standing: 'bench', ...rest,
});

/** Room the parts of one run or of the item are proven in: their shapes and poses, and each panel's fold so far. */
export interface Stage {
  readonly parts: ReadonlyMap<string, Part>;
  /** The panels as they come: flat to the deck's run, wrapped to the item. */
  readonly folding: Folding;
}

export const stageOf = (parts: readonly Part[], folding: Folding, seenFrom: (pose: Pose) => Pose): Stage =>
  ({ folding, parts: new Map(parts.map((part) => [part.id, { ...part, pose: seenFrom(part.pose) }])) });

/** A folding with one side at a stage and the other sides flat. */
export const foldedOnly = (side: Side, stage: number): Folding => ({ ...FLAT, [side]: stage });

/** A direction of a part's own coordinates, in those of the stage. */
export function directionOf(pose: Pose, own: Vec3): Vec3 {
  const [ox, oy, oz] = placed(pose, [0, 0, 0]);
  const [x, y, z] = placed(pose, own);
  return [x - ox, y - oy, z - oz];
}

/** The way a pin, a nut or a loop goes in: against its own z. */
export function backwards(part: Part, distance: number): Vec3 {
  const [x, y, z] = directionOf(part.pose, [0, 0, -1]);
  return [x * distance, y * distance, z * distance];
}

export const idsOf = (parts: readonly Part[], ...kinds: readonly Part['kind'][]): string[] =>
  parts.filter((part) => kinds.includes(part.kind)).map((part) => part.id);
