import { beforeAll, describe, expect, it } from 'vitest';
import type { Model, Solids } from '../../src/model/index.ts';
import { orderedJobs, planItem, rulesFor, sidesInOrder, type Step } from '../../src/plan/index.ts';
import { orderJobs, type Ordering } from '../../src/plan/order.ts';
import { FaultError } from '../../src/read/index.ts';
import { itemNamed, modelOf, wishing } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';

interface Wish {
  readonly first: string;
  readonly then: string;
}

interface Shop {
  readonly model: Model;
  readonly steps: readonly Step[];
  readonly usual: Ordering;
}

let solids: Solids;
const shops = new Map<string, Shop>();
const shop = (name: string): Shop => {
  const found = shops.get(name);
  if (found === undefined) throw new Error(`${name} is not planned`);
  return found;
};

beforeAll(async () => {
  solids = await sharedSolids();
  for (const name of ['chair', 'bed']) {
    const model = modelOf(itemNamed(name));
    shops.set(name, { model, steps: planItem(model, [], solids).steps, usual: orderedJobs(model, [], solids) });
  }
});

/** Whether a step's key is one of these, or what it does is, whatever its detail. */
const is = (...keys: readonly string[]) => (step: Step): boolean => keys.includes(step.key) || keys.includes(step.action);
const inRun = (step: Step): boolean => step.run !== null;

/** Every step that `first` picks comes before every step that `then` picks; both pick something. */
function before(steps: readonly Step[], first: (step: Step) => boolean, then: (step: Step) => boolean): void {
  const [early, late] = [steps.filter(first), steps.filter(then)];
  expect(early.length).toBeGreaterThan(0);
  expect(late.length).toBeGreaterThan(0);
  expect(Math.max(...early.map((step) => step.number)), `${early.at(-1)?.key ?? ''} before ${late[0]?.key ?? ''}`)
    .toBeLessThan(Math.min(...late.map((step) => step.number)));
}

const keysOf = (steps: readonly Step[]): readonly string[] => steps.map((step) => step.key);

/** Common practice, no source, but where geometry proves it. */
describe.each(['chair', 'bed'])('the order of the %s by rule', (name) => {
  it('makes every frame of each run before the decks are stood, in one unbroken run of as many as there are', () => {
    const { model, steps } = shop(name);
    before(steps, inRun, is('stand-decks', 'set-rails', 'push-posts'));
    for (const piece of new Set(model.groups.map((group) => group.piece))) {
      const run = steps.filter((step) => step.run === piece);
      expect([piece, run.length > 0]).toEqual([piece, true]);
      expect([piece, (run.at(-1)?.number ?? 0) - (run[0]?.number ?? 0)]).toEqual([piece, run.length - 1]);
      const alike = model.groups.filter((group) => group.piece === piece).length;
      for (const step of run) expect([step.key, step.times]).toEqual([step.key, alike]);
    }
  });

  it('saws all tubes before any is pushed in, and cuts plates on the bench before frames are joined', () => {
    const { steps } = shop(name);
    before(steps, is('cut-tubes'), is('push-tubes', 'mark-posts', 'push-posts'));
    before(steps, is('cut-panel'), is('stand-decks'));
  });

  it('cuts plates alike once, as often as they are needed', () => {
    const { model, steps } = shop(name);
    expect(steps.filter(is('cut-panel')).map((step) => step.times)).toEqual(model.plates.map((plate) => plate.partIds.length));
  });

  it('pins the front posts, turns the work, then pins the back posts and stands it up', () => {
    const { steps } = shop(name);
    const work = keysOf(steps.filter(is('push-posts', 'drill:front', 'drill:back', 'pin-posts', 'turn-item', 'set-rails', 'stand-up')));
    expect(work.filter((key) => key !== 'set-rails')).toEqual(
      ['push-posts:front', 'drill:front', 'pin-posts:front', 'turn-item', 'push-posts:back', 'drill:back', 'pin-posts:back', 'stand-up']);
  });

  it('brings the plates after standing up: each held, then drilled, then pinned, before the next', () => {
    const { model, steps } = shop(name);
    const plates = model.parts.filter((part) => part.kind === 'flat-panel').map((part) => part.id);
    expect(plates.length).toBeGreaterThan(0);
    const stood = steps.findIndex(is('stand-up'));
    const after = keysOf(steps.slice(stood + 1)).filter((key) => !key.startsWith('brace:'));
    expect(after).toEqual(plates.flatMap((id) => [`hold-panel:${id}`, `drill:${id}`, `pin-panel:${id}`]));
  });
});

