import { describe, expect, it } from 'vitest';
import { chained, moved, type Model, type Part, type Shape } from '../../../src/model/index.ts';
import { faultsOf, findPlan, planItem } from '../../../src/plan/index.ts';
import { partOf, rackModel, solids, withPart } from '../../support/rack.ts';

const model = rackModel('low');
const plan = findPlan(model, [], solids);

/** What geometry says must come first, and a part that would be in the way. */
const lockedOut: readonly (readonly [string, string, RegExp])[] = [
  ['push-tubes:long', 'close-frame', /joint-right/],
  ['lay-frame', 'wrap-side:left', /panel$/],
  ['lay-frame', 'wrap-side:back', /panel$/],
  ['wrap-side:left', 'pin-side:left', /panel-pin-left/],
  ['wrap-side:back', 'pin-side:back', /panel-pin-back/],
  ['push-posts:front', 'pin-posts:front', /(joint-pin|wing-nut)-(left|right)-front/],
  ['slide-on:deck', 'pin-posts:back', /(joint-pin|wing-nut)-(left|right)-back/],
];

describe('what geometry alone asks for', () => {
  const geometry = plan.reasons.filter(({ rule }) => rule === 'geometry');

  it.each(lockedOut)('%s before %s, for else %s is in the way', (first, then, part) => {
    const parts = geometry.find((each) => each.first === first && each.then === then)?.parts ?? [];
    expect(parts.length).toBeGreaterThan(0);
    for (const id of parts) expect(id).toMatch(part);
  });

  it('asks for nothing against the order that was found, and never for two ways at once', () => {
    for (const { first, then } of geometry) expect(geometry.some((other) => other.first === then && other.then === first)).toBe(false);
  });
});

describe('a spoilt model', () => {
  const faultsIn = (spoilt: Model): readonly (readonly [string, readonly string[]])[] => faultsOf(spoilt, plan, solids).map(({ key, parts }) => [key, parts] as const);
  const tubes = (kind: Part['kind'], change: (tube: Extract<Shape, { form: 'tube' }>) => Shape): Model => ({
    ...model,
    parts: model.parts.map((part) => (part.kind === kind && part.shape.form === 'tube' ? { ...part, shape: change(part.shape) } : part)),
  });
  const shifted = (id: string, x: number, y: number, z: number): Model =>
    withPart(model, id, (part) => ({ ...part, pose: chained(moved([x, y, z]), part.pose) }));

  /** A pin as far out as the tube, in the way of its flap. */
  const pinUnderTube = shifted('deck-1/panel-pin-left-1', -60, 0, 0);
  const undrilled = tubes('post', (tube) => ({ ...tube, holes: [] }));
  const fatPosts = tubes('post', (tube) => ({ ...tube, outside: tube.outside + 2 }));

  it('with a pin in the tube\'s way is caught at the pin', () => {
    const parts = faultsIn(pinUnderTube).find(([key]) => key === 'pin-side:left')?.[1] ?? [];
    expect(parts).toContain('deck-1/short-tube-left');
  });

  it('with undrilled posts is caught when the pins go in', () => {
    expect(faultsIn(undrilled).map(([key]) => key)).toEqual(expect.arrayContaining(['pin-posts:front', 'pin-posts:back']));
  });

  it('with posts fatter than the joints\' bore is caught when they are pushed in', () => {
    expect(faultsIn(fatPosts).some(([key]) => key === 'push-posts:front' || key === 'slide-on:deck')).toBe(true);
  });

  it('with a long tube 3 mm too long at each end is caught', () => {
    expect(faultsIn(withPart(model, 'deck-1/long-tube-front', (part) =>
      (part.shape.form === 'tube' ? { ...part, shape: { ...part.shape, length: part.shape.length + 6 } } : part)))).not.toEqual([]);
  });

  it('gets no plan', () => {
    expect(() => planItem(undrilled, [], solids)).toThrow(/^rack low: no free way for pin-posts:\w+ past .*; would help: more room/);
  });

  it('leaves the sound model as it was', () => {
    expect(partOf(model, 'deck-1/panel-pin-left-1').pose).not.toEqual(partOf(pinUnderTube, 'deck-1/panel-pin-left-1').pose);
    expect(faultsIn(model)).toEqual([]);
  });
});
