import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../src/draw/index.ts';
import { lengthOf, minus, placed, type Model, type Vec3 } from '../../src/model/index.ts';
import { PEGS_CLEAR, type Plan, type Step } from '../../src/plan/index.ts';
import { homeScene, proppedScenes, roomUnder, sleeveEnds, stepScene, type Scene } from '../../src/scene/index.ts';
import { boxRound } from '../../src/scene/kit/extent.ts';
import { stageHand } from '../../src/scene/kit/stage.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

const planned = (item: string, size: string): { readonly model: Model; readonly plan: Plan } => {
  const found = everySize.find((each) => each.item.name === item && each.size === size);
  if (found === undefined) throw new Error(`no ${item} ${size}`);
  const model = modelOf(found.item, size);
  return { model, plan: planOnce(model, found.item.order) };
};
const stepsOf = (plan: Plan, action: Step['action']): readonly Step[] => plan.steps.filter((each) => each.action === action);
const lengths = (scene: Scene | null): readonly number[] => scene?.marks.flatMap((mark) => (mark.mark === 'length' && mark.told.as === 'length' ? [mark.told.mm] : [])) ?? [];
const isLevel = (scene: Scene | null): boolean => scene?.view.towardsEye[2] === 0;
/** How far bodies reach towards the eye, mm. */
const nearest = ({ bodies, view: { towardsEye } }: Scene): number => {
  const { min, max } = boxRound(bodies);
  return [0, 1, 2].reduce((sum, axis) => sum + (towardsEye[axis as 0] > 0 ? max[axis as 0] : min[axis as 0]) * towardsEye[axis as 0], 0);
};

describe('work that has come to its marks', () => {
  const { model, plan } = planned('bed', 'toddler');

  it('stands as in the model, seen level, each mark told from the foot', () => {
    for (const action of ['slide-on', 'push-posts'] as const) {
      for (const step of stepsOf(plan, action)) {
        const scene = homeScene(model, step, solids);
        expect([step.key, isLevel(scene)]).toEqual([step.key, true]);
        const hand = stageHand(model, step, solids);
        for (const { id, partId, kind, pose } of scene?.bodies ?? []) if (kind !== 'tool' && partId !== null) expect([id, pose]).toEqual([id, hand.pose(id)]);
        const sleeves = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).flatMap((each) => (each.is === 'sleeve' ? [each] : []));
        const told = new Set(sleeves.map(({ bar }) => sleeveEnds(model, bar, sleeves.filter((each) => each.bar === bar).map(({ joint }) => joint)).join()));
        expect(told).toContain(lengths(scene).join());
      }
    }
  });

  it('is told beside upright bars by its scene alone', () => {
    const upright: Step = { ...(stepsOf(plan, 'slide-on')[0] as Step), standing: { name: 'upright', pose: [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1] } };
    expect(homeScene(model, upright, solids)).toBeNull();
  });
});

describe('a panel on its bars', () => {
  const { model, plan } = planned('bed', 'toddler');

  it('is cut through a hole, which stands over the middle of a bar, and its edges are told past the bars', () => {
    const steps = [...stepsOf(plan, 'lay-panel'), ...stepsOf(plan, 'hold-panel')];
    expect(steps).toHaveLength(4);
    for (const step of steps) {
      const scene = homeScene(model, step, solids);
      // Holes 32 mm in from the edges, tubes of 28 mm: the edges stand 32 − 14 past them.
      expect([step.key, lengths(scene)]).toEqual([step.key, [18, 18]]);
      expect(scene?.bodies.map(({ kind }) => kind).toSorted()).toEqual(['flat-panel', expect.any(String), expect.any(String)]);
    }
  });
});

describe('a lid on its hinges', () => {
  const { model, plan } = planned('chest', 'standard');

  it('is cut through a hole, with the hinge whose peg stands in it and the bar that this turns on, seen along the bar', () => {
    const [step] = [...stepsOf(plan, 'lay-panel'), ...stepsOf(plan, 'hold-panel')];
    if (step === undefined) throw new Error('no lid is laid');
    const scene = homeScene(model, step, solids);
    const hinge = model.connections.find((each) => each.is === 'hinge');
    if (hinge?.is !== 'hinge' || scene === null) throw new Error('not shown');
    expect(scene.bodies.map(({ partId }) => partId).toSorted()).toEqual([...hinge.leaves, hinge.hinge].toSorted());
    expect(Math.abs(scene.view.towardsEye.reduce((sum, value, axis) => sum + value * (hinge.axis[axis as 0] ?? 0), 0))).toBeCloseTo(1, 9);
    const [lid] = step.newParts.flatMap(({ ids }) => ids);
    const { shape, pose } = model.parts.find(({ id }) => id === lid) ?? {};
    const holes = shape?.form === 'plate' && pose !== undefined ? shape.holes.map(({ at: [x, y] }) => placed(pose, [x, y, 0])) : [];
    expect(holes.some((hole) => Math.abs(hole[0] * scene.view.towardsEye[0] - nearest(scene)) < 1e-6)).toBe(true);
  });

  it('has no ring round what it hides while it comes, one at the most, round an arrow that is seen', () => {
    const [step] = [...stepsOf(plan, 'lay-panel'), ...stepsOf(plan, 'hold-panel')];
    const marks = step === undefined ? [] : stepScene(model, step, solids)?.marks ?? [];
    const [arrows, rings] = [marks.flatMap((mark) => (mark.mark === 'arrow' ? [mark.path] : [])), marks.flatMap((mark) => (mark.mark === 'detail' ? [mark] : []))];
    expect([arrows.length, rings.length, marks.length]).toEqual([3, expect.toSatisfy((count: number) => count < 2), arrows.length + rings.length]);
    for (const { at, radius } of rings) expect(arrows.filter((path) => path.every((end) => lengthOf(minus(end, at)) <= radius))).toHaveLength(1);
  });
});

