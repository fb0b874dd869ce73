import { beforeAll, describe, expect, it } from 'vitest';
import { foldSection, patternWrap, placed, type Model, type Vec3 } from '../../src/model/index.ts';
import type { Step } from '../../src/plan/index.ts';
import { momentScene, type SceneBody } from '../../src/scene/index.ts';
import { planOnce } from '../support/plans.ts';
import { rack, rackModel, solids } from '../support/rack.ts';
import { between, farthest, stretch } from './poses.ts';
import { home } from './shown.ts';

let model: Model;
let steps: readonly Step[];
beforeAll(() => {
  model = rackModel('low');
  steps = planOnce(model, rack.order).steps;
});

const bodiesAt = (step: Step, done: number): readonly SceneBody[] => momentScene(model, step, solids, done)?.bodies ?? [];
const bodyAt = (step: Step, done: number, id: string): SceneBody => {
  const body = bodiesAt(step, done).find((each) => each.id === id);
  if (body === undefined) throw new Error(`step ${step.key} shows no ${id}`);
  return body;
};
const stepNamed = (key: string): Step => {
  const step = steps.find((each) => each.key === key);
  if (step === undefined) throw new Error(`no step ${key}`);
  return step;
};

describe('a moment of a step', () => {
  it('is there for every step but the work on the bench', () => {
    for (const step of steps) expect([step.key, momentScene(model, step, solids, 0.5) === null]).toEqual([step.key, step.standing.name === 'bench']);
  });

  it('shows a slide from its whole way off to its place, evenly', () => {
    const sliding = steps.filter(({ motions, standing }) => standing.name !== 'bench' && motions.some(({ kind }) => kind === 'slide'));
    expect(sliding.length).toBeGreaterThan(10);
    for (const step of sliding) {
      for (const motion of step.motions) {
        if (motion.kind !== 'slide') continue;
        for (const id of motion.parts.filter((part) => bodiesAt(step, 1).some((body) => body.id === part))) {
          const [start, middle, end] = [0, 0.5, 1].map((done) => placed(bodyAt(step, done, id).pose, [0, 0, 0]));
          const way = Math.hypot(...[0, 1, 2].map((axis) => (end?.[axis] ?? 0) - (start?.[axis] ?? 0)));
          // What comes the same way keeps its distances: all of it comes as far as what comes farthest.
          expect(way, `${step.key} ${id}`).toBeGreaterThan(Math.hypot(...motion.by) - 1e-6);
          expect(farthest(middle ?? [], [0, 1, 2].map((axis) => ((start?.[axis] ?? 0) + (end?.[axis] ?? 0)) / 2))).toBeLessThan(1e-6);
          expect(farthest(bodyAt(step, 1, id).pose, home(model, step, id)), `${step.key} ${id}`).toBeLessThan(1e-6);
        }
      }
    }
  });

  // The facets' hinges are those of the section that the bend tables prove (tests/against/folded-section.test.ts).
  it('shows a flap as its facets allow: the tab lies where the folded section has it, at every stage', () => {
    const step = stepNamed('wrap-side:front');
    const flap = model.pattern.flaps.find(({ side }) => side === 'front');
    if (flap === undefined) throw new Error('no front flap');
    for (const stage of [0, 0.2, 0.5, 0.8, 1]) {
      const { tab } = foldSection(patternWrap(model.pattern, flap), stage, 0);
      const width = flap.edge - flap.halfCut;
      const edge: Vec3 = [0, -(model.pattern.axes[1] + tab.hinge[0] + width * Math.cos(tab.heading)), tab.hinge[1] + width * Math.sin(tab.heading)];
      const { mesh } = bodyAt(step, stage, 'deck-1/panel#flap');
      let nearest = Infinity;
      for (let at = 0; at < mesh.positions.length; at += 3) nearest = Math.min(nearest, Math.hypot((mesh.positions[at + 1] ?? 0) - edge[1], (mesh.positions[at + 2] ?? 0) - edge[2]));
      expect(nearest, `stage ${stage}`).toBeLessThan(0.1);
    }
  });

  it('keeps a flap\'s matter while it folds, but for what its creases crush', () => {
    const step = stepNamed('wrap-side:left');
    const volume = (done: number): number => {
      const { positions, triangles } = bodyAt(step, done, 'deck-1/panel#flap').mesh;
      const corner = (at: number): Vec3 => [positions[3 * at] ?? 0, positions[3 * at + 1] ?? 0, positions[3 * at + 2] ?? 0];
      let sum = 0;
      for (let at = 0; at < triangles.length; at += 3) {
        const [a, b, c] = [corner(triangles[at] ?? 0), corner(triangles[at + 1] ?? 0), corner(triangles[at + 2] ?? 0)];
        sum += (a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])) / 6;
      }
      return sum;
    };
    const flat = volume(0);
    for (const done of [0.25, 0.5, 0.75, 1]) expect(volume(done) / flat).toBeGreaterThan(0.6);
    for (const done of [0.25, 0.5, 0.75, 1]) expect(volume(done) / flat).toBeLessThan(1.01);
  });

  it('turns the whole work as one rigid body, from where it lies to its angle', () => {
    const turning = steps.filter(({ motions }) => motions.some(({ kind }) => kind === 'turn'));
    expect(turning.length).toBeGreaterThan(1);
    for (const step of turning) {
      const motion = step.motions[0];
      for (const done of [0, 0.3, 1]) {
        const moves = step.present.map((id) => between(home(model, step, id), bodyAt(step, done, id).pose));
        for (const move of moves) {
          expect(stretch(move)).toBeLessThan(1e-9);
          expect(farthest(move, moves[0] ?? [])).toBeLessThan(1e-6);
        }
        const angle = Math.acos(Math.min(1, Math.max(-1, ((moves[0]?.[0] ?? 0) + (moves[0]?.[5] ?? 0) + (moves[0]?.[10] ?? 0) - 1) / 2)));
        expect(angle).toBeCloseTo((motion?.kind === 'turn' ? Math.abs(motion.angle) : Number.NaN) * done, 6);
      }
    }
  });

  it('lets the drill go down along its own hole', () => {
    const step = stepNamed('drill:front');
    for (const { id } of bodiesAt(step, 0).filter((body) => body.id.startsWith('bit-'))) {
      const [start, end] = [bodyAt(step, 0, id).pose, bodyAt(step, 1, id).pose];
      const along = [12, 13, 14].map((at) => (end[at] ?? 0) - (start[at] ?? 0));
      const way = Math.hypot(...along);
      expect(way).toBeGreaterThan(50);
      // The bit's own z axis points up out of the hole.
      expect(farthest(along.map((value) => value / way), [8, 9, 10].map((at) => -(start[at] ?? 0)))).toBeLessThan(1e-9);
    }
  });
});
