import { describe, expect, it } from 'vitest';
import { namesOf, pointName } from '../../src/read/index.ts';
import type { Item, Piece, Quantity } from '../../src/read/index.ts';
import { changed, expectFaults, kitFile, readSample, sample, standFile } from './samples.ts';
import { faultsOf } from '../support/faults.ts';
import type { Case } from './samples.ts';

const mm = (value: number): Quantity => ({ value, dimension: 'length' });
const count = (value: number): Quantity => ({ value, dimension: 'count' });

function piece<Is extends Piece['is']>(item: Item, is: Is, name: string): Extract<Piece, { is: Is }> {
  const found = item.pieces.find((candidate): candidate is Extract<Piece, { is: Is }> => candidate.is === is && candidate.name === name);
  if (found === undefined) throw new Error(`no ${is} ${name}`);
  return found;
}

describe('an item of frames, panels and unequal posts', () => {
  const item = readSample({}, standFile);
  const low = namesOf(item, 'low');

  it('says what it is used for', () => {
    expect(item.use).toBe('seat');
  });

  it('keeps its pieces in the order of the file', () => {
    expect(item.pieces.map(({ is, name }) => `${is} ${name}`))
      .toEqual(['deck seat', 'frame foot-frame', 'frame back-rail', 'frame ring', 'panel back-panel', 'panel skirt', 'post post']);
  });

  it('has one deck or frame where no count is given, and tubes all round where no sides are given', () => {
    expect(piece(item, 'deck', 'seat').count.evaluate(low)).toEqual(count(1));
    expect(piece(item, 'frame', 'foot-frame').count.evaluate(low)).toEqual(count(1));
    expect(piece(item, 'frame', 'back-rail').count.evaluate(low)).toEqual(count(2));
    expect(piece(item, 'frame', 'ring').sides).toEqual(['back', 'left', 'right', 'front']);
    expect(piece(item, 'frame', 'foot-frame').sides).toEqual(['left', 'right', 'back']);
  });

  it('gives a frame the width and depth of the deck above when it has none of its own', () => {
    const seat = piece(item, 'deck', 'seat');
    expect(piece(item, 'frame', 'foot-frame')).toMatchObject({ width: seat.width, depth: seat.depth });
    expect(piece(item, 'frame', 'ring').width).not.toBe(seat.width);
  });

  it('has front and back posts of their own lengths, or one length for all four', () => {
    const { front, back, through } = piece(item, 'post', 'post');
    expect(front.text).toBe('seat_top + 12 mm');
    expect(back.text).toBe('back_rail_high + 36 mm');
    expect(through).toEqual(['seat', 'foot-frame', 'back-rail', 'ring']);
    const even = readSample({ [standFile]: changed(standFile, '    front: seat_top + 12 mm\n    back: back_rail_high', '    length: back_rail_high') }, standFile);
    const posts = piece(even, 'post', 'post');
    expect(posts.front).toBe(posts.back);
    expect(posts.front.text).toBe('back_rail_high + 36 mm');
  });

  it('reads one side or a list of sides of a panel', () => {
    expect(piece(item, 'panel', 'back-panel')).toEqual({ is: 'panel', name: 'back-panel', on: ['back'], from: 'back-rail', to: 'back-rail' });
    expect(piece(item, 'panel', 'skirt').on).toEqual(['left', 'right']);
  });

  it('pins posts to a list of pieces and braces from piece to piece or within one', () => {
    const file = standFile;
    expect(item.connections).toEqual([
      { kind: 'pin', piece: 'post', to: ['seat', 'foot-frame', 'back-rail', 'ring'], position: { file, line: 56, column: 5 } },
      { kind: 'brace', piece: 'foot-frame', to: 'seat', faces: ['back', 'left'], position: { file, line: 58, column: 5 } },
      { kind: 'brace', piece: 'back-rail', to: null, faces: ['back'], position: { file, line: 61, column: 5 } },
    ]);
  });

  it('leaves the heights of pieces to whoever evaluates, as ordinary names', () => {
    expect(pointName('back-rail', 'high')).toBe('back_rail_high');
    expect(Object.keys(low)).toEqual(['width', 'height']);
    const { back } = piece(item, 'post', 'post');
    expect(back.evaluate({ ...low, back_rail_high: mm(650) })).toEqual(mm(686));
    expect(faultsOf(() => back.evaluate(low))).toMatchObject([{ position: { line: 53, column: 11 }, field: 'pieces.post.back' }]);
  });
});