describe('what is drilled close over the bench', () => {
  const { model, plan } = planned('bed', 'toddler');

  it('has so much room under the tube as the lowest joint reaches under that, and the blocks keep it off', () => {
    const steps = stepsOf(plan, 'drill').filter(({ detail }) => detail.on === 'plate');
    expect(steps.length).toBeGreaterThan(2);
    // The guard panels are pinned to bars that lie on blocks, which keep their joints' pegs off the floor; the others stand up from it.
    const rooms = steps.flatMap((step) => roomUnder({ model, step, solids }) ?? []);
    expect(rooms.map(({ room, ...rest }) => ({ ...rest, room: Math.round(room) }))).toEqual([1, 2].map(() => ({ bit: 6, panel: 9, tube: { outside: 28, inside: 22 }, room: 28 + PEGS_CLEAR })));
  });
});

describe('a box in its frame', () => {
  const { model, plan } = planned('chest', 'standard');

  it('is cut through its middle and seen level; what is nearer to the eye is left out', () => {
    const [step] = stepsOf(plan, 'set-in');
    if (step === undefined) throw new Error('no box is set in');
    const scene = homeScene(model, step, solids);
    if (scene === null) throw new Error('not shown');
    const moving = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
    const { min, max } = boxRound(moving.map((id) => stageHand(model, step, solids).body(id, 'new')));
    expect(nearest(scene)).toBeCloseTo((min[0] + max[0]) / 2, 6);
  });

  it('rests on blocks that are seen from its end, cut through the nearest', () => {
    const step = plan.steps.find(({ props }) => props.length > 0);
    if (step === undefined) throw new Error('nothing is propped');
    const level = proppedScenes(model, plan, step, solids)[1];
    if (level === undefined) throw new Error('not shown');
    const { visibleShare } = lineDrawing(level.bodies, level.view);
    const blocks = level.bodies.filter(({ id }) => id.startsWith('block-'));
    expect(Math.max(...blocks.map(({ id }) => visibleShare(id)))).toBeGreaterThan(0.3);
    const middle = (id: string): number => { const { min, max } = boxRound(blocks.filter((each) => each.id === id)); return (min[0] + max[0]) / 2; };
    expect(nearest({ ...level, bodies: level.bodies.filter(({ partId }) => partId !== null) })).toBeLessThanOrEqual(Math.max(...blocks.map(({ id }) => middle(id))) + 1e-6);
  });
});

describe('panels before the place that is worked on', () => {
  const { model, plan } = planned('bed', 'toddler');

  it('are outlines, so that the panel held behind them is seen; what is itself worked on stays whole', () => {
    const [step] = stepsOf(plan, 'hold-panel');
    if (step === undefined) throw new Error('no panel is held');
    const scene = stepScene(model, step, solids);
    if (scene === null) throw new Error('not shown');
    const [held] = step.newParts.flatMap(({ ids }) => ids);
    expect(lineDrawing(scene.bodies, scene.view).visibleShare(held ?? '')).toBeGreaterThan(0.6);
    const outlined = scene.bodies.filter(({ look, kind }) => look === 'pale' && kind === 'tool').map(({ partId }) => partId);
    expect(new Set(outlined).size).toBe(1);
    for (const pinned of plan.steps.filter(({ action, number }) => action === 'pin-panel' && number > step.number)) {
      const worked = model.connections.flatMap((each) => (each.is === 'pin' && pinned.newParts.some(({ ids }) => ids.includes(each.pin)) ? each.holds : []));
      for (const id of worked) expect(stepScene(model, pinned, solids)?.bodies.find((body) => body.id === id)?.look).toBe('present');
    }
  });
});

describe('a solid cut by a plane', () => {
  it('keeps what lies beyond it along the normal, and nothing where all lies before', () => {
    const plate = { form: 'plate', width: 100, height: 60, thickness: 9, holes: [] } as const;
    const normal: Vec3 = [1, 0, 0];
    const kept = solids.cut(plate, normal, 20);
    if (kept === null) throw new Error('nothing is kept');
    const across = [...kept.positions].filter((_, index) => index % 3 === 0);
    expect([Math.min(...across), Math.max(...across)]).toEqual([20, 50]);
    expect(solids.cut(plate, normal, 51)).toBeNull();
  });
});

describe('a box in its frame', () => {
  const { model, plan } = planned('chest', 'standard');

  it('is told by what is left free of the legs below its floor', () => {
    const [step] = stepsOf(plan, 'set-in');
    if (step === undefined) throw new Error('no box is set in');
    const lengthsTold = lengths(homeScene(model, step, solids));
    expect(lengthsTold).toHaveLength(1);
    const height = (part: { readonly id: string }): { readonly low: number; readonly high: number } => {
      const own = model.parts.find(({ id }) => id === part.id);
      if (own === undefined) throw new Error(part.id);
      const { min, max } = solids.box(own);
      return { low: min[2], high: max[2] };
    };
    const legs = model.parts.filter(({ shape, pose }) => shape.form === 'tube' && Math.abs(pose[2] ?? 0) > 0.99);
    const box = model.parts.find(({ shape }) => shape.form === 'folded');
    if (box === undefined) throw new Error('no box');
    expect(lengthsTold[0]).toBeCloseTo(height(box).low - Math.min(...legs.map((leg) => height(leg).low)), 0);
  });
});
