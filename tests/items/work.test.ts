import { beforeAll, describe, expect, it } from 'vitest';
import { chained, FLAT, liftsOff, moved, WRAPPED, type Connection, type Folding, type Model, type Part, type Placed, type Solids, type Vec3 } from '../../src/model/index.ts';
import { planItem, WORK, type Plan, type Step } from '../../src/plan/index.ts';
import { closeUpScene, stepScene } from '../../src/scene/index.ts';
import { workSizes } from '../support/chosen.ts';
import { modelOf, renamed } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { planOnce } from '../support/plans.ts';
import { partOf } from '../support/rack.ts';

/** Shared volume under this is rounding, mm³. */
const TOUCH = 1;

const newIds = (step: Step): readonly string[] => step.newParts.flatMap((group) => group.ids);
const slidingIds = (step: Step): readonly string[] => step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));

describe.each(workSizes)('the work on the $name', ({ item, size }) => {
  const model = modelOf(item, size);
  let solids: Solids;
  let plan: Plan;
  beforeAll(async () => {
    solids = await sharedSolids();
    plan = planOnce(model, item.order);
  });

  it('is the same when asked again', () => {
    expect(planItem(modelOf(item, size), item.order, solids)).toEqual(plan);
  });

  it('is the same for an item of another name', () => {
    expect(planItem(modelOf(renamed(item.name), size), item.order, solids)).toEqual(plan);
  });

  it('leaves the way free through all that the step itself says is there, drawn off by little or much', () => {
    for (const step of plan.steps) expect([step.key, metOnTheWay(model, step, plan.steps, solids)]).toEqual([step.key, []]);
  });

  it('is numbered from 1 without a gap, each step with a key of its own, and keeps every reason it gives', () => {
    expect(plan.steps.map((step) => step.number)).toEqual(plan.steps.map((_, index) => index + 1));
    const number = new Map(plan.steps.map((step) => [step.key, step.number]));
    expect(number.size).toBe(plan.steps.length);
    expect(plan.reasons.length).toBeGreaterThan(40);
    for (const { first, then, rule } of plan.reasons) {
      expect([first, then, rule, (number.get(first) ?? NaN) < (number.get(then) ?? NaN)]).toEqual([first, then, rule, true]);
    }
  });

  it('brings every part once, or makes it as one of a batch of sub-assemblies alike', () => {
    const brought = plan.steps.flatMap(newIds);
    expect(new Set(brought).size).toBe(brought.length);
    const made = (kind: string): number => plan.steps.reduce((sum, step) => sum + step.times * newIds(step).filter((id) => partOf(model, id).kind === kind).length, 0);
    for (const kind of new Set(model.parts.map((part) => part.kind))) expect([kind, made(kind)]).toEqual([kind, model.parts.filter((part) => part.kind === kind).length]);
  });

  it('ends with every part there', () => {
    const last = plan.steps.at(-1);
    expect([...new Set([...(last?.present ?? []), ...(last === undefined ? [] : [...newIds(last), ...slidingIds(last)])])].sort()).toEqual(model.parts.map((part) => part.id).sort());
  });

  it('tells of every step its tools, one or two people and what to look at, and cautions with knife, saw and drill; it moves something, or is work on the bench or with drill or punch', () => {
    for (const step of plan.steps) {
      expect([step.key, step.tools.length > 0, [1, 2].includes(step.people)]).toEqual([step.key, true, true]);
      // Turned work has nothing to look at, but that it is not lifted by what comes off.
      const ofTurn = liftsOff(model).length > 0 ? 'handle-pushed' : 'none';
      expect([step.key, step.check?.name ?? 'none']).toEqual([step.key, step.action === 'turn-item' ? ofTurn : expect.stringMatching(/^(?!none$)[a-z-]+$/)]);
      // A plate has fewer holes to drill than the posts; tabs are punched after wrapping.
      const isLess = (step.action === 'drill' && step.detail.on === 'plate') || step.action === 'punch-holes';
      const minutes = WORK[step.action].minutes * (isLess ? 0.5 : 1);
      // Of several alike the first is measured, the others are traced from it.
      expect([step.key, step.minutes]).toEqual([step.key, minutes * (1 + (step.times - 1) * (WORK[step.action].traced ?? 1))]);
      expect([step.key, step.motions.length > 0 || step.standing.name === 'bench' || step.tools.includes('drill') || step.tools.includes('punch')]).toEqual([step.key, true]);
      if (step.tools.includes('knife')) expect([step.key, step.cautions]).toEqual([step.key, expect.arrayContaining(['sharp', 'gloves'])]);
      if (step.tools.includes('saw') || step.tools.includes('drill')) expect([step.key, step.cautions]).toEqual([step.key, expect.arrayContaining(['dust', 'eyes'])]);
    }
  });

  it('brings at most four kinds of part in a step, and the parts of a kind as a list without gaps', () => {
    for (const step of plan.steps) {
      expect([step.key, step.newParts.length <= 4]).toEqual([step.key, true]);
      for (const { kind, ids } of step.newParts) {
        expect([step.key, ids.length > 0]).toEqual([step.key, true]);
        expect([...new Set(ids.map((id) => partOf(model, id).kind))]).toEqual([kind]);
      }
    }
  });

  it('can be shown: a scene of every step but those on the bench, every new part new in it', () => {
    for (const step of plan.steps) {
      const scene = stepScene(model, step, solids);
      expect([step.key, scene !== null]).toEqual([step.key, step.standing.name !== 'bench']);
      if (scene === null) continue;
      expect([step.key, new Set(scene.bodies.map((body) => body.id)).size]).toEqual([step.key, scene.bodies.length]);
      for (const id of newIds(step)) expect([step.key, id, scene.bodies.some((body) => body.partId === id && body.look === 'new')]).toEqual([step.key, id, true]);
      expect([step.key, scene.bodies.every(({ pose, mesh }) => pose.every(Number.isFinite) && mesh.triangles.length > 0)]).toEqual([step.key, true]);
    }
  });

  it('has a close-up of every drilling and of every pin through post or plate, and of nothing else', () => {
    for (const step of plan.steps) {
      const shown = closeUpScene(model, step, solids) !== null;
      expect([step.key, shown]).toEqual([step.key, ['drill', 'pin-posts', 'pin-panel'].includes(step.action)]);
    }
  });

  it('shows no hole in post, joint or tube before it is drilled, and the hole ever after', () => {
    const drilledIn = drillingSteps(model, plan.steps);
    for (const step of plan.steps) {
      for (const body of stepScene(model, step, solids)?.bodies ?? []) {
        const id = body.id.replace('#after', '');
        const part = model.parts.find((each) => each.id === id);
        if (part === undefined || !drilledIn.has(id)) continue;
        const through = pinsOf(model).filter(({ holds }) => holds.includes(id)).map(({ pin }) => pin);
        const bored = through.filter((pin) => plan.steps.some((other) => other.number < step.number && other.drillsFor.includes(pin))).length;
        if (part.shape.form === 'tube') expect([step.key, body.id, body.mesh === solids.mesh(boredTube(part.shape, bored, body.mesh, solids))]).toEqual([step.key, body.id, true]);
        else expect([step.key, body.id, body.mesh === solids.mesh(bored > 0 ? part.shape : undrilled(part))]).toEqual([step.key, body.id, true]);
      }
    }
  });

  it('drills every part that a joint pin goes through, posts with their joints, tubes with their plates, once', () => {
    const drilledIn = drillingSteps(model, plan.steps);
    const pinned = pinsOf(model).flatMap(({ holds }) => holds.filter((id) => undrilled(partOf(model, id)) !== partOf(model, id).shape));
    expect([...drilledIn.keys()].sort()).toEqual([...new Set(pinned)].sort());
    const pins = plan.steps.flatMap((step) => step.drillsFor);
    expect([...pins].sort()).toEqual(plan.steps.flatMap(newIds).filter((id) => ['joint-pin', 'panel-pin'].includes(partOf(model, id).kind)).sort());
  });

  it('folds a panel from flat, side by side as they are wrapped, and never back', () => {
    const done = new Set<string>();
    for (const step of plan.steps) {
      for (const motion of step.motions) if (motion.kind === 'fold') done.add(`${motion.panel} ${motion.flap}`);
      for (const { panel, flap } of step.folded) if (newPanels(plan.steps).has(panel)) expect([step.key, panel, flap, done.has(`${panel} ${flap}`)]).toEqual([step.key, panel, flap, true]);
    }
    const flapsOf = (id: string): number => {
      const { shape } = partOf(model, id);
      return shape.form === 'folded' ? shape.pattern.flaps.reduce((sum, { lugs, bends, order }) => sum + lugs.length + Math.min(1, bends.length) * Math.min(1, order.length), 0) : 4;
    };
    expect(done.size).toBe([...newPanels(plan.steps)].reduce((sum, id) => sum + flapsOf(id), 0));
  });
});

