import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildModel } from '../../src/model/index.ts';
import type { Item, Skeleton } from '../../src/read/index.ts';
import { faultsOf } from '../support/faults.ts';
import { changedText, structureFile, structureFrom, structureItem, structureNames, structureText, type StructureName } from '../support/structures.ts';

const skeletonOf = (item: Item, size = 'standard'): Skeleton => {
  const skeleton = item.structures[size]?.skeleton;
  if (skeleton === null || skeleton === undefined) throw new Error(`${item.name} has no skeleton`);
  return skeleton;
};

const pointAt = (skeleton: Skeleton, name: string): readonly number[] | undefined => skeleton.points.find((point) => point.name === name)?.at;

describe('an item of points and bars', () => {
  const skeleton = skeletonOf(structureItem('bench'));

  it('writes out every repeat, called by its indexes', () => {
    expect(skeleton.points.filter(({ of }) => of === 'c').map(({ name }) => name)).toEqual(['c.0.0', 'c.0.1', 'c.1.0', 'c.1.1', 'c.2.0', 'c.2.1']);
    expect(pointAt(skeleton, 'c.2.1')).toEqual([2 * 610, 350, 450 - 23.5]);
    expect(pointAt(skeleton, 'f.0.0')).toEqual([0, 0, 6]);
  });

  it('gives bars their ends, and the points between in order along them', () => {
    expect(skeleton.bars.find(({ name }) => name === 'long.1.0')).toMatchObject({ from: 'c.1.0', to: 'c.2.0', through: [], tube: 'usual', pinned: true });
    expect(skeleton.bars.find(({ name }) => name === 'post.2.1')).toMatchObject({ from: 'f.2.1', through: ['r.2.1', 'c.2.1'], to: 't.2.1' });
  });

  it('says of every part where the file tells of it', () => {
    const post = skeleton.bars.find(({ name }) => name === 'post.0.0');
    const line = structureText('bench').split('\n').findIndex((each) => each.includes('  post: {')) + 1;
    expect(post).toMatchObject({ field: 'bars.post', position: { file: structureFile('bench'), line } });
  });

  it('mirrors points, 0 as written and 1 mirrored', () => {
    const screen = skeletonOf(structureItem('screen'));
    expect(['b.0', 'b.1', 'q.1.0', 'q.1.1'].map((name) => pointAt(screen, name))).toEqual([[470, 0, 19], [-470, 0, 19], [-470, 275, 19], [-470, -275, 19]]);
  });

  it('calls all of some by a star', () => {
    expect(skeletonOf(structureItem('two-bay')).bars.find(({ name }) => name === 'post.1.0')?.through).toEqual(['c.1.0.0', 'c.1.0.1', 'c.1.0.2']);
  });

  it('tells panels, cables and fittings by the bars and points they hold to', () => {
    const chest = skeletonOf(structureItem('chest'));
    expect(chest.panels).toMatchObject([
      { is: 'tray', loop: ['long.0', 'short.1', 'long.1', 'short.0'], wrap: ['long.0', 'short.1', 'short.0'], depth: 160, face: [0, 0, -1] },
      { is: 'flat', on: ['long.0', 'long.1'], face: [0, 0, 1], pinned: false, length: 630, over: null },
    ]);
    expect(chest.fittings.filter(({ fitting }) => fitting !== 'foot-plate')).toMatchObject([
      { name: 'hinge.0', on: 'long.1', at: { along: 110 }, panel: 'lid' }, { name: 'hinge.1', at: { along: 470 } }, { name: 'stay', fitting: 'lid-stay', at: { along: 290 } },
    ]);
    expect(skeletonOf(structureItem('trolley')).cables).toHaveLength(6);
  });

  it('says what panels are for, with loads in newtons', () => {
    expect(structureItem('trolley').structures['standard']?.places).toEqual([
      { name: 'serving', use: 'table', panels: ['deck.1'], load: 20 * 9.80665, mattress: null },
      { name: 'below', use: 'shelf', panels: ['deck.0'], load: 10 * 9.80665, mattress: null },
    ]);
  });
});

