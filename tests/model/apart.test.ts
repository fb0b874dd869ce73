import { describe, expect, it } from 'vitest';
import { chained, moved, type Model } from '../../src/model/index.ts';
import { apartRacks } from '../support/chosen.ts';
import { partOf, rackModel, solids } from '../support/rack.ts';
import { heldTogether } from '../support/joinings.ts';

/** Shared volume under this is rounding, mm³. */
const TOUCH = 1;

/** Pairs of parts that share room, with the volume they share. */
const sharing = ({ parts }: Model): string[] => parts.flatMap((one, index) => parts.slice(index + 1).flatMap((other) => {
  const volume = solids.overlap(one, other);
  return volume > TOUCH ? [`${one.id} and ${other.id}: ${volume.toFixed(1)} mm³`] : [];
}));

describe.each(apartRacks)('the finished rack, size %s', (size) => {
  const model = rackModel(size);

  it('has no two parts in the same room', () => {
    expect(sharing(model)).toEqual([]);
  });

  it('has every part named once, of a mass, and every joining between parts that are there', () => {
    const ids = model.parts.map((part) => part.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const part of model.parts) expect([part.id, part.mass > 0]).toEqual([part.id, true]);
    for (const { by, parts } of heldTogether(model)) {
      for (const id of [by, ...parts]) expect(ids).toContain(id);
    }
  });

  it('stands on the floor with its posts and nothing below', () => {
    const lowest = model.parts.map((part) => ({ id: part.id, z: solids.box(part).min[2] }));
    for (const { id, z } of lowest) expect([id, z > -1e-3]).toEqual([id, true]);
    expect(lowest.filter(({ z }) => z < 1e-3).map(({ id }) => id).sort())
      .toEqual(['post-left-back', 'post-left-front', 'post-right-back', 'post-right-front']);
  });

  it('has its decks\' upper faces at the heights asked for, the posts up to their length, the cables under the top', () => {
    const [panelTops, wanted] = [
      model.groups.map((group) => solids.box(partOf(model, `${group.name}/panel`)).max[2]),
      model.deckTops,
    ];
    panelTops.forEach((top, index) => expect(top).toBeCloseTo(wanted[index] ?? Number.NaN, 2));
    const height = model.parameters['height']?.value ?? Number.NaN;
    expect(solids.box(partOf(model, 'post-left-front')).max[2]).toBeCloseTo(height, 3);
  });
});

describe('parts that hold one another', () => {
  const model = rackModel('standard');

  it('push home: a deck tube sits a whole socket deep in its joints, and the play is within the bore', () => {
    const tube = partOf(model, 'deck-1/long-tube-front');
    const joint = partOf(model, 'deck-1/joint-left-front');
    const { joint: sizes, tube: stock } = model.kit;
    const inSocket = solids.box(joint).max[0] - solids.box(tube).min[0];
    expect(inSocket).toBeCloseTo(sizes.socketDepth, 3);
    expect(sizes.bore).toBeGreaterThan(stock.outsideDiameter);
    // A hair further and the tube's end would run into the stop.
    expect(solids.overlap({ ...tube, pose: chained(moved([-1, 0, 0]), tube.pose) }, joint)).toBeGreaterThan(TOUCH);
  });

  it('a joint pin goes through post and sleeve: undrilled, either would be in its way', () => {
    for (const joining of heldTogether(model).filter(({ by }) => by.startsWith('joint-pin-'))) {
      const pin = partOf(model, joining.by);
      for (const held of joining.parts.map((id) => partOf(model, id)).filter((part) => part.kind !== 'wing-nut')) {
        const solid = held.shape.form === 'tube' ? { ...held.shape, holes: [] }
          : held.shape.form === 'joint' ? { ...held.shape, drilled: null } : held.shape;
        expect([pin.id, held.id, solids.overlap(pin, { shape: solid, pose: held.pose }) > 50]).toEqual([pin.id, held.id, true]);
      }
    }
  });

  it('a panel pin goes through tab and base: unpunched, the panel would be in its way by the whole shank', () => {
    const pattern = { ...model.pattern, holes: [], flaps: model.pattern.flaps.map((flap) => ({ ...flap, pins: [] })) };
    const panel = partOf(model, 'deck-1/panel');
    const solid = { pose: panel.pose, shape: { form: 'panel', pattern, folding: { left: 1, right: 1, front: 1, back: 1 } } as const };
    const pins = model.parts.filter((part) => part.kind === 'panel-pin' && part.group === 'deck-1');
    expect(pins).toHaveLength(model.pattern.holes.length / 2);
    const { diameter, length } = model.kit.panelPin;
    for (const pin of pins) expect(solids.overlap(pin, solid)).toBeGreaterThan(0.9 * length * (Math.PI / 4) * diameter ** 2);
  });

  it('the barbed pin ends in the panel, not under it', () => {
    const deck = model.groups[0];
    for (const id of deck?.partIds.filter((each) => each.includes('panel-pin')) ?? []) {
      const { max } = solids.box(partOf(model, id));
      expect(max[2]).toBeLessThan(model.deckTops[0] ?? 0);
    }
  });

  it('a cable\'s loops lie round the studs of the lowest and the highest deck', () => {
    const top = model.deckTops.length;
    for (const face of model.bracedFaces) for (const number of [1, 2]) {
      const cable = partOf(model, `cable-${face}-${number}`);
      const { min, max } = solids.box(cable);
      for (const [deck, height] of [['deck-1', min[2]], [`deck-${top}`, max[2]]] as const) {
        const studs = model.groups.find((group) => group.name === deck)?.pose.at(14) ?? Number.NaN;
        expect(Math.abs(height - studs)).toBeLessThan(model.kit.joint.studHeadDiameter + 2 * model.kit.cable.diameter + model.pattern.wrapRadius);
      }
    }
  });

  it('notices two parts in one room (the check itself)', () => {
    const [pin] = model.parts.filter((part) => part.kind === 'panel-pin');
    if (pin === undefined) throw new Error('no pin');
    const spoilt = { ...model, parts: model.parts.map((part) => (part === pin ? { ...part, pose: chained(moved([3, 0, 0]), part.pose) } : part)) };
    expect(sharing(spoilt).join()).toMatch(/deck-1\/panel and deck-1\/panel-pin-left-1/);
  });
});
