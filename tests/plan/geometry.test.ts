import { describe, expect, it } from 'vitest';
import { chained, moved, type Model, type Part, type Shape } from '../../src/model/index.ts';
import { orderedJobs, planItem, provenClashes, type Job } from '../../src/plan/index.ts';
import { orderJobs } from '../../src/plan/order.ts';
import { partOf, rackModel, solids, withPart } from '../support/rack.ts';

const model = rackModel('standard');
const { jobs, reasons } = orderedJobs(model, [], solids);
const geometry = reasons.filter((reason) => reason.rule === 'geometry');
const position = { file: 'steps/rack/item.yaml', line: 80, column: 5 };

/** What geometry says must come first, and a part that would be in the way. */
const lockedOut: readonly (readonly [string, string, RegExp])[] = [
  ['push-tubes:short', 'push-tubes:long', /long-tube/],
  ['push-tubes:long', 'close-frame', /joint-right/],
  ['lay-frame', 'wrap-side:left', /panel$/],
  ['lay-frame', 'wrap-side:right', /panel$/],
  ['lay-frame', 'wrap-side:front', /panel$/],
  ['lay-frame', 'wrap-side:back', /panel$/],
  ['close-frame', 'wrap-side:right', /panel$/],
  ['wrap-side:left', 'pin-ends:left', /panel-pin-left/],
  ['wrap-side:left', 'pin-middle:left', /panel-pin-left/],
  ['wrap-side:front', 'pin-ends:front', /panel-pin-front/],
  ['wrap-side:back', 'pin-middle:back', /panel-pin-back/],
  ['stand-decks', 'push-posts:front', /post-/],
  ['stand-decks', 'push-posts:back', /post-/],
  ['push-posts:front', 'pin-posts:front', /joint-pin-(left|right)-front/],
  ['push-posts:back', 'pin-posts:back', /joint-pin-(left|right)-back/],
];

/** The jobs with one taken out and put right after another. */
function putAfter(key: string, other: string): readonly Job[] {
  const moving = jobs.filter((job) => job.key === key);
  const rest = jobs.filter((job) => job.key !== key);
  const at = rest.findIndex((job) => job.key === other) + 1;
  return [...rest.slice(0, at), ...moving, ...rest.slice(at)];
}

describe('what geometry alone asks for', () => {
  it.each(lockedOut)('%s before %s, for else %s is in the way', (first, then, part) => {
    const reason = geometry.find((each) => each.first === first && each.then === then);
    expect(reason?.parts.length).toBeGreaterThan(0);
    for (const id of reason?.parts ?? []) expect(id).toMatch(part);
  });

  it.each(lockedOut)('without rules and needs, %s still cannot follow %s: the wish is refused with the parts', (first, then) => {
    const wish = { first: then, then: first, because: 'Try it the other way.', position };
    const refused = (): unknown => orderJobs(jobs, geometry, [wish], []);
    expect(refused).toThrow(/^steps\/rack\/item\.yaml:80:5 order: found /);
    const part = geometry.find((each) => each.first === first && each.then === then)?.parts[0] ?? 'no part';
    expect(refused).toThrow(part);
    expect(refused).toThrow('would be in the way');
  });

  it('without rules and needs, the order of geometry alone leaves every motion free', () => {
    const alone = orderJobs([...jobs].reverse(), geometry, [], []).jobs;
    const at = (key: string): number => alone.findIndex((job) => job.key === key);
    for (const { first, then } of geometry) expect(at(first)).toBeLessThan(at(then));
  });

  it('asks for nothing against the order that was found, and never for two ways at once', () => {
    for (const { first, then } of geometry) expect(geometry.some((other) => other.first === then && other.then === first)).toBe(false);
  });
});