describe('the order of the chair by rule', () => {
  it('sets the back rails in one step, after the work is turned and before the back posts', () => {
    const { model, steps } = shop('chair');
    const rails = steps.filter(is('set-rails'));
    expect(rails).toHaveLength(1);
    expect(rails[0]?.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : [])).sort())
      .toEqual(model.groups.filter((group) => group.piece === 'back-rail').flatMap((group) => group.partIds).sort());
    before(steps, is('turn-item'), is('set-rails'));
    before(steps, is('set-rails'), is('push-posts:back'));
  });

  it('does not bring the back rails with the decks', () => {
    const stand = shop('chair').steps.find(is('stand-decks'));
    const parts = stand?.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : [])) ?? [];
    expect(parts.some((id) => id.startsWith('back-rail-'))).toBe(false);
    expect(parts.some((id) => id.startsWith('foot-frame-'))).toBe(true);
  });

  it('hangs the cables last of all: back, left, right', () => {
    const { steps } = shop('chair');
    before(steps, (step) => step.action !== 'brace', is('brace'));
    expect(keysOf(steps).slice(-3)).toEqual(['brace:back', 'brace:left', 'brace:right']);
  });

  it('shows each of two like rails made: a tube and its two joints, twice', () => {
    const rail = shop('chair').steps.filter((step) => step.run === 'back-rail');
    expect(rail.map((step) => [step.key, step.times])).toEqual([['push-tubes:back-rail-rail', 2]]);
    expect(rail[0]?.newParts.map(({ kind, ids }) => [kind, ids.length])).toEqual([['joint', 2], ['long-tube', 1]]);
  });
});

describe('the order of the bed by rule', () => {
  it('stands base and guards together: the guards have front joints', () => {
    const { model, steps } = shop('bed');
    const stand = steps.find(is('stand-decks'));
    expect(stand?.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : [])).sort()).toEqual(model.groups.flatMap((group) => group.partIds).sort());
    expect(steps.some(is('set-rails', 'brace'))).toBe(false);
  });

  it('makes the low tubes, the guard and the sill in a run each', () => {
    expect(shop('bed').steps.filter((step) => step.run !== null && /guard|sill/.test(step.run)).map((step) => [step.key, step.times])).toEqual([
      ['push-tubes:low-guard-short', 1], ['push-tubes:low-guard-long', 1], ['close-frame:low-guard', 1],
      ['push-tubes:guard-short', 1], ['push-tubes:guard-long', 1], ['close-frame:guard', 1], ['push-tubes:sill-short', 1],
    ]);
  });
});

/** The order that an item's file with these wishes gets; the proofs are the model's own, made once. */
function withWishes(name: string, ...wishes: readonly Wish[]): Ordering {
  const { model, usual } = shop(name);
  const must = usual.reasons.filter(({ rule }) => rule === 'needed' || rule === 'geometry');
  return orderJobs(usual.jobs, must, wishing(name, ...wishes).order, rulesFor(model.pattern, sidesInOrder(model.pattern, wishes)));
}

function refusal(name: string, wish: Wish): FaultError {
  try {
    withWishes(name, wish);
  } catch (error) {
    if (error instanceof FaultError) return error;
    throw error;
  }
  throw new Error(`"${wish.first}" before "${wish.then}" is not refused`);
}

