import { Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { chained, moved, placed } from '../../src/model/index.ts';
import { closeUpScene, type SceneBody } from '../../src/scene/index.ts';
import { stageHand } from '../../src/scene/kit/index.ts';
import { sceneRacks } from '../support/chosen.ts';
import { planOnce } from '../support/plans.ts';
import { partOf, rackModel, solids } from '../support/rack.ts';
import { alongX, onPanel, outOf, walkedTo } from '../support/walk.ts';
import { asTurn, between, farthest, linear, stretch, vector } from './poses.ts';
import { arrowsOf, BESIDE, ends, home, placesOf, shownSteps, sliding, tips, turning, type Shown } from './shown.ts';
import { toldText } from '../../src/draw/kit/told-text.ts';

describe.each(sceneRacks)('the scenes of the rack, size %s', (size) => {
  const model = rackModel(size);
  const { steps } = planOnce(model, []);
  const shown = shownSteps(model, steps);
  const ids = new Set(model.parts.map((part) => part.id));
  const partBodies = ({ scene }: Shown): readonly SceneBody[] => scene.bodies.filter((body) => ids.has(body.id));

  it('are there for all work but that on the bench', () => {
    const withScene = new Set(shown.map(({ step }) => step.number));
    for (const step of steps) expect([step.key, withScene.has(step.number)]).toEqual([step.key, step.standing.name !== 'bench']);
    expect(shown.length).toBeGreaterThan(20);
  });

  it('have bodies, each named once, with whole meshes and rigid poses', () => {
    for (const { step, scene } of shown) {
      expect(scene.bodies.length).toBeGreaterThan(0);
      expect([step.key, new Set(scene.bodies.map((body) => body.id)).size]).toEqual([step.key, scene.bodies.length]);
      for (const { id, pose, mesh } of scene.bodies) {
        expect(pose).toHaveLength(16);
        expect([step.key, id, pose.every(Number.isFinite) && stretch(pose) < 1e-9 && mesh.triangles.length > 0]).toEqual([step.key, id, true]);
      }
    }
  });

  it('have marks at places that can be drawn, and labels that say something', () => {
    for (const { step, scene } of shown) {
      for (const mark of scene.marks) {
        expect([step.key, mark.mark, placesOf(mark).flat().every(Number.isFinite)]).toEqual([step.key, mark.mark, true]);
        if ('told' in mark) expect(toldText(mark.told)).toMatch(/^([×Ø]?\d+(\.5)?|\d+°|[A-Z])$/);
        if (mark.mark === 'detail') expect(mark.radius).toBeGreaterThan(0);
        if (mark.mark === 'arrow') expect(mark.path.length).toBeGreaterThanOrEqual(2);
      }
    }
  });

  it('show every new part, and show it new', () => {
    for (const { step, scene } of shown) {
      for (const id of step.newParts.flatMap((group) => group.ids)) {
        expect([step.key, id, scene.bodies.find((body) => body.id === id)?.look]).toEqual([step.key, id, 'new']);
      }
    }
  });

  it('show nothing as new but what is new, moves, or works', () => {
    for (const { step, scene } of shown.filter((one) => !turning(one.step))) {
      const moving = step.motions.flatMap((motion) => (motion.kind === 'turn' ? [] : motion.kind === 'fold' ? [`${motion.panel}#flap`] : motion.parts));
      const may = new Set([...step.newParts.flatMap((group) => group.ids), ...moving]);
      for (const body of scene.bodies.filter((each) => each.look === 'new' && each.kind !== 'tool')) {
        expect([step.key, body.id, may.has(body.id)]).toEqual([step.key, body.id, true]);
      }
    }
  });

  it('tint the same bars of one side before a turn and after it, and nothing else', () => {
    for (const { step, scene } of shown.filter((one) => turning(one.step))) {
      const tinted = scene.bodies.filter(({ look }) => look === 'new');
      const names = (isAfter: boolean): readonly string[] => tinted.filter(({ id }) => id.endsWith('#after') === isAfter).map(({ id }) => id.replace('#after', '')).sort();
      expect([step.key, names(true)]).toEqual([step.key, names(false)]);
      const side = step.action === 'turn-item' ? 'front' : 'back';
      expect([step.key, names(true)]).toEqual([step.key, [`post-left-${side}`, `post-right-${side}`]]);
      expect([step.key, tinted.every(({ kind }) => kind === 'post')]).toEqual([step.key, true]);
    }
  });

  it('show what was there before', () => {
    for (const { step, scene } of shown.filter((one) => !turning(one.step))) {
      const there = new Set(scene.bodies.map((body) => body.id.split('#')[0] ?? body.id));
      const missing = step.present.filter((id) => !there.has(id));
      expect([step.key, missing]).toEqual([step.key, []]);
    }
  });

  it('turn every part the same way as its standing, and move only what the step moves', () => {
    for (const one of shown.filter(({ step }) => !turning(step))) {
      const moving = new Set(one.step.motions.flatMap((motion) => ('parts' in motion ? motion.parts : [])));
      for (const body of partBodies(one)) {
        const there = home(model, one.step, body.id);
        expect(farthest(linear(body.pose).elements, linear(there).elements)).toBeLessThan(1e-9);
        if (!moving.has(body.id)) expect([one.step.key, body.id, farthest(body.pose, there) < 1e-6]).toEqual([one.step.key, body.id, true]);
      }
    }
  });

  it('leave parts that stand in each other\'s hold just as they are in the finished item', () => {
    const firsts = shown.filter(({ step }) => !turning(step) && !sliding(step));
    for (const one of firsts) {
      const [anchor, ...others] = partBodies(one);
      if (anchor === undefined) continue;
      for (const body of others) {
        const [drawn, finished] = [between(anchor.pose, body.pose), between(partOf(model, anchor.id).pose, partOf(model, body.id).pose)];
        const inAnchor = chained(between(partOf(model, anchor.id).pose, anchor.pose), partOf(model, body.id).pose);
        expect(farthest(body.pose, inAnchor)).toBeLessThan(1e-6);
        expect(Math.abs(asTurn(drawn).angle - asTurn(finished).angle)).toBeLessThan(1e-6);
      }
    }
  });

  describe('arrows', () => {
    it('of parts that slide lie on their way: from where they are drawn to where they belong', () => {
      // Cables are drawn where they belong: only crossed do they show which stud they go to.
      for (const { step, scene } of shown.filter((one) => sliding(one.step) && one.step.action !== 'brace')) {
        const arrows = arrowsOf(scene);
        expect([step.key, arrows.length > 0]).toEqual([step.key, true]);
        for (const { path } of arrows) {
          const [from, to] = ends(path);
          const way = to.clone().sub(from);
          expect([step.key, way.length() > 15]).toEqual([step.key, true]);
          // Some moving part's own way is the arrow's, and the arrow lies where that part passes, or a hand beside it.
          const part = scene.bodies.find((body) => {
            if (!step.motions.some((motion) => 'parts' in motion && motion.parts.includes(body.id))) return false;
            const { shape } = partOf(model, body.id);
            const [drawn, there] = [solids.box({ shape, pose: body.pose }), solids.box({ shape, pose: home(model, step, body.id) })];
            const passes = [from, to].every((at) => at.toArray().every((value, axis) =>
              value > Math.min(drawn.min[axis] ?? 0, there.min[axis] ?? 0) - BESIDE && value < Math.max(drawn.max[axis] ?? 0, there.max[axis] ?? 0) + BESIDE));
            const own = vector(placed(home(model, step, body.id), [0, 0, 0])).sub(vector(placed(body.pose, [0, 0, 0])));
            return passes && own.length() > 10 && own.normalize().dot(way.clone().normalize()) > 1 - 1e-9;
          });
          expect([step.key, part === undefined]).toEqual([step.key, false]);
        }
      }
    });

    it('go the way that the plan tells, in the worker\'s coordinates', () => {
      for (const { step, scene } of shown.filter((one) => sliding(one.step))) {
        const ways = step.motions.flatMap((motion) => {
          if (motion.kind !== 'slide') return [];
          const told = vector(motion.by).normalize();
          return [told.applyMatrix3(linear(step.standing.pose))];
        });
        for (const { path } of arrowsOf(scene)) {
          const [from, to] = ends(path);
          const way = to.sub(from).normalize();
          expect([step.key, Math.max(...ways.map((told) => told.dot(way))) > 1 - 1e-9]).toEqual([step.key, true]);
        }
      }
    });

    it('of a fold go the true way of the tab\'s edge and end where it lies on the panel', () => {
      for (const { step, scene } of shown.filter((one) => one.step.action === 'wrap-side')) {
        const [arrow] = arrowsOf(scene);
        const flap = model.pattern.flaps.find((each) => each.side === step.side);
        if (arrow === undefined || flap === undefined) throw new Error('no arrow');
        const folded = walkedTo(model.pattern, flap, flap.edge);
        const [x, y] = onPanel(flap.side, 0, outOf(model.pattern, flap.side) + folded.a);
        const panel = home(model, step, 'deck-1/panel');
        expect(ends(arrow.path)[1].distanceTo(vector(placed(panel, [x, y, model.pattern.thickness])))).toBeLessThan(1e-6);
        const start = placed(between(panel, [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]), arrow.path[0] ?? [0, 0, 0]);
        const flat = model.pattern.blank[alongX(flap.side) ? 1 : 0] / 2;
        expect(Math.abs(start[alongX(flap.side) ? 1 : 0])).toBeGreaterThan(0.9 * flat);
        arrow.path.slice(1).forEach((at, index) => expect(vector(at).distanceTo(vector(arrow.path[index] ?? [0, 0, 0]))).toBeLessThan(70));
      }
    });

    it('of a drill point down the bit, at the place where the pin will go', () => {
      for (const { step, scene } of shown.filter((one) => one.step.action === 'drill')) {
        const pins = model.parts.filter((part) => part.kind === 'joint-pin' && part.id.includes(`-${step.side ?? ''}-`));
        expect(arrowsOf(scene)).toHaveLength(pins.length);
        expect(scene.bodies.filter((body) => body.id.startsWith('bit-'))).toHaveLength(pins.length);
        for (const { path } of arrowsOf(scene)) {
          const [from, to] = ends(path);
          expect(to.clone().sub(from).normalize().z).toBeCloseTo(-1, 9);
          const under = pins.filter((pin) => {
            const [x, y, z] = placed(home(model, step, pin.id), [0, 0, 0]);
            return Math.hypot(to.x - x, to.y - y) < 1e-6 && to.z > z;
          });
          expect(under.length).toBeGreaterThan(0);
        }
      }
    });

    it('of a turn go round the axis that the work turns about, the same way round', () => {
      for (const { step, scene } of shown.filter((one) => turning(one.step))) {
        const motions = scene.bodies.filter((body) => body.partId !== null && body.id.endsWith('#after')).map((after) => {
          const before = scene.bodies.find((body) => `${body.id}#after` === after.id);
          return between(before?.pose ?? [], after.pose);
        });
        expect(motions.length).toBe(step.present.length);
        const [motion = []] = motions;
        for (const other of motions) expect(farthest(other, motion)).toBeLessThan(1e-6);
        const { axis, angle, through } = asTurn(motion);
        const told = step.motions.find((each) => each.kind === 'turn');
        expect(angle).toBeCloseTo(told?.kind === 'turn' ? told.angle : Number.NaN, 9);

        // The line that it is rolled over about is drawn.
        const lines = scene.marks.flatMap((mark) => (mark.mark === 'axis' ? [[vector(mark.from), vector(mark.to)] as const] : []));
        expect(lines).toHaveLength(angle > 0.9 * Math.PI ? 1 : 0);
        for (const place of lines.flat()) expect(place.clone().sub(through).cross(axis).length()).toBeLessThan(1e-6);

        const [arrow] = arrowsOf(scene);
        const arms = (arrow?.path ?? []).map((at) => vector(at).sub(through));
        const [first = new Vector3()] = arms;
        for (const arm of arms) {
          expect(arm.dot(axis)).toBeCloseTo(first.dot(axis), 6);
          // What stands up is set down a little aside on its way, so that before and after do not cover each other.
          expect(Math.abs(arm.length() / first.length() - 1)).toBeLessThan(step.action === 'stand-up' ? 0.05 : 1e-9);
        }
        const swept = arms.slice(1).reduce((sum, arm, index) => {
          const last = (arms[index] ?? first).clone().projectOnPlane(axis);
          const now = arm.clone().projectOnPlane(axis);
          return sum + Math.atan2(axis.dot(last.clone().cross(now)), last.dot(now));
        }, 0);
        // A half turn may be told either way round; a quarter turn only one way.
        expect(Math.abs(swept)).toBeGreaterThan(0.7 * angle);
        expect(Math.abs(swept)).toBeLessThan(angle);
        if (angle < Math.PI - 1e-6) expect(swept).toBeGreaterThan(0);
      }
    });
  });

  describe('turns', () => {
    it('turn about the axis that the plan tells', () => {
      for (const { step, scene } of shown.filter((one) => turning(one.step))) {
        const told = step.motions.find((each) => each.kind === 'turn');
        const after = scene.bodies.find((body) => body.id.endsWith('#after'));
        const before = scene.bodies.find((body) => `${body.id}#after` === after?.id);
        const { axis } = asTurn(between(before?.pose ?? [], after?.pose ?? []));
        const wanted = vector(told?.kind === 'turn' ? told.axis : [0, 0, 0]);
        if (step.run === null) wanted.applyMatrix3(linear(step.standing.pose));
        expect([step.key, Math.abs(wanted.normalize().dot(axis)) > 1 - 1e-9]).toEqual([step.key, true]);
      }
    });

    it('leave the work as the next steps find it, turned at most about the upright', () => {
      for (const { step, scene } of shown.filter((one) => turning(one.step))) {
        const next = steps.find((each) => each.number > step.number && each.standing.name !== 'bench');
        for (const id of ['deck-1/panel', 'deck-1/joint-left-front']) {
          const after = scene.bodies.find((body) => body.id === `${id}#after`);
          const wanted = next === undefined ? partOf(model, id).pose : home(model, next, id);
          const { axis, angle } = asTurn(between(after?.pose ?? [], wanted));
          expect([step.key, angle < 1e-6 || Math.abs(axis.z) > 1 - 1e-9]).toEqual([step.key, true]);
        }
      }
    });

    it('of the lying item end just as the next step shows it', () => {
      const turned = shown.find(({ step }) => step.action === 'turn-item');
      const next = steps.find((step) => step.number > (turned?.step.number ?? Infinity));
      const after = turned?.scene.bodies.find((body) => body.id === 'deck-1/panel#after');
      if (next === undefined || after === undefined) throw new Error('no turn');
      expect(farthest(linear(after.pose).elements, linear(home(model, next, 'deck-1/panel')).elements)).toBeLessThan(1e-9);
    });

    it('stand the item upright: its up is up', () => {
      const up = shown.find(({ step }) => step.action === 'stand-up')?.scene.bodies.find((body) => body.id === 'post-left-front#after');
      const standing = new Vector3(1, 0, 0).applyMatrix3(linear(up?.pose ?? []));
      expect(standing.z).toBeCloseTo(1, 9);
    });
  });

  it('show no hole in post or joint before it is drilled, and the hole ever after', () => {
    const drilledAt = (y: number): number => steps.find((step) => step.key === `drill:${y < 0 ? 'front' : 'back'}`)?.number ?? Number.NaN;
    for (const one of shown) {
      for (const body of one.scene.bodies.filter((each) => each.kind === 'post' || each.kind === 'joint')) {
        const part = partOf(model, body.id.replace('#after', ''));
        const { shape } = part;
        const whole = solids.mesh(shape.form === 'tube' ? { ...shape, holes: [] } : shape.form === 'joint' ? { ...shape, drilled: null } : shape);
        const drilled = one.step.run === null && one.step.number > drilledAt(placed(part.pose, [0, 0, 0])[1]);
        expect([one.step.key, body.id, body.mesh === (drilled ? solids.mesh(shape) : whole)]).toEqual([one.step.key, body.id, true]);
        expect(whole).not.toBe(solids.mesh(shape));
      }
    }
  });

  it('show the panel folded just as far as the step says, and punched where it has been', () => {
    for (const one of shown.filter(({ step }) => step.run !== null && step.action !== 'wrap-side')) {
      const panel = one.scene.bodies.find((body) => body.id === 'deck-1/panel');
      if (panel === undefined) continue;
      const shape = stageHand(model, one.step, solids).panel('deck-1/panel');
      if (shape.form !== 'panel') throw new Error('a deck has a panel with four flaps');
      const punched = steps.filter(({ number }) => number < one.step.number).flatMap(({ drillsFor }) => drillsFor).length;
      expect([one.step.key, shape.pattern.holes.length]).toEqual([one.step.key, 2 * punched]);
      const folded = (side: 'left' | 'right' | 'front' | 'back'): number => (one.step.folded.some(({ panel: id, flap }) => id === panel.partId && flap === side) ? 1 : 0);
      const wanted = solids.mesh({ form: 'panel', pattern: shape.pattern, folding: { left: folded('left'), right: folded('right'), front: folded('front'), back: folded('back') } });
      expect([one.step.key, panel.mesh === wanted]).toEqual([one.step.key, true]);
    }
  });

  describe('close-ups', () => {
    it('are there for drilling and for pins through posts, and for nothing else', () => {
      for (const step of steps) expect([step.key, closeUpScene(model, step, solids) !== null]).toEqual([step.key, step.action === 'pin-posts' || step.action === 'drill']);
    });

    it('show the joint, the pin and the nut on one line, on two sides of it', () => {
      for (const step of steps.filter((each) => each.action === 'pin-posts')) {
        const scene = closeUpScene(model, step, solids);
        const bodyOf = (kind: SceneBody['kind']): SceneBody | undefined => scene?.bodies.find((body) => body.kind === kind);
        const at = (kind: SceneBody['kind']): Vector3 => vector(placed(bodyOf(kind)?.pose ?? [], [0, 0, 0]));
        const [pin, nut, joint] = [at('joint-pin'), at('wing-nut'), at('joint')];
        const axis = new Vector3(0, 0, 1).applyMatrix3(linear(bodyOf('joint-pin')?.pose ?? []));
        expect(Math.abs(nut.clone().sub(pin).normalize().dot(axis))).toBeCloseTo(1, 9);
        expect(pin.clone().sub(joint).projectOnPlane(axis).length()).toBeCloseTo(model.kit.joint.pinHeight, 6);
        expect(pin.clone().sub(joint).dot(axis) * nut.clone().sub(joint).dot(axis)).toBeLessThan(0);
        expect(scene?.bodies.filter((body) => body.look === 'new').map((body) => body.kind).sort()).toEqual(['joint-pin', 'wing-nut']);
        for (const { path } of arrowsOf(scene ?? { id: '', bodies: [], marks: [], view: { towardsEye: [0, 0, 1], up: [0, 1, 0] } })) {
          const [from, to] = ends(path);
          expect(Math.abs(to.sub(from).normalize().dot(axis))).toBeCloseTo(1, 9);
        }
      }
    });

    it('show the bit right through the sleeve, where the hole is', () => {
      for (const step of steps.filter((each) => each.action === 'drill')) {
        const scene = closeUpScene(model, step, solids);
        const [bit, joint] = [scene?.bodies.find((body) => body.id === 'bit'), scene?.bodies.find((body) => body.kind === 'joint')];
        if (bit === undefined || joint === undefined) throw new Error('no bit or no joint');
        const middle = vector(placed(joint.pose, [0, 0, 0]));
        const [tip, top] = tips(bit);
        const along = top.clone().sub(tip).normalize();
        expect(tip.clone().sub(middle).projectOnPlane(along).length()).toBeCloseTo(model.kit.joint.pinHeight, 4);
        const sleeve = model.kit.joint.sleeveDiameter / 2;
        expect(tip.clone().sub(middle).dot(along)).toBeLessThan(-sleeve);
        expect(top.clone().sub(middle).dot(along)).toBeGreaterThan(sleeve);
      }
    });
  });
});

describe('the check of the arrows itself', () => {
  it('would notice a part drawn to the side of its way', () => {
    const pose = moved([10, 0, 0]);
    expect(asTurn(between(pose, chained(moved([5, 0, 0]), pose))).angle).toBeCloseTo(0, 9);
    expect(stretch([2, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1])).toBeGreaterThan(0.5);
    expect(stretch([-1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1])).toBeGreaterThan(0.5);
  });
});