const trestle = `kind: piece
name: trestle
parameters:
  width:
    measures: length
    purpose: From post to post.
  tall:
    measures: length
    purpose: From the floor to the end of the posts.
expressions:
  half: width / 2
points:
  foot: { at: [0, half, 0], mirror: y }
  low: { at: [0, half, 120 mm], mirror: y }
  top: { at: [0, half, tall], mirror: y }
bars:
  leg: { for: { y: 0..1 }, from: foot.y, to: top.y, through: low.y }
  rail: { from: low.1, to: low.0 }
`;

const withTrestles = `kind: item
name: horse
kit: stall-kit
use: table
place: indoors
for: adults
revision: 1
parameters:
  width:
    range: 300 mm to 600 mm
    purpose: From post to post.
sizes:
  standard:
    width: 400 mm
uses:
  trestle: { piece: trestle, for: { x: 0..1 }, at: [x * 900 mm, 0, 0], turn: x * 180 deg, with: { width: width, tall: 700 mm } }
bars:
  beam: { for: { y: 0..1 }, from: trestle.0/low.y, to: trestle.1/low.1-y }
`;

const horse = (item: string, piece = trestle): Item => structureFrom('horse', item, { 'steps/pieces/trestle.yaml': piece });

describe('a piece of a designer\'s own', () => {
  const skeleton = skeletonOf(horse(withTrestles));

  it('comes as often as it is used, turned and moved, its parts called after it', () => {
    expect(skeleton.bars.map(({ name }) => name)).toEqual(['trestle.0/leg.0', 'trestle.0/leg.1', 'trestle.0/rail', 'trestle.1/leg.0', 'trestle.1/leg.1', 'trestle.1/rail', 'beam.0', 'beam.1']);
    expect(pointAt(skeleton, 'trestle.0/foot.0')).toEqual([0, 200, 0]);
    expect(pointAt(skeleton, 'trestle.1/foot.0')).toEqual([expect.closeTo(900, 9), expect.closeTo(-200, 9), 0]);
  });

  it('is part of what the item is made from: its text counts for the hash', () => {
    expect(horse(withTrestles).source.sha256).not.toBe(horse(withTrestles, `${trestle}\n`).source.sha256);
  });
});

/** What stands in the good text, what stands there instead, and the fault: field, what was found, part of the remedy. */
type Case = readonly [from: string, to: string, ...faults: readonly (readonly [field: string, found: string, remedy: string])[]];

function expectFaults(text: string, read: (text: string) => unknown, [from, to, ...expected]: Case): void {
  const changed = changedText(text, from, to);
  const faults = faultsOf(() => read(changed)).filter((fault, place, all) => all.findIndex((other) => other.field === fault.field && other.remedy === fault.remedy) === place);
  expect(faults.map(({ field, found }) => [field, found])).toEqual(expected.map(([field, found]) => [field, found]));
  expected.forEach(([, , remedy], place) => expect(faults[place]?.remedy).toContain(remedy));
  for (const { position } of faults) expect(position.line).toBeGreaterThan(1);
}