describe('a wish against geometry is refused with the parts in the way', () => {
  it.each([
    ['chair', 'pin-panel:backrest-back', 'hold-panel:backrest-back', 'joint-pin-backrest-back-1-high'],
    ['chair', 'push-posts:back', 'set-rails', 'post-left-back'],
    ['chair', 'pin-posts:back', 'set-rails', 'joint-pin-left-back-3'],
    ['chair', 'pin-panel:backrest-back', 'set-rails', 'wing-nut-backrest-back-1-low'],
    ['chair', 'brace:left', 'stand-decks', 'cable-left-1'],
    ['bed', 'pin-panel:guard-panel-left', 'hold-panel:guard-panel-left', 'joint-pin-guard-panel-left-1-low'],
    ['bed', 'hold-panel:guard-panel-back', 'stand-decks', 'guard-panel-back'],
    ['bed', 'hold-panel:sill-panel-right', 'pin-posts:front', 'sill-panel-right'],
  ])('%s: %s before %s, for %s', (name, first, then, part) => {
    const error = refusal(name, { first, then });
    expect(error.faults).toHaveLength(1);
    const [fault] = error.faults;
    expect(fault?.position.file).toBe(`steps/${name}/item.yaml`);
    expect(fault?.field).toBe('order');
    expect(fault?.found).toBe(`"${first}" before "${then}"`);
    expect(fault?.remedy).toContain(`"${then}" comes before "${first}", or `);
    expect(fault?.remedy).toContain(part);
    expect(fault?.remedy).toContain('would be in the way');
  });
});

describe('a wish that no workshop can follow is refused', () => {
  it.each([
    ['chair', 'hold-panel:backrest-back', 'stand-up'],
    ['chair', 'hold-panel:backrest-back', 'cut-panel'],
    ['chair', 'drill:backrest-back', 'hold-panel:backrest-back'],
    ['chair', 'pin-panel:backrest-back', 'drill:backrest-back'],
    ['chair', 'set-rails', 'turn-item'],
    ['chair', 'set-rails', 'push-posts:front'],
    ['chair', 'set-rails', 'stand-decks'],
    ['chair', 'set-rails', 'push-tubes:back-rail-rail'],
    ['chair', 'stand-decks', 'close-frame:foot-frame'],
    ['chair', 'push-tubes:back-rail-rail', 'cut-tubes'],
    ['chair', 'brace:back', 'stand-up'],
    ['chair', 'brace:left', 'set-rails'],
    ['bed', 'hold-panel:guard-panel-back', 'cut-panel:a'],
    ['bed', 'hold-panel:guard-panel-left', 'stand-up'],
    ['bed', 'stand-decks', 'push-tubes:guard-long'],
  ])('%s: %s before %s', (name, first, then) => {
    expect(refusal(name, { first, then }).faults).toHaveLength(1);
  });
});

describe('a wish that does no harm', () => {
  it('changes which plate comes first, and each is still held, drilled and pinned in turn', () => {
    const keys = withWishes('bed', { first: 'pin-panel:guard-panel-left', then: 'hold-panel:guard-panel-back' }).jobs.map((job) => job.key);
    const work = keys.filter((key) => key.includes('guard-panel-'));
    expect(work.indexOf('pin-panel:guard-panel-left')).toBeLessThan(work.indexOf('hold-panel:guard-panel-back'));
    for (const side of ['back', 'left', 'front']) {
      expect(work.filter((key) => key.endsWith(`-${side}`))).toEqual([`hold-panel:guard-panel-${side}`, `drill:guard-panel-${side}`, `pin-panel:guard-panel-${side}`]);
    }
  });

  it('holds all plates before one is drilled', () => {
    const keys = withWishes('bed',
      { first: 'hold-panel:guard-panel-left', then: 'drill:guard-panel-back' }, { first: 'hold-panel:guard-panel-front', then: 'drill:guard-panel-back' }).jobs.map((job) => job.key);
    for (const side of ['back', 'left', 'front']) expect(keys.indexOf(`hold-panel:guard-panel-${side}`)).toBeLessThan(keys.indexOf('drill:guard-panel-back'));
  });

  it('hangs a cable before the plate comes, as the file asks', () => {
    const keys = withWishes('chair', { first: 'brace:left', then: 'hold-panel:backrest-back' }).jobs.map((job) => job.key);
    expect(keys.indexOf('brace:left')).toBeLessThan(keys.indexOf('hold-panel:backrest-back'));
    expect(keys.indexOf('stand-up')).toBeLessThan(keys.indexOf('brace:left'));
  });

  it('builds the rails before the seat', () => {
    const keys = withWishes('chair', { first: 'push-tubes:back-rail-rail', then: 'cut-blank' }).jobs.map((job) => job.key);
    expect(keys.indexOf('push-tubes:back-rail-rail')).toBeLessThan(keys.indexOf('cut-blank'));
  });
});
