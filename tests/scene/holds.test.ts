import { describe, expect, it } from 'vitest';
import { dot, lengthOf, moved, placed, plus, times, type Vec3 } from '../../src/model/index.ts';
import { seriesScenes, stepScene, type Mark } from '../../src/scene/index.ts';
import { stageHand } from '../../src/scene/kit/index.ts';
import { plateHolds } from '../../src/scene/kit/plate-holds.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

/** A hand's breadth and a little more, mm (common practice, no source). */
const CLEAR = 100;
const handsIn = (marks: readonly Mark[]): readonly Extract<Mark, { mark: 'hand' }>[] => marks.flatMap((mark) => (mark.mark === 'hand' ? [mark] : []));
const pinnedPanels = everySize.filter(({ item, size }) => {
  const model = modelOf(item, size);
  return model.connections.some((each) => each.is === 'pin' && each.holds.some((id) => model.parts.some((part) => part.id === id && part.shape.form === 'plate')));
});

describe.each(pinnedPanels)('hands on the flat panels of $name', ({ item, size }) => {
  const model = modelOf(item, size);
  const drilled = planOf(item, size).steps.filter(({ action, detail }) => action === 'drill' && detail.on === 'plate');
  const panelOf = (step: (typeof drilled)[number]): { readonly id: string; readonly holes: readonly Vec3[] } => {
    const held = model.connections.flatMap((each) => (each.is === 'pin' && step.drillsFor.includes(each.pin) ? each.holds : []));
    const panel = model.parts.find(({ id, shape }) => held.includes(id) && shape.form === 'plate');
    if (panel?.shape.form !== 'plate') throw new Error(`step ${step.number} drills through no panel`);
    const pose = stageHand(model, step, solids).pose(panel.id);
    const { thickness, holes } = panel.shape;
    return { id: panel.id, holes: holes.map(({ at: [x, y] }) => placed(pose, [x, y, thickness / 2])) };
  };

  it('are there, where one is drilled that the second person holds, for its first hole, and near none that lies', () => {
    expect(drilled.length).toBeGreaterThan(0);
    for (const step of drilled) {
      const [first] = seriesScenes(model, step, solids);
      expect([step.key, handsIn(first?.marks ?? []).length]).toEqual([step.key, 2 * step.held.length]);
      expect([step.key, handsIn(stepScene(model, step, solids)?.marks ?? []).length]).toEqual([step.key, expect.toSatisfy((hands: number) => hands <= 2 * step.held.length)]);
    }
  });

  it('are clear of every hole that a picture has drilled by a hand\'s breadth, and reach over the panel', () => {
    for (const step of drilled) {
      const { id, holes } = panelOf(step);
      const middle = times(holes.reduce((sum, hole) => plus(sum, hole), [0, 0, 0]), 1 / holes.length);
      const firstOf = model.connections.find((each) => each.is === 'pin' && step.drillsFor.includes(each.pin) && each.holds.includes(id));
      const pin = firstOf?.is === 'pin' ? placed(stageHand(model, step, solids).pose(firstOf.pin), [0, 0, 0]) : null;
      const first = holes.toSorted((a, b) => lengthOf(plus(a, times(pin ?? a, -1))) - lengthOf(plus(b, times(pin ?? b, -1)))).slice(0, 1);
      const pictures = [{ scene: stepScene(model, step, solids), worked: holes }, ...seriesScenes(model, step, solids).map((scene) => ({ scene, worked: first }))];
      for (const { scene, worked } of pictures) {
        for (const { at, onto } of handsIn(scene?.marks ?? [])) {
          for (const hole of worked) expect([step.key, lengthOf(plus(hole, times(at, -1)))]).toEqual([step.key, expect.toSatisfy((far: number) => far >= CLEAR)]);
          expect([step.key, dot(onto, plus(middle, times(at, -1)))]).toEqual([step.key, expect.toSatisfy((inwards: number) => inwards > 0)]);
        }
      }
    }
  });

  it('hold while the first hole gets its pin, before any other is drilled', () => {
    for (const step of drilled) {
      const scenes = seriesScenes(model, step, solids);
      const fresh = scenes.map(({ bodies }) => bodies.flatMap(({ look, id }) => (look === 'new' ? [id] : [])));
      expect([step.key, scenes.map(({ number }) => number)]).toEqual([step.key, [1, 2, 3]]);
      expect([step.key, fresh.map((ids) => ids.length)]).toEqual([step.key, [1, 1, step.drillsFor.length]]);
      // Nobody's hands are at the panel when it is drilled on: the pin holds it.
      expect([step.key, scenes.map(({ marks }) => handsIn(marks).length)]).toEqual([step.key, [2, 2, 0].map((hands) => hands * Math.sign(step.held.length))]);
      // The pin of the second picture stays in the third.
      expect([step.key, fresh[2]]).toEqual([step.key, expect.arrayContaining(fresh[1] ?? [])]);
    }
  });
});

it('no hand is drawn on a flat panel that has no place clear of its holes', () => {
  const small = { form: 'plate', width: 100, height: 80, thickness: 9, holes: [-30, 0, 30].map((x) => ({ at: [x, 0] as const, diameter: 6 })) } as const;
  const still = moved([0, 0, 0]);
  const holes = small.holes.map(({ at }) => at);
  expect(plateHolds(small, still, holes)).toEqual([]);
  expect(plateHolds({ ...small, width: 400 }, still, holes)).toHaveLength(2);
});