const wrong: readonly (readonly [StructureName, Case])[] = [
  // Points
  ['bench', ['at: [x * along, y * across, rail]', 'at: [x * along, y * acros, rail]', ['points.r.at.2', '"y * acros"', 'a known name in place of acros: across?']]],
  ['bench', ['at: [x * along, y * across, rail]', 'at: [x * along, y * across]', ['points.r.at', 'a list', 'three expressions: across, back, up']]],
  ['bench', ['at: [x * along, y * across, rail]', 'at: [x * along, y * across, 3]', ['points.r.at.3', '"3" in size low', 'a length, not a count']]],
  ['bench', ['r: { for: { x: 0..2, y: 0..1 }, at', 'r: { for: { x: 0..2, y: 0.1 }, at', ['points.r.for.y', '"0.1"', 'first and last']]],
  ['bench', ['r: { for: { x: 0..2, y: 0..1 }, at', 'r: { for: { x: 2..0, y: 0..1 }, at', ['points.r.for.x', '"2..0", which gives 2..0 in size low', 'the smaller first']]],
  ['bench', ['r: { for: { x: 0..2, y: 0..1 }, at', 'r: { for: { x: 0..999999999, y: 0..1 }, at', ['points.r.for.x', '"0..999999999", which gives 0..999999999 in size low', 'at most 2000']]],
  ['bench', ['r: { for: { x: 0..2, y: 0..1 }, at', 'r: { for: { x: 0..1500, y: 0..1 }, at', ['points.r.for', 'a section', 'at most 2000 of one kind']]],
  ['bench', ['r: { for: { x: 0..2, y: 0..1 }, at', 'r: { for: { x: 0..2, bay: 0..1 }, at', ['points.r.for.bay', '"0..1"', 'another name for the index bay'], ['points.r.at.2', '"y * across"', 'a known name in place of y']]],
  ['screen', ['mirror: [x, y]', 'mirror: z', ['points.q.mirror', '"z"', 'x, y or [x, y]']]],
  // Bars
  ['bench', ['from: c.x.y, to: c.x+1.y }', 'from: d.x.y, to: c.x+1.y }', ['bars.long.from', '"d.x.y"', 'the name of a point']]],
  ['bench', ['from: c.x.y, to: c.x+1.y }', 'from: c.x, to: c.x+1.y }', ['bars.long.from', '"c.x"', 'c with 2 indexes']]],
  ['bench', ['from: c.x.y, to: c.x+1.y }', 'from: c.x.y, to: c.x+2.y }', ['bars.long.to', '"c.x+2.y" in size low', 'one that is there; no c.3.0 is made']]],
  ['bench', ['from: c.x.y, to: c.x+1.y }', 'from: c.x.y, to: c.x.y }', ['bars.long.to', '"c.0.0" in size low', 'two points that are apart']]],
  ['bench', ['from: c.x.y, to: c.x+1.y }', 'from: c.x.y, to: c.*.y }', ['bars.long.to', '"c.*.y"', 'one, without *']]],
  ['bench', ['from: c.x.y, to: c.x+1.y }', 'from: c.x.y, to: c.x+1.y, tube: wide }', ['bars.long.tube', '"wide"', 'a tube of the kit: one of usual']]],
  ['bench', ['through: [c.x.y, r.x.y]', 'through: [c.x.y, r.x.1-y]', ['bars.post.through', '"r.0.1" in size low', 'r.0.1 is beside it']]],
  // Panels
  ['bench', ['wrap: [long.x.0, long.x.1, short.2*x]', 'wrap: [long.x.0, foot.x]', ['panels.seat.wrap', 'a list', 'bars of its loop']]],
  ['bench', ['    is: wrapped', '    is: folded', ['panels.seat.is', '"folded"', 'is: wrapped, is: flat or is: tray']]],
  ['screen', ['face: front }', 'face: [0, 0, 0] }', ['panels.sheet.face', 'panels.sheet.face of length 0 in size low', 'three plain numbers, not all of them zero']]],
  ['chest', ['    depth: deep', '    depth: deep - 1 m', ['panels.tray.depth', '"deep - 1 m", which gives -850 mm in size small', 'a length above zero']]],
  // Fittings and places
  ['chest', ['fitting: foot-plate, on', 'fitting: foot-plat, on', ['fittings.foot.fitting', '"foot-plat"', 'a fitting of the kit: foot-plate?']]],
  ['chest', ['on: post.x.y, at: f.x.y }', 'on: post.x.y, at: c.x.y }', ['fittings.foot.at', '"c.0.0" in size small', 'an end of post.0.0: a plug goes into it']]],
  ['chest', ['along: along / 2, panel: lid }', 'along: along / 2 }', ['fittings.stay.panel', 'nothing', 'the panel that it holds']]],
  ['chest', ['along: along / 2, panel: lid }', 'along: 2 * along, panel: lid }', ['fittings.stay.along', '1080 mm in size small', 'a length within the bar']]],
  ['two-bay', ['along: height - 25 mm, face: back }', 'along: height - 25 mm }', ['fittings.wall.face', 'nothing', 'where the wall is']]],
  ['trolley', ['use: table, load: 20 kg', 'use: tabel, load: 20 kg', ['places.serving.use', '"tabel"', 'seat, backrest, table']]],
  ['trolley', ['use: table, load: 20 kg', 'use: table, load: 20 mm', ['places.serving.load', '"20 mm" in size small', 'a force, not a length']]],
  ['bench', ['panel: seat, use: seat', 'panel: seat, use: seat, load: 100 kg', ['places.sitting.load', '"100 kg"', 'no load: a seat is tested with the load of its use, whatever its file tells; only a place whose use is table, shelf or box carries one']]],
  ['leaning-chair', ['use: backrest', 'use: backrest, load: 60 kg', ['places.leaning.load', '"60 kg"', 'no load: a backrest is tested']]],
  ['bench', ['panel: seat, use: seat', 'panel: seat, use: bed, load: 40 kg', ['places.sitting.load', '"40 kg"', 'no load: a bed is tested']]],
  ['chest', ['panel: lid, use: lid', 'panel: lid, use: lid, load: 300 N', ['places.lid.load', '"300 N"', 'no load: a lid is tested']]],
  ['screen', ['panel: sheet, use: screen', 'panel: sheet, use: screen, load: 10 kg', ['places.sheet.load', '"10 kg"', 'no load: a screen is tested']]],
  ['trolley', ['\n  below: { panel: deck.0, use: shelf, load: 10 kg }', '', ['panels.deck', 'deck.0 in no place', 'a place that says what it is for, for example places: { deck: { panel: deck, use: shelf } }']]],
  ['leaning-chair', ['  leaning: { panel: backrest, use: backrest }\n', '', ['panels.backrest', 'backrest in no place', 'a panel without one is checked for nothing']]],
  ['trolley', ['panel: deck.1, use', 'panel: dekc.1, use', ['places.serving.panel', '"dekc.1"', 'a panel: deck?']]],
];