/** Panels that are wrapped in pictures; those alike are made in the same steps. */
const newPanels = (steps: readonly Step[]): ReadonlySet<string> =>
  new Set(steps.flatMap(({ motions }) => motions.flatMap((motion) => (motion.kind === 'fold' ? [motion.panel] : []))));

const pinsOf = ({ connections }: Model): readonly Extract<Connection, { is: 'pin' }>[] => connections.flatMap((each) => (each.is === 'pin' ? [each] : []));

/** The drill step of every part that one drills, worked out from what the drilled pins hold together. */
function drillingSteps(model: Model, steps: readonly Step[]): ReadonlyMap<string, number> {
  const drilled = steps.filter((step) => step.action === 'drill').flatMap((step) => pinsOf(model)
    .filter(({ pin }) => step.drillsFor.includes(pin))
    .flatMap(({ holds }) => holds.filter((id) => undrilled(partOf(model, id)) !== partOf(model, id).shape).map((id) => [id, step.number] as const)));
  // What is drilled twice has its first holes from the first time on.
  return new Map(drilled.toReversed());
}

/** The tube with so many of its holes that the mesh is of; as it is finished where it is of none. */
function boredTube(shape: Extract<Part['shape'], { form: 'tube' }>, count: number, mesh: ReturnType<Solids['mesh']>, solids: Solids): Part['shape'] {
  const choices = Array.from({ length: 2 ** shape.holes.length }, (_, bits) => shape.holes.filter((_hole, at) => (bits & (2 ** at)) !== 0));
  const holes = choices.find((chosen) => chosen.length === count && solids.mesh({ ...shape, holes: chosen }) === mesh);
  return { ...shape, holes: holes ?? shape.holes };
}