describe('walking through an order', () => {
  it.each([
    ['push-tubes:long', 'close-frame', 'push-tubes:long', /joint-right/],
    ['wrap-side:left', 'pin-ends:left', 'wrap-side:left', /panel-pin-left/],
    ['wrap-side:back', 'pin-middle:back', 'wrap-side:back', /panel-pin-back/],
    ['push-posts:front', 'pin-posts:front', 'push-posts:front', /joint-pin-(left|right)-front/],
    ['stand-decks', 'push-posts:front', 'stand-decks', /post-/],
  ])('notices %s put after %s', (key, other, clashing, part) => {
    const clash = provenClashes(model, putAfter(key, other), solids).find((each) => each.key === clashing);
    expect(clash?.parts.length).toBeGreaterThan(0);
    for (const id of clash?.parts ?? []) expect(id).toMatch(part);
  });

  it('notices lay-frame put after wrap-side:left', () => {
    expect(provenClashes(model, putAfter('lay-frame', 'wrap-side:left'), solids)).not.toEqual([]);
  });
});

describe('a spoilt model', () => {
  const clashesOf = (spoilt: Model): ReturnType<typeof provenClashes> => provenClashes(spoilt, jobs, solids);
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

  it('with a pin in the tube\'s way is caught at the pin, with tube and panel', () => {
    expect(clashesOf(pinUnderTube).find((clash) => clash.key === 'pin-ends:left')?.parts).toEqual(['deck-1/panel', 'deck-1/short-tube-left']);
  });

  it('with a pin beside its hole is caught', () => {
    expect(clashesOf(shifted('deck-1/panel-pin-front-1', 4, 0, 0))).toContainEqual({ key: 'pin-ends:front', parts: ['deck-1/panel'] });
  });

  it('with undrilled posts is caught when the pins go in', () => {
    const clashes = clashesOf(undrilled);
    expect(clashes.map((clash) => clash.key)).toEqual(['pin-posts:front', 'pin-posts:back']);
    expect(clashes[0]?.parts).toEqual(['post-left-front', 'post-right-front']);
  });

  it('with posts fatter than the joints\' bore is caught when they are pushed in', () => {
    const clash = clashesOf(fatPosts).find((each) => each.key === 'push-posts:front');
    expect(clash?.parts).toEqual(expect.arrayContaining(['deck-4/joint-left-back', 'deck-4/joint-right-back']));
  });

  it('with a deck out of line is caught when the posts come', () => {
    const crooked = model.groups[2]?.partIds.reduce((spoilt, id) =>
      withPart(spoilt, id, (part) => ({ ...part, pose: chained(moved([5, 0, 0]), part.pose) })), model) ?? model;
    const clash = clashesOf(crooked).find((each) => each.key === 'push-posts:front');
    expect(clash?.parts).toContain('deck-3/joint-left-back');
  });

  it('with fat posts is caught at the lowest deck too', () => {
    const clash = clashesOf(fatPosts).find((each) => each.key === 'push-posts:front');
    expect(clash?.parts).toEqual(expect.arrayContaining(['deck-1/joint-left-back', 'deck-1/joint-right-back']));
  });

  it('with a long tube 3 mm too long at each end is caught', () => {
    expect(clashesOf(withPart(model, 'deck-1/long-tube-front', (part) =>
      (part.shape.form === 'tube' ? { ...part, shape: { ...part.shape, length: part.shape.length + 6 } } : part)))).not.toEqual([]);
  });

  it('the lowest joint pin is told as in the post\'s way', () => {
    const reason = geometry.find((each) => each.first === 'push-posts:front' && each.then === 'pin-posts:front');
    expect(reason?.parts).toContain('joint-pin-left-front-1');
  });

  it('gets no plan', () => {
    expect(() => planItem(undrilled, [], solids)).toThrow(RangeError);
  });

  it('gets no plan with a message that names the parts in the way', () => {
    expect(() => planItem(pinUnderTube, [], solids)).toThrow(/short-tube-left/);
  });

  it('leaves the sound model as it was', () => {
    expect(partOf(model, 'deck-1/panel-pin-left-1').pose).not.toEqual(partOf(pinUnderTube, 'deck-1/panel-pin-left-1').pose);
    expect(clashesOf(model)).toEqual([]);
  });
});