describe('an item of points and bars that is wrong', () => {
  it.each(wrong.map(([name, row]) => ({ name, row, from: row[0], to: row[1] })))('$name: $from → $to', ({ name, row }) => {
    expectFaults(structureText(name), (text) => structureFrom(name, text), row);
  });

  it('cannot have decks and posts besides', () => {
    const text = `${structureText('screen')}pieces:\n  deck:\n    is: deck\n    width: width\n    depth: width\n    top: low\n`;
    expect(faultsOf(() => structureFrom('screen', text)).map(({ field, remedy }) => [field, remedy.slice(0, 31)])).toEqual([['pieces', 'either decks, frames, posts and']]);
  });

  const wrongUses: readonly Case[] = [
    ['piece: trestle,', 'piece: tresle,', ['uses.trestle.piece', '"tresle"', 'a piece in steps/pieces: trestle?'], ['bars.beam.from', '"trestle.0/low.y"', 'the name of a point'], ['bars.beam.to', '"trestle.1/low.1-y"', 'the name of a point']],
    ['tall: 700 mm }', 'tal: 700 mm }', ['uses.trestle.with.tall', 'nothing', 'a value for every parameter of the piece: tall'], ['uses.trestle.with.tal', '"tal" in size standard', 'a parameter of the piece: tall?']],
    ['tall: 700 mm }', 'tall: 700 }', ['uses.trestle.with.tall', '"700" in size standard', 'a length, not a count']],
  ];

  it.each(wrongUses.map((row) => ({ row, from: row[0], to: row[1] })))('tells a wrong use of a piece: $from → $to', ({ row }) => {
    expectFaults(withTrestles, (text) => horse(text), row);
  });

  it('tells a fault of a piece in its own file', () => {
    const faults = faultsOf(() => horse(withTrestles, trestle.replace('at: [0, half, tall]', 'at: [0, half, tal]')));
    expect(faults[0]).toMatchObject({ position: { file: 'steps/pieces/trestle.yaml', line: 15 }, field: 'points.top.at.3', found: '"tal"' });
  });
});

/** Bits that structures are made of, good and bad. */
const bits = fc.constantFrom('0', '.', '..', '*', '-', '(', ')', '[', ']', '{', '}', ',', ': ', '\n', '  ', 'c.0.0', 'x', 'for: ', '999999', ' mm', 'is: tray', 'face: up', 'mirror: x', '"', '0 mm');

describe('a damaged item of points and bars', () => {
  it('is read and built, or refused with faults: nothing else is thrown', () => {
    fc.assert(fc.property(fc.constantFrom(...structureNames), fc.nat(3000), fc.nat(12), bits, (name, at, length, put) => {
      const good = structureText(name);
      const text = good.slice(0, at % good.length) + put + good.slice((at % good.length) + length);
      for (const { position, remedy } of faultsOf(() => {
        const item = structureFrom(name, text);
        for (const size of item.sizes) buildModel(item, size.name);
      })) expect([position.line > 0, remedy !== '']).toEqual([true, true]);
    }), { numRuns: 40, seed: 11 });
  });
});
