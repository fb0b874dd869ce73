import { expect, it } from 'vitest';
import { chained, jointPorts, minus, placed, times, undone, type Connection, type Model, type Vec3 } from '../../src/model/index.ts';
import { isTurn, type Step } from '../../src/plan/index.ts';
import { rolledScenes, rolledSteps, stepScene, type SceneBody } from '../../src/scene/index.ts';
import { stageHand } from '../../src/scene/kit/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

type Fit = Extract<Connection, { is: 'socket' | 'sleeve' }>;

const isTape = ({ id }: SceneBody): boolean => id.startsWith('tape-') && !id.includes('#after');

/** How far the middle of a tape is from the mouth where a bar comes out of a joint, mm. */
function offMouth(model: Model, step: Step, fit: Fit, tape: Vec3): number {
  const stage = stageHand(model, step, solids);
  const bar = stage.part(fit.bar).shape;
  const [x, ...aside] = placed(undone(stage.pose(fit.bar)), tape);
  if (bar.form !== 'tube' || Math.hypot(...aside) > 1) return Infinity;
  if (fit.is === 'socket') {
    const [end] = placed(undone(stage.pose(fit.bar)), placed(stage.pose(fit.joint), [0, 0, 0]));
    return Math.abs(Math.abs(x - Math.sign(end) * (bar.length / 2)) - fit.depth);
  }
  const away = Math.hypot(...minus(tape, placed(stage.pose(fit.joint), [0, 0, 0])));
  return Math.min(...(jointPorts(stage.part(fit.joint).shape)?.ports ?? []).flatMap((port) => (port.is === 'sleeve' ? [Math.abs(away - port.above), Math.abs(away - port.below)] : [])));
}

/** The push fit that each tape is round the mouth of. */
function boundBy(model: Model, step: Step, tapes: readonly SceneBody[]): readonly Fit[] {
  const fits = model.connections.filter((each): each is Fit => (each.is === 'socket' || each.is === 'sleeve') && [each.bar, each.joint].every((id) => step.present.includes(id)));
  return tapes.flatMap(({ pose }) => {
    const off = fits.map((fit) => ({ fit, off: offMouth(model, step, fit, placed(pose, [0, 0, 0])) })).toSorted((a, b) => a.off - b.off)[0];
    return off === undefined || off.off > 8 ? [] : [off.fit];
  });
}

/** The parts that can leave others straight along a bar: neither pins, panels, fittings and tape hold them nor are others in their way. */
function looseOf(model: Model, step: Step, bound: readonly Fit[]): readonly string[] {
  const there = new Set(step.present);
  const ways = model.connections.flatMap((each) => (each.is === 'socket' ? [each.out] : each.is === 'sleeve' ? [each.along] : []));
  const made = model.connections.filter((each) => Object.values(each).every((value) => typeof value !== 'string' || value === each.is || !model.parts.some(({ id }) => id === value) || there.has(value)) && (each.is !== 'pin' || each.holds.every((id) => there.has(id))));
  const loose = new Set<string>();
  for (const way of new Map(ways.flatMap((each) => [each, times(each, -1)]).map((each) => [each.map((value) => value.toFixed(3)).join(), each])).values()) {
    // Whether `mover` can go that way while what it leaves stays.
    const leaves = (each: Connection, mover: string): boolean => {
      if (bound.includes(each as Fit)) return false;
      const along = (one: readonly number[]): number => one.reduce((sum, value, axis) => sum + value * (way[axis] ?? 0), 0);
      switch (each.is) {
        case 'socket': return along(each.out) * (mover === each.bar ? 1 : -1) > 0.999;
        case 'sleeve': return Math.abs(along(each.along)) > 0.999;
        case 'lay': return along(each.out) * (mover === each.panel ? 1 : -1) > 0.999;
        default: return false;
      }
    };
    for (const start of there) {
      const set = new Set([start]);
      for (const mover of set) {
        for (const each of made) {
          const ids = idsOf(each);
          if (ids.includes(mover) && !leaves(each, mover)) ids.forEach((id) => set.add(id));
        }
      }
      if (set.size < there.size) set.forEach((id) => loose.add(id));
    }
  }
  return [...loose];
}

function idsOf(each: Connection): readonly string[] {
  switch (each.is) {
    case 'pin': return [each.pin, each.nut, ...each.holds];
    case 'panel-pin': return [each.pin, each.panel];
    case 'hook': return [each.cable, each.joint];
    case 'cap': return [each.cap, each.bar];
    case 'foot': return [each.foot, each.bar];
    case 'hinge': return [each.hinge, ...each.leaves];
    case 'bracket': return [each.bracket, each.bar];
    case 'lay':
    case 'wrap': return [each.panel, each.bar];
    default: return [each.bar, each.joint];
  }
}

it.each(everySize)('$name is turned with nothing in it that friction alone holds', ({ item, size }) => {
  const model = modelOf(item, size);
  for (const step of planOf(item, size).steps.filter(isTurn)) {
    const bodies = stepScene(model, step, solids)?.bodies ?? [];
    const tapes = bodies.filter(isTape);
    const bound = boundBy(model, step, tapes);
    expect([step.key, looseOf(model, step, bound)]).toEqual([step.key, []]);
    expect([step.key, step.tools.includes('sticky-tape')]).toEqual([step.key, tapes.length > 0]);
  }
});

it.each(everySize)('$name is rolled over before a step with nothing in it that friction alone holds', ({ item, size }) => {
  const model = modelOf(item, size);
  const plan = planOf(item, size);
  const rolled = rolledSteps(model, plan);
  const faults = plan.steps.flatMap((step) => {
    const stage = stageHand(model, step, solids);
    const closed = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : []));
    // Each piece that is rolled begins a series of its own.
    const firsts = rolledScenes(model, step, rolled.get(step.number) ?? [], solids).filter(({ id }) => id.endsWith(':0'));
    return firsts.flatMap(({ bodies }) => {
      const [first] = bodies.filter(({ partId, id }) => partId !== null && !id.includes('#'));
      const tapes = bodies.filter(isTape);
      if (first?.partId == null || tapes.length === 0) return [];
      const back = chained(stage.pose(first.partId), undone(first.pose));
      const present = bodies.flatMap(({ partId }) => (partId === null ? [] : [partId]));
      const bound = boundBy(model, { ...step, present }, tapes.map((tape) => ({ ...tape, pose: chained(back, tape.pose) })));
      const isNamed = step.tools.includes('sticky-tape');
      const early = bound.filter((each) => closed.some((other) => JSON.stringify(other) === JSON.stringify(each)));
      return [...looseOf(model, { ...step, present }, bound), ...(isNamed ? [] : ['no tape among the tools']), ...(early.length === 0 ? [] : ['taped before it is joined'])].map((fault) => `${step.key}: ${fault}`);
    });
  });
  expect(faults).toEqual([]);
});