/** The shape before drilling; the same object for what is not drilled on the way. Plates are punched on the bench. */
function undrilled({ shape }: Part): Part['shape'] {
  switch (shape.form) {
    case 'tube': return { ...shape, holes: [] };
    case 'joint': return { ...shape, drilled: null };
    case 'ported-joint': return { ...shape, drilled: [] };
    default: return shape;
  }
}

/** A clip gives way as it is pressed onto its tube. */
const clipsOn = (closes: readonly Connection[], id: string): boolean => closes.some((each) => (each.is === 'bracket' && each.bar === id) || (each.is === 'hinge' && each.leaves.includes(id)));

/** Places on a slide that the planner's own tries do not hang on: how far back from home, mm. */
const PLACES_BACK = [0, 7, 33, 61];

/** How far a panel told by its pattern is folded when a step begins: as it is done, what the step folds back where that began. */
const foldingOf = ({ folded, motions }: Step, id: string): Readonly<Record<string, number>> => Object.fromEntries(folded.filter(({ panel }) => panel === id).map(({ flap, stage }) => {
  const fold = motions.find((motion) => motion.kind === 'fold' && motion.panel === id && motion.flap === flap);
  return [flap, fold?.kind === 'fold' ? fold.from : stage];
}));

/** Parts that a step's slides run into among those the step says are there. Holes count as drilled, panels as the step has them. */
function metOnTheWay(model: Model, step: Step, steps: readonly Step[], solids: Solids): readonly string[] {
  const folding: Folding = step.run === null ? WRAPPED : step.folded.reduce((all, { flap }) => ({ ...all, [flap]: 1 }), FLAT);
  const placedAt = (id: string): Placed => {
    const { shape, pose } = partOf(model, id);
    if (shape.form === 'folded') return { shape: { ...shape, folding: foldingOf(step, id) }, pose };
    return { shape: shape.form === 'panel' ? { ...shape, folding } : shape, pose };
  };
  const moving = slidingIds(step);
  // The far end of a frame lies at hand until it is closed.
  const aside = steps.filter((other) => other.run === step.run && other.action === 'close-frame' && other.number > step.number).flatMap(slidingIds);
  const there = step.present.filter((id) => !moving.includes(id) && !aside.includes(id)).map((id) => ({ id, ...placedAt(id) }));
  return [...new Set(step.motions.flatMap((motion) => (motion.kind !== 'slide' ? [] : motion.parts.flatMap((id) => PLACES_BACK.flatMap((back) => {
    const share = Math.min(1, back / Math.hypot(...motion.by));
    const off = motion.by.map((value) => -value * share) as unknown as Vec3;
    const { shape, pose } = placedAt(id);
    const mover = { shape, pose: chained(moved(off), pose) };
    return there.filter((other) => !clipsOn(motion.closes, other.id) && solids.overlap(mover, other) > TOUCH).map((other) => `${id} meets ${other.id} ${back} mm from home`);
  })))))];
}