const wrong: readonly Case[] = [
  // Frames
  ['    depth: width - 50 mm\n    top: height', '    top: height',
    ['22:5', 'pieces.seat.depth', 'nothing', 'an expression of numbers with units']],
  ['  seat:\n    is: deck\n    width: width\n    depth: width - 50 mm\n    top: height\n  foot-frame:\n    is: frame\n', '  foot-frame:\n    is: frame\n    width: width\n',
    ['22:5', 'pieces.foot-frame.depth', 'nothing', 'a depth, because no deck or frame above gives one'],
    ['29:12', 'pieces.back-rail.level', '"seat_top + 100 mm + index * 150 mm"', 'a known name in place of seat_top'],
    ['48:12', 'pieces.post.front', '"seat_top + 12 mm"', 'a known name in place of seat_top'],
    ['50:15', 'pieces.post.through.1', '"seat"', 'the name of a deck or frame: one of foot-frame, back-rail, ring'],
    ['53:10', 'connections.1.to.1', '"seat"', 'the name of a deck or frame: one of foot-frame, back-rail, ring'],
    ['55:9', 'connections.2.to', '"seat"', 'the name of a deck or frame: one of foot-frame, back-rail, ring']],
  ['    width: width\n    depth: width - 50 mm\n    level', '    width: width - 1 mm\n    level',
    ['37:12', 'pieces.ring.width', '"width - 1 mm", which gives 299 mm in size low', '300 mm as seat has, because all decks and frames stand between the same posts'],
    ['37:12', 'pieces.ring.width', '"width - 1 mm", which gives 499 mm in size tall', '500 mm as seat has']],
  ['sides: [left, right, back]', 'sides: []', ['29:12', 'pieces.foot-frame.sides', 'a list', 'a list of faces, each once']],
  ['sides: [left, right, back]', 'sides: [left, left]', ['29:12', 'pieces.foot-frame.sides', 'a list', 'a list of faces, each once']],
  ['sides: [left, right, back]', 'sides: [left, top]', ['29:19', 'pieces.foot-frame.sides.2', '"top"', 'one of back, left, right, front']],
  ['count: 2', 'count: 0', ['32:12', 'pieces.back-rail.count', '"0", which gives 0 in size low', 'a whole number from 1 to 50'],
    ['32:12', 'pieces.back-rail.count', '"0", which gives 0 in size tall', 'a whole number from 1 to 50']],
  ['level: 100 mm', 'level: 100', ['28:12', 'pieces.foot-frame.level', '"100"', 'gives a length, not a count']],
  ['level: 100 mm', 'level: 500 mm - height', ['28:12', 'pieces.foot-frame.level', '"500 mm - height", which gives -100 mm in size tall', 'a length above zero']],
  ['level: 100 mm', 'top: 100 mm', ['27:5', 'pieces.foot-frame.level', 'nothing', 'an expression of numbers with units'],
    ['28:5', 'pieces.foot-frame.top', '"top"', 'one of is, width, depth, count, level, sides']],
  // Named points
  ['level: 100 mm', 'level: ring_level', ['28:12', 'pieces.foot-frame.level', '"ring_level"', 'ring_level is known only in pieces below ring']],
  ['level: 100 mm', 'level: foot_frame_level', ['28:12', 'pieces.foot-frame.level', '"foot_frame_level"', 'known only in pieces below foot-frame']],
  ['level: 100 mm', 'level: seat_tpo - 300 mm', ['28:12', 'pieces.foot-frame.level', '"seat_tpo - 300 mm"', 'a known name in place of seat_tpo: seat_top?']],
  ['foot_frame_high + 120 mm', 'foot_frame_top', ['39:12', 'pieces.ring.level', '"foot_frame_top"', 'a known name in place of foot_frame_top: foot_frame_']],
  // The kit's tube, air and panel put the middle of the tubes 23.5 mm under the seat: 14 + 0.5 + 9.
  ['level: 100 mm', 'level: seat_level - 400 mm', ['28:12', 'pieces.foot-frame.level', '"seat_level - 400 mm", which gives -23.5 mm in size low', 'a length above zero']],
  ['level: 100 mm', 'level: seat_high * 2 * 1 mm', ['28:12', 'pieces.foot-frame.level', '"seat_high * 2 * 1 mm"', 'a mass or a plain number, not length^2']],
  ['sizes:', 'expressions:\n  seat_top: 3 mm\nsizes:', ['23:3', 'pieces.seat', '"seat"', 'this piece gives the name seat_top, which is a parameter or an expression already']],
  ['sizes:', 'expressions:\n  rise: seat_top\nsizes:', ['14:9', 'expressions.rise', '"seat_top"', 'a known name in place of seat_top']],
  // Panels
  ['    on: back\n', '    on: top\n', ['42:9', 'pieces.back-panel.on', '"top"', 'one of back, left, right, front, or a list of them']],
  ['    on: back\n', '    on: [back, top]\n', ['42:16', 'pieces.back-panel.on.2', '"top"', 'one of back, left, right, front']],
  ['    on: back\n', '    on: []\n', ['42:9', 'pieces.back-panel.on', 'a list', 'or a list of them, each once']],
  ['    on: back\n', '    on: 3\n', ['42:9', 'pieces.back-panel.on', '"3"', 'one of back, left, right, front, or a list']],
  ['    on: back\n', '    on: [back, left]\n', ['42:16', 'pieces.back-panel.on.2', '"left"', 'a side on which back-rail has a tube: back']],
  ['from: back-rail', 'from: seat', ['43:11', 'pieces.back-panel.from', '"seat"', 'a frame: the tubes of a deck are wrapped']],
  ['from: back-rail', 'from: post', ['43:11', 'pieces.back-panel.from', '"post"', 'a frame that stands above in this file: one of foot-frame, back-rail, ring']],
  ['from: foot-frame', 'from: fot-frame', ['48:11', 'pieces.skirt.from', '"fot-frame"', 'a frame that stands above in this file: foot-frame?']],
  ['from: foot-frame\n    to: ring', 'from: ring\n    to: foot-frame',
    ['49:9', 'pieces.skirt.to', '"foot-frame" in size low', 'a frame higher than ring, or one repeated'],
    ['49:9', 'pieces.skirt.to', '"foot-frame" in size tall', 'a frame higher than ring, or one repeated']],
  ['    count: 2\n', '',
    ['43:9', 'pieces.back-panel.to', '"back-rail" in size low', 'a frame higher than back-rail, or one repeated'],
    ['43:9', 'pieces.back-panel.to', '"back-rail" in size tall', 'a frame higher than back-rail, or one repeated'],
    ['60:12', 'connections.3.brace', '"back-rail" in size low', 'a piece repeated, or a higher one named by to'],
    ['60:12', 'connections.3.brace', '"back-rail" in size tall', 'a piece repeated, or a higher one named by to']],
  // Posts
  ['    back: back_rail_high + 36 mm\n', '', ['51:5', 'pieces.post.back', 'nothing', 'either length for all four posts, or both front and back']],
  ['    front: seat_top + 12 mm\n', '', ['51:5', 'pieces.post.front', 'nothing', 'either length for all four posts, or both front and back']],
  ['    front: seat_top + 12 mm\n    back: back_rail_high + 36 mm\n', '', ['51:5', 'pieces.post.length', 'nothing', 'either length for all four posts']],
  ['    front: seat_top + 12 mm\n', '    length: 1 m\n', ['53:11', 'pieces.post.back', '"back_rail_high + 36 mm"', 'either length for all four posts']],
  ['front: seat_top + 12 mm', 'front: seat_top - height', ['52:12', 'pieces.post.front', '"seat_top - height", which gives 0 mm in size low', 'a length above zero'],
    ['52:12', 'pieces.post.front', '"seat_top - height", which gives 0 mm in size tall', 'a length above zero']],
  ['through: [seat, foot-frame, back-rail, ring]', 'through: [seat, back-rail]', ['54:14', 'pieces.post.through', 'a list', 'also foot-frame, ring: the posts hold every deck and frame']],
  ['through: [seat, foot-frame, back-rail, ring]', 'through: seat', ['54:14', 'pieces.post.through', '"seat"', 'also foot-frame, back-rail, ring']],
  ['through: [seat, foot-frame, back-rail, ring]', 'through: [seat, foot-frame, back-rail, ring, ring]', ['54:14', 'pieces.post.through', 'a list', 'a list of names, each once']],
  ['through: [seat, foot-frame, back-rail, ring]', 'through: [seat, foot-frame, back-rail, rong]', ['54:44', 'pieces.post.through.4', '"rong"', 'the name of a deck or frame: ring?']],
  ['through: [seat, foot-frame, back-rail, ring]', 'through: []', ['54:14', 'pieces.post.through', 'a list', 'a list of names, each once']],
  ['connections:', '  leg:\n    is: post\n    length: 1 m\n    through: [seat, foot-frame, back-rail, ring]\nconnections:', ['55:3', 'pieces.leg', '"leg"', 'one post piece']],
  // Connections
  ['    to: [seat, foot-frame, back-rail, ring]', '    to: [seat, skirt]', ['57:16', 'connections.1.to.2', '"skirt"', 'the name of a deck or frame: one of seat, foot-frame, back-rail, ring']],
  ['    to: seat\n', '    to: skirt\n', ['59:9', 'connections.2.to', '"skirt"', 'the name of a deck or frame']],
  ['    to: seat\n', '    to: foot-frame\n', ['59:9', 'connections.2.to', '"foot-frame"', 'another deck or frame, or no to']],
  ['    faces: [back]\n', '    faces: [back, left]\n', ['62:19', 'connections.3.faces.2', '"left"', 'a face with a corner joint of back-rail at both its ends']],
  ['brace: foot-frame\n    to: seat', 'brace: seat\n    to: foot-frame',
    ['59:9', 'connections.2.to', '"foot-frame" in size low', 'the cables rise'],
    ['59:9', 'connections.2.to', '"foot-frame" in size tall', 'the cables rise']],
];

describe('an item of frames, panels and unequal posts that is wrong', () => {
  it.each(wrong.map((row) => ({ row, from: row[0], to: row[1] })))('$from → $to', ({ row }) => expectFaults(standFile, row, standFile));

  it('is not told of a front frame that has joints at all four corners', () => {
    expect(faultsOf(() => readSample({ [standFile]: changed(standFile, 'faces: [back, left]', 'faces: [back, left, right, front]') }, standFile))).toEqual([]);
  });

  it('tells what does not hang on the kit when the kit is wrong', () => {
    const texts = { [standFile]: changed(standFile, 'level: 100 mm', 'level: seat_level - 2 m').replace('front: seat_top', 'front: -1 * seat_top'), [kitFile]: sample(kitFile).replace('wall: 2.5 mm', 'wall: 2.5') };
    expect(faultsOf(() => readSample(texts, standFile)).map(({ field }) => field)).toEqual(['tube.wall', 'pieces.post.front', 'pieces.post.front']);
  });
});
