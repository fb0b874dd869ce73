import { describe, expect, it } from 'vitest';
import { buildModel, chained, moved, type Connection, type Part, type Vec3 } from '../../src/model/index.ts';
import { allSizes, deckSizes, items } from '../support/all-items.ts';
import { hangingTogether } from '../support/connected.ts';
import { partOf, solids } from '../support/rack.ts';

describe.each(allSizes)('the connections of $name', ({ model }) => {
  const { parts } = model();

  it('make its parts one whole and name no part that is not there', () => {
    expect([...hangingTogether(model())].sort()).toEqual(parts.map(({ id }) => id).sort());
  });

});

describe.each(deckSizes)('the connections of $name', ({ model }) => {
  const { parts, connections } = model();

  it('hold each end of a deck or frame tube, each joint on its post, each panel on four tubes', () => {
    const ends = connections.filter((each) => each.is === 'socket').map(({ bar }) => bar);
    for (const { id, kind } of parts) {
      if (kind === 'long-tube' || kind === 'short-tube') expect([id, ends.filter((bar) => bar === id).length]).toEqual([id, 2]);
    }
    const held = (is: 'sleeve' | 'lay'): number => connections.filter((each) => each.is === is).length;
    const count = (kind: Part['kind']): number => parts.filter((part) => part.kind === kind).length;
    expect(held('sleeve')).toBe(count('joint'));
    expect(held('lay')).toBe(4 * count('panel') + 2 * count('flat-panel'));
    expect(connections.filter(({ is }) => is === 'hook')).toHaveLength(2 * count('cable'));
    expect(connections.filter(({ is }) => is === 'pin')).toHaveLength(count('joint-pin'));
    expect(connections.filter(({ is }) => is === 'panel-pin')).toHaveLength(count('panel-pin'));
  });
});

/** What leaves, from what, and which way. */
const freedoms = (connection: Connection): readonly (readonly [leaves: string, from: string, out: Vec3])[] => {
  switch (connection.is) {
    case 'socket': return [[connection.bar, connection.joint, connection.out]];
    case 'pin': return connection.holds.map((held) => [connection.pin, held, connection.out] as const);
    case 'panel-pin': return [[connection.pin, connection.panel, connection.out]];
    case 'lay': return [[connection.panel, connection.bar, connection.out]];
    case 'foot': return [[connection.foot, connection.bar, connection.out]];
    case 'cap': return [[connection.cap, connection.bar, connection.out]];
    default: return [];
  }
};

const along = ([x, y, z]: Vec3, far: number): Vec3 => [far * x, far * y, far * z];

describe.each(items.map((item) => ({ name: item.name, model: buildModel(item, item.sizes[0]?.name ?? '') })))('the freedoms of $name', ({ model }) => {
  const shared = (leaves: string, from: string, by: Vec3): number => {
    const part = partOf(model, leaves);
    return solids.overlap({ ...part, pose: chained(moved(by), part.pose) }, partOf(model, from));
  };
  const free = model.connections.filter(({ is }) => is !== 'lay').flatMap(freedoms);
  const stopped = model.connections.filter(({ is }) => is === 'socket' || is === 'lay' || is === 'foot' || is === 'cap').flatMap(freedoms);

  it('let a part out the way they say', () => {
    for (const [leaves, from, out] of free) {
      for (const far of [1, 30]) expect([leaves, from, far, shared(leaves, from, along(out, far)) < 1]).toEqual([leaves, from, far, true]);
    }
  });

  it('stop it the other way', () => {
    for (const [leaves, from, out] of stopped) expect([leaves, from, shared(leaves, from, along(out, -2)) > 1]).toEqual([leaves, from, true]);
  });

  it('tell sleeves along their post and hooks along their stud', () => {
    for (const connection of model.connections) {
      if (connection.is === 'sleeve') expect(shared(connection.bar, connection.joint, along(connection.along, 40))).toBeLessThan(1);
      if (connection.is !== 'hook') continue;
      const [cable, joint] = [partOf(model, connection.cable), partOf(model, connection.joint)];
      const nearest = (way: number): number => solids.overlap({ ...cable, pose: chained(moved(along(connection.out, way)), cable.pose) }, joint);
      expect(nearest(-20)).toBeGreaterThan(1);
    }
  });
});
