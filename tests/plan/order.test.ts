import { describe, expect, it } from 'vitest';
import type { Side } from '../../src/model/index.ts';
import { orderedJobs, planItem, provenClashes, WORK, type Step } from '../../src/plan/index.ts';
import { orderRacks } from '../support/chosen.ts';
import { rackModel, solids } from '../support/rack.ts';

/** Whether a step's key is one of these, with any detail after the colon. */
const is = (...actions: readonly string[]) => (step: Step): boolean => actions.includes(step.key) || actions.includes(step.action);

const long = (side: Side | null): boolean => side === 'front' || side === 'back';
const opposite: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', front: 'back', back: 'front' };
const sideWork = is('wrap-side', 'pin-ends', 'pin-middle');

describe.each(orderRacks)('the plan of the rack, size %s', (size) => {
  const model = rackModel(size);
  const { steps, reasons } = planItem(model, [], solids);

  /** Every step that `first` picks comes before every step that `then` picks; both pick something. */
  const before = (first: (step: Step) => boolean, then: (step: Step) => boolean): void => {
    const [early, late] = [steps.filter(first), steps.filter(then)];
    expect(early.length).toBeGreaterThan(0);
    expect(late.length).toBeGreaterThan(0);
    expect(Math.max(...early.map((step) => step.number)), `${early.at(-1)?.key ?? ''} before ${late[0]?.key ?? ''}`)
      .toBeLessThan(Math.min(...late.map((step) => step.number)));
  };

  it('has 25 to 40 steps, numbered from 1 without a gap, each with a key of its own', () => {
    expect(steps.length).toBeGreaterThanOrEqual(25);
    expect(steps.length).toBeLessThanOrEqual(40);
    expect(steps.map((step) => step.number)).toEqual(steps.map((_, index) => index + 1));
    expect(new Set(steps.map((step) => step.key)).size).toBe(steps.length);
  });

  describe('order by rule (common practice, no source, but where geometry proves it)', () => {
    it('marks before it cuts, from the blank inwards: blank, inside line, creases, notches, holes', () => {
      const keys = ['cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches', 'crease', 'half-cut'];
      keys.slice(1).forEach((key, index) => before(is(keys[index] ?? ''), is(key)));
    });

    it('creases first, half-cuts last of all work on the panel', () => {
      before(is('crease'), is('half-cut'));
      before(is('cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches', 'crease'), is('half-cut'));
    });

    it('saws all tubes before any is pushed in', () => before(is('cut-tubes'), is('push-tubes', 'push-posts')));

    it('builds the frame before the panel comes, and lays it before it wraps', () => {
      before(is('push-tubes', 'close-frame'), is('lay-frame'));
      before(is('lay-frame'), is('wrap-side'));
    });

    it('wraps short sides before long ones', () => {
      const lengths = new Map(model.pattern.flaps.map((flap) => [flap.side, flap.to - flap.from]));
      const wrapped = steps.filter(is('wrap-side')).map((step) => lengths.get(step.side ?? 'left') ?? 0);
      expect(wrapped).toEqual([...wrapped].sort((a, b) => a - b));
      before((step) => sideWork(step) && !long(step.side), (step) => sideWork(step) && long(step.side));
    });

    it('wraps the opposite side next, before any neighbour', () => {
      const sides = steps.filter(is('wrap-side')).map((step) => step.side ?? 'left');
      expect(sides).toHaveLength(4);
      expect(new Set(sides).size).toBe(4);
      const [first, second, third, fourth] = sides;
      expect(second).toBe(opposite[first ?? 'left']);
      expect(fourth).toBe(opposite[third ?? 'left']);
    });

    it('finishes a side before it begins the next', () => {
      const sides = steps.filter(sideWork).map((step) => step.side);
      const changes = sides.slice(1).filter((side, index) => side !== sides[index]).length;
      expect(changes).toBe(3);
    });

    it('pins both ends of a side before its middle', () => {
      for (const side of ['left', 'right', 'front', 'back'] as const) {
        before(is(`wrap-side:${side}`), is(`pin-ends:${side}`));
        if (steps.some(is(`pin-middle:${side}`))) before(is(`pin-ends:${side}`), is(`pin-middle:${side}`));
      }
    });

    it('puts pins at the ends of the tab before those between them', () => {
      for (const step of steps.filter(is('pin-ends'))) {
        const pins = model.pattern.flaps.find((flap) => flap.side === step.side)?.pins ?? [];
        const [first = 0, second = 0] = pins;
        expect(step.newParts.flatMap((group) => group.ids)).toHaveLength(2);
        expect(Math.min(...pins)).toBe(Math.min(first, second));
        expect(Math.max(...pins)).toBe(Math.max(first, second));
      }
    });

    it('finishes all decks before the first post', () => before((step) => step.run !== null, is('stand-decks', 'push-posts')));

    it('pins the posts of one side before the work is turned, the other side after', () => {
      before(is('push-posts:front', 'drill:front', 'pin-posts:front'), is('turn-item'));
      before(is('turn-item'), is('push-posts:back', 'drill:back', 'pin-posts:back'));
    });

    it('marks the spacing before it drills, drills before it puts pins and wing nuts in', () => {
      before(is('mark-posts'), is('push-posts', 'drill'));
      for (const side of ['front', 'back']) {
        before(is(`push-posts:${side}`), is(`drill:${side}`));
        before(is(`drill:${side}`), is(`pin-posts:${side}`));
      }
    });

    it('hangs the cables last: back, left, right', () => {
      before((step) => step.action !== 'brace', is('brace'));
      expect(steps.slice(-3).map((step) => step.key)).toEqual(['brace:back', 'brace:left', 'brace:right']);
    });
  });

  describe('runs', () => {
    const run = steps.filter((step) => step.run !== null);

    it('makes identical decks as one unbroken run, every step as often as there are decks', () => {
      const decks = model.parameters['decks']?.value;
      expect(run.length).toBeGreaterThan(10);
      expect(new Set(run.map((step) => step.run))).toEqual(new Set(['deck']));
      expect((run.at(-1)?.number ?? 0) - (run[0]?.number ?? 0)).toBe(run.length - 1);
      for (const step of run) expect([step.key, step.times]).toEqual([step.key, decks]);
      for (const step of steps.filter((each) => each.run === null)) expect([step.key, step.times]).toEqual([step.key, 1]);
    });

    it('takes time for every one of them', () => {
      for (const step of steps) expect(step.minutes).toBe(WORK[step.action].minutes * step.times);
    });
  });

  describe('every step', () => {
    it('tells its tools, one or two people, what to look at, and moves something, or is work on the bench or with the drill', () => {
      for (const step of steps) {
        expect([step.key, step.tools.length > 0]).toEqual([step.key, true]);
        expect([1, 2]).toContain(step.people);
        expect([step.key, step.check?.name ?? 'none']).toEqual([step.key, ['turn-deck', 'turn-item'].includes(step.action) ? 'none' : expect.stringMatching(/^(?!none$)[a-z-]+$/)]);
        expect([step.key, step.motions.length > 0 || step.standing.name === 'bench' || step.tools.includes('drill')]).toEqual([step.key, true]);
      }
    });

    it('brings at most four kinds of new part', () => {
      for (const step of steps) {
        expect([step.key, step.newParts.length <= 4]).toEqual([step.key, true]);
        expect(new Set(step.newParts.map((group) => group.kind)).size).toBe(step.newParts.length);
      }
    });

    it('shows a sharp edge where a knife cuts, and guards eyes and lungs where a saw or drill throws dust', () => {
      for (const step of steps.filter((each) => each.tools.includes('knife'))) expect(step.cautions).toContain('sharp');
      for (const step of steps.filter((each) => each.tools.includes('saw') || each.tools.includes('drill'))) {
        expect(step.cautions).toEqual(expect.arrayContaining(['dust', 'eyes']));
      }
    });

    it('moves only parts that are there or come with it', () => {
      for (const step of steps) {
        const there = new Set([...step.present, ...step.newParts.flatMap((group) => group.ids)]);
        const moving = step.motions.flatMap((motion) => (motion.kind === 'turn' ? [] : motion.kind === 'fold' ? [motion.panel] : motion.parts));
        if (step.action !== 'stand-decks') for (const id of moving) expect([step.key, id, there.has(id)]).toEqual([step.key, id, true]);
      }
    });

    it('has folded just the sides wrapped so far', () => {
      const done: Side[] = [];
      for (const step of steps.filter((each) => each.run !== null)) {
        if (step.action === 'wrap-side' && step.side !== null) done.push(step.side);
        expect([step.key, step.folded.map(({ flap }) => flap)]).toEqual([step.key, [...done]]);
      }
      expect(done).toHaveLength(4);
    });
  });

  describe('parts', () => {
    const brought = steps.flatMap((step) => step.newParts.flatMap((group) => group.ids));

    it('are brought exactly once: those of the first deck for all decks, and all that belong to no deck', () => {
      const wanted = model.parts.filter((part) => part.group === null || part.group === 'deck-1').map((part) => part.id);
      expect([...brought].sort()).toEqual([...wanted].sort());
    });

    it('of the other decks are alike, part by part, and come in whole when the decks are stood up', () => {
      const [first, ...others] = model.groups;
      const own = (group: { readonly name: string; readonly partIds: readonly string[] } | undefined): readonly string[] =>
        group?.partIds.map((id) => id.slice(group.name.length)) ?? [];
      for (const other of others) expect(own(other)).toEqual(own(first));
      const stand = steps.find(is('stand-decks'));
      const moving = stand?.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : [])) ?? [];
      expect([...moving].sort()).toEqual(model.groups.flatMap((group) => group.partIds).sort());
    });

    it('stay once they are there', () => {
      for (const half of [steps.filter((step) => step.run !== null), steps.slice(steps.findIndex(is('push-posts')))]) {
        half.slice(1).forEach((step, index) => {
          const last = half[index];
          const wanted = [...(last?.present ?? []), ...(last?.newParts.flatMap((group) => group.ids) ?? [])];
          expect([step.key, [...step.present].sort()]).toEqual([step.key, wanted.sort()]);
        });
      }
    });

    it('are all there at the end', () => {
      const last = steps.at(-1);
      expect([...(last?.present ?? []), ...(last?.newParts.flatMap((group) => group.ids) ?? [])].sort())
        .toEqual(model.parts.map((part) => part.id).sort());
    });
  });

  it('keeps every reason that it gives', () => {
    const number = new Map(steps.map((step) => [step.key, step.number]));
    expect(reasons.length).toBeGreaterThan(40);
    for (const { first, then, rule } of reasons) {
      expect([first, then, rule, (number.get(first) ?? NaN) < (number.get(then) ?? NaN)]).toEqual([first, then, rule, true]);
    }
  });

  it('finds every motion free, and the same order for the same reasons when asked again', () => {
    const again = orderedJobs(rackModel(size), [], solids);
    expect(provenClashes(model, again.jobs, solids)).toEqual([]);
    expect(again.jobs.map((job) => job.key)).toEqual(steps.map((step) => step.key));
    expect(JSON.stringify(again.reasons)).toBe(JSON.stringify(reasons));
  });
});
