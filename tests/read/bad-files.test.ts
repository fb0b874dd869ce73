import { describe, expect, it } from 'vitest';
import { faultLine, kitFromText } from '../../src/read/index.ts';
import { changed, expectFaults, itemFile, kitFile, readSample, sample } from './samples.ts';
import { faultsOf } from '../support/faults.ts';
import { catalogueTime, timed } from '../support/yardstick.ts';
import type { Case } from './samples.ts';

const inItem: readonly Case[] = [
  // Values with units
  ['width: 800 mm', 'width: 800', ['28:12', 'sizes.low.width', '"800"', 'a length with its unit, for example 1000 mm']],
  ['width: 800 mm', 'width: 800 kg', ['28:12', 'sizes.low.width', '"800 kg"', 'a length, for example 1000 mm, not a mass']],
  ['width: 800 mm', 'width: 800 furlong', ['28:12', 'sizes.low.width', '"800 furlong"', 'a length in mm, cm, m, in, inch, ft']],
  ['width: 800 mm', 'width: -800 mm', ['28:12', 'sizes.low.width', '"-800 mm"', 'within 500 mm to 1100 mm']],
  ['width: 800 mm', 'width: 1100.1 mm', ['28:12', 'sizes.low.width', '"1100.1 mm"', 'within 500 mm to 1100 mm']],
  ['width: 800 mm', 'width: 1,200 mm', ['28:12', 'sizes.low.width', '"1,200 mm"', 'a point before the decimals']],
  ['width: 800 mm', 'width: wide', ['28:12', 'sizes.low.width', '"wide"', 'a length with its unit']],
  ['width: 800 mm', 'width: 1e999 mm', ['28:12', 'sizes.low.width', '"1e999 mm"', 'a length that an item can have, 0.001 mm to 1000 m']],
  ['width: 800 mm', 'width: [800 mm]', ['28:12', 'sizes.low.width', 'a list', 'a number with its unit']],
  ['width: 800 mm', 'width:', ['28:11', 'sizes.low.width', 'nothing', 'a number with its unit']],
  ['    width: 800 mm\n', '', ['28:5', 'sizes.low.width', 'nothing', 'a value for every parameter: 500 mm to 1100 mm']],
  ['width: 800 mm', 'widht: 800 mm',
    ['28:5', 'sizes.low.widht', '"widht"', 'a parameter of this item: width?'],
    ['28:5', 'sizes.low.width', 'nothing', 'a value for every parameter']],
  ['decks: 2\n', 'decks: 2.5\n', ['31:12', 'sizes.low.decks', '"2.5"', 'a whole number within 2 to 5']],
  ['decks: 2\n', 'decks: 9\n', ['31:12', 'sizes.low.decks', '"9"', 'a whole number within 2 to 5']],
  ['decks: 2\n', 'decks: 2 mm\n', ['31:12', 'sizes.low.decks', '"2 mm"', 'a number without a unit within 2 to 5']],
  // Ranges
  ['500 mm to 1100 mm', '1100 mm to 500 mm', ['8:12', 'parameters.width.range', '"1100 mm to 500 mm"', 'the smaller value first: 500 mm to 1100 mm']],
  ['500 mm to 1100 mm', '500 mm', ['8:12', 'parameters.width.range', '"500 mm"', 'least and most with their units']],
  ['500 mm to 1100 mm', '500 mm to 11 kg', ['8:12', 'parameters.width.range', '"500 mm to 11 kg"', 'both ends of one kind']],
  ['500 mm to 1100 mm', '500 to 1100 mm', ['8:12', 'parameters.width.range', '"500 to 1100 mm"', 'both ends of one kind']],
  ['500 mm to 1100 mm', '0 mm to 1100 mm', ['8:12', 'parameters.width.range', '"0 mm to 1100 mm"', 'a length above zero']],
  ['500 mm to 1100 mm', '-1 mm to 1100 mm', ['8:12', 'parameters.width.range', '"-1 mm to 1100 mm"', 'a length above zero']],
  ['range: 2 to 5', 'range: 2.5 to 5', ['17:12', 'parameters.decks.range', '"2.5 to 5"', 'whole numbers without a unit at both ends']],
  ['range: 2 to 5', 'range: 2 mm to 5 mm', ['17:12', 'parameters.decks.range', '"2 mm to 5 mm"', 'whole numbers without a unit at both ends']],
  ['whole: true', 'whole: 1', ['18:12', 'parameters.decks.whole', '"1"', 'true or false']],
  // Names and fields
  ['kind: item', 'kind: kit', ['1:7', 'kind', '"kit"', 'kind: item']],
  ['name: shelf', 'name: rack', ['2:7', 'name', '"rack"', 'shelf, as the file or folder is called']],
  ['kit: small-kit', 'kit: smal-kit', ['3:6', 'kit', '"smal-kit"', 'the name of a kit file; small-kit? one of small-kit']],
  ['kit: small-kit', 'kit: ../../etc/passwd', ['3:6', 'kit', '"../../etc/passwd"', 'small letters, digits and hyphens']],
  ['use: storage', 'use: rack', ['4:6', 'use', '"rack"', 'storage, table, seat or bed']],
  ['use: storage\n', '', ['1:1', 'use', 'nothing', 'storage, table, seat or bed']],
  ['use: storage', 'use: { storage: 1 }', ['4:6', 'use', 'a section', 'storage, table, seat or bed']],
  ['revision: 3', 'revision: 1.5', ['5:11', 'revision', '"1.5"', 'a whole number from 1 up']],
  ['revision: 3', 'revison: 3',
    ['1:1', 'revision', 'nothing', 'a whole number from 1 up'],
    ['5:1', 'revison', '"revison"', 'revision? one of kind, name, kit']],
  ['purpose: How wide the shelf is.', `purpose: ${'wide '.repeat(101)}`, ['9:14', 'parameters.width.purpose', `"${'wide '.repeat(12)}…"`, 'a text of at most 500 characters']],
  ['    purpose: How wide the shelf is.\n', '', ['8:5', 'parameters.width.purpose', 'nothing', 'a sentence that says what the value sets']],
  ['  slack:\n    range', '  toString:\n    range', ['20:3', '', '"toString:"', 'another name; this one is kept for the machine']],
  ['expressions:\n', 'expressions:\n  max: 3 mm\n', ['24:3', 'expressions.max', '"max"', 'a name that is not a unit, a function or index']],
  ['expressions:\n', 'expressions:\n  post-top: 3 mm\n', ['24:3', 'expressions.post-top', '"post-top"', 'a hyphen would mean minus']],
  ['expressions:\n', 'expressions:\n  width: 3 mm\n', ['24:3', 'expressions.width', '"width"', 'a name not yet used by a parameter']],
  // Expressions
  ['spacing: height', 'spacing: heigth', ['24:12', 'expressions.spacing', '"heigth / (decks - 1)"', 'a known name in place of heigth: height?']],
  ['height / (decks - 1)', 'height + decks', ['24:12', 'expressions.spacing', '"height + decks"', 'here a length meets a count; give the number its unit']],
  ['height / (decks - 1)', 'height / (decks - 2)',
    ['24:12', 'expressions.spacing', '"height / (decks - 2)", which gives no number in size low', 'no division by zero']],
  ['height / (decks - 1)', 'height * height', ['24:12', 'expressions.spacing', '"height * height"', 'not length^2']],
  ['height / (decks - 1)', 'height / (decks', ['24:12', 'expressions.spacing', '"height / (decks"', 'goes on after character 15']],
  ['height / (decks - 1)', 'lift + spacing', ['24:12', 'expressions.spacing', '"lift + spacing"', '(spacing needs spacing)']],
  ['expressions:\n', 'expressions:\n  c: 2 * b\n  b: c - lift\n', ['24:6', 'expressions.c', '"2 * b"', '(c needs b needs c)']],
  ['depth: 400 mm', 'depth: 400', ['43:12', 'pieces.deck.depth', '"400"', 'gives a length, not a count; give the number its unit']],
  ['depth: 400 mm', 'depth: 1500 mm - height',
    ['43:12', 'pieces.deck.depth', '"1500 mm - height", which gives -500 mm in size high', 'a length above zero']],
  ['count: decks', 'count: decks / 2', ['44:12', 'pieces.deck.count', '"decks / 2"', 'gives a count, not a ratio']],
  ['count: decks', 'count: decks - 2', ['44:12', 'pieces.deck.count', '"decks - 2", which gives 0 in size low', 'a whole number from 1 to 50']],
  ['count: decks', 'count: decks * 11', ['44:12', 'pieces.deck.count', '"decks * 11", which gives 55 in size high', 'a whole number from 1 to 50']],
  ['top: lift + index * spacing', 'top: spacing - index * 501 mm',
    ['45:10', 'pieces.deck.top', '"spacing - index * 501 mm", which gives -1 mm in size high', 'a length above zero']],
  // Pieces, connections, order
  ['    depth: 400 mm\n', '', ['41:5', 'pieces.deck.depth', 'nothing', 'an expression of numbers with units']],
  ['  post:\n    is: post', '  post:\n    is: leg', ['47:9', 'pieces.post.is', '"leg"', 'is: deck, is: frame, is: post or is: panel']],
  ['through: deck', 'through: dek', ['49:14', 'pieces.post.through', '"dek"', 'the name of a deck or frame: deck?']],
  ['- pin: post', '- pin: deck', ['51:10', 'connections.1.pin', '"deck"', 'the name of a post piece']],
  ['- pin: post\n    to: deck', '- pin: post', ['51:5', 'connections.1.to', 'nothing', 'the name of a piece, or a list of names']],
  ['- pin: post\n    to: deck', '- post', ['51:5', 'connections.1', '"post"', 'pin and to, or brace and faces']],
  ['[back, left]', '[back, top]', ['54:19', 'connections.2.faces.2', '"top"', 'one of back, left, right, front']],
  ['[back, left]', '[back, back]', ['54:12', 'connections.2.faces', 'a list', 'each once']],
  ['then: wrap-side:front', 'then: wrap-side:left', ['57:11', 'order.1.then', '"wrap-side:left"', 'two different kinds of work']],
  ['    because: The left side is short.\n', '', ['56:5', 'order.1.because', 'nothing', 'the reason']],
  ['first: wrap-side:left', 'first: Wrap the side', ['56:12', 'order.1.first', '"Wrap the side"', 'for example wrap-side:left']],
  ['because: The left side is short.', 'because: Short.\n  - first: wrap-side:front\n    then: wrap-side:left\n    because: Long.',
    ['56:5', 'order.1', 'a section', '(wrap-side:left before wrap-side:front before wrap-side:left)']],
  // YAML itself
  ['width: 800 mm', 'width: 800 mm\n    width: 900 mm', ['29:5', '', '"width: 900 mm"', 'each name once in its section']],
  ['width: 800 mm', 'width: &w 800 mm', ['28:15', '', '"800 mm"', 'the value written out']],
  ['height: 2000 mm', 'height: *w', ['35:13', '', '"*w"', 'the value written out']],
  ['  high:\n', '  high:\n    <<: {lean: 1 deg}\n', ['34:5', '', '"<<: {lean: 1 deg}"', 'the value written out']],
  ['width: 800 mm', 'width: !!str 800 mm', ['28:18', '', '"800 mm"', 'the value without a tag']],
  ['width: 800 mm', '? [width]\n    : 800 mm', ['28:7', '', '"[width]"', 'a name in plain letters']],
  ['    width: 800 mm', '\twidth: 800 mm', ['28:1', '', '"width: 800 mm"', 'no tabs']],
  ['range: 500 mm', 'range: "500 mm', ['8:12', '', '""500 mm to 1100 mm"', 'closing quote']],
  ['name: shelf\n', 'name: shelf\n---\n', ['3:1', '', '"---"', 'one document in a file']],
];

const inKit: readonly Case[] = [
  ['density: 160 kg/m^3', 'density: 160', ['10:12', 'panel.density', '"160"', 'a density with its unit, for example 160 kg/m^3']],
  ['density: 160 kg/m^3', 'density: 160 kg', ['10:12', 'panel.density', '"160 kg"', 'a density, for example 160 kg/m^3, not a mass']],
  ['modulus: 17 GPa', 'modulus: 17 kN', ['21:12', 'tube.modulus', '"17 kN"', 'a stress or modulus, for example 17 GPa, not a force']],
  ['wall: 2.5 mm', 'wall: 0 mm', ['18:9', 'tube.wall', '"0 mm"', 'a length above zero']],
  ['wall: 2.5 mm', 'wall: -2.5 mm', ['18:9', 'tube.wall', '"-2.5 mm"', 'a length above zero']],
  ['knife-kerf: 0 mm', 'knife-kerf: -1 mm', ['70:15', 'practice.knife-kerf', '"-1 mm"', 'a length of zero or more']],
  ['tightest-crease: 45 deg', 'tightest-crease: 200 deg', ['9:20', 'panel.tightest-crease', '"200 deg"', 'an angle above zero and up to 180 deg']],
  ['neutral-layer: 1', 'neutral-layer: 1.2', ['8:18', 'panel.neutral-layer', '"1.2"', 'a number from 0 to 1']],
  ['neutral-layer: 1', 'neutral-layer: -0.1', ['8:18', 'panel.neutral-layer', '"-0.1"', 'a number from 0 to 1']],
  ['neutral-layer: 1', 'neutral-layre: 1',
    ['4:3', 'panel.neutral-layer', 'nothing', 'a number from 0 to 1'],
    ['8:3', 'panel.neutral-layre', '"neutral-layre"', 'neutral-layer? one of length, width']],
  ['name: small-kit', 'name: big-kit', ['2:7', 'name', '"big-kit"', 'small-kit, as the file or folder is called']],
  // Between fields
  ['skin: 0.8 mm', 'skin: 4.5 mm', ['7:9', 'panel.skin', '"4.5 mm"', 'less than half the panel thickness']],
  ['wall: 2.5 mm', 'wall: 14 mm',
    ['18:9', 'tube.wall', '"14 mm"', 'less than half the outside diameter'],
    ['46:13', 'joint-pin.diameter', '"6 mm"', 'less than the inside diameter of the tube']],
  ['bore: 28.6 mm', 'bore: 28 mm', ['29:9', 'joint.bore', '"28 mm"', 'more than the outside diameter of the tube']],
  ['sleeve-diameter: 38 mm', 'sleeve-diameter: 28 mm', ['26:20', 'joint.sleeve-diameter', '"28 mm"', 'more than the bore']],
  ['socket-diameter: 38 mm', 'socket-diameter: 27 mm', ['30:20', 'joint.socket-diameter', '"27 mm"', 'so that the tube goes in']],
  ['stop: 20 mm', 'stop: 14 mm', ['32:9', 'joint.stop', '"14 mm"', 'leaves the way of the post free']],
  ['end-play: 2 mm', 'end-play: 50 mm', ['33:13', 'joint.end-play', '"50 mm"', 'less than the socket depth']],
  ['stud-reach: 42 mm', 'stud-reach: 23 mm', ['35:15', 'joint.stud-reach', '"23 mm"', 'half the sleeve diameter and the stud head together']],
  ['stud-head-diameter: 18 mm', 'stud-head-diameter: 10 mm', ['36:23', 'joint.stud-head-diameter', '"10 mm"', 'so that a cable loop stays on']],
  ['pin-height: 36 mm', 'pin-height: 21 mm', ['38:15', 'joint.pin-height', '"21 mm"', 'passes below the sockets']],
  ['pin-height: 36 mm', 'pin-height: 49 mm', ['38:15', 'joint.pin-height', '"49 mm"', 'less than the sleeve below']],
  ['length: 17 mm', 'length: 9 mm', ['42:11', 'panel-pin.length', '"9 mm"', 'reaches the middle part']],
  ['length: 17 mm', 'length: 19 mm', ['42:11', 'panel-pin.length', '"19 mm"', 'the point stays inside']],
  ['head-diameter: 16 mm', 'head-diameter: 5 mm', ['43:18', 'panel-pin.head-diameter', '"5 mm"', 'more than the diameter of the pin']],
  ['head-diameter: 14 mm', 'head-diameter: 6 mm', ['48:18', 'joint-pin.head-diameter', '"6 mm"', 'more than the diameter of the pin']],
  ['length: 58 mm', 'length: 48 mm', ['47:11', 'joint-pin.length', '"48 mm"', 'more than the sleeve diameter and the wing nut together']],
  ['tab: 45 mm', 'tab: 17.5 mm', ['62:8', 'practice.tab', '"17.5 mm"', 'more than pin-edge']],
  ['tab-corner: 12 mm', 'tab-corner: 45 mm', ['68:15', 'practice.tab-corner', '"45 mm"', 'less than the tab']],
  ['pin-end: 25 mm', 'pin-end: 7 mm', ['64:12', 'practice.pin-end', '"7 mm"', 'half the head']],
  ['pin-pitch: 300 mm', 'pin-pitch: 16 mm', ['65:14', 'practice.pin-pitch', '"16 mm"', 'more than the head']],
];

describe('an item file that is wrong', () => {
  it.each(inItem.map((row) => ({ row, from: row[0], to: row[1] })))('$from → $to', ({ row }) => expectFaults(itemFile, row));
});

describe('a kit file that is wrong', () => {
  it.each(inKit.map((row) => ({ row, from: row[0], to: row[1] })))('$from → $to', ({ row }) => expectFaults(kitFile, row));
});

describe('faults together', () => {
  it('are all told at once, item and kit, each on a line of its own in reading order', () => {
    const read = () => readSample({
      [itemFile]: changed(itemFile, 'width: 800 mm', 'width: 800').replace('then: wrap-side:front', 'then: 7').replace('lean: 15 deg', 'lean: 15 m'),
      [kitFile]: changed(kitFile, 'skin: 0.8 mm', 'skin: 5 mm').replace('wall: 2.5 mm', 'wall: 2.5'),
    });
    expect(read).toThrow(Error);
    expect(faultsOf(read).map(faultLine)).toEqual([
      'steps/kits/small-kit.yaml:7:9 panel.skin: found "5 mm", would be right: less than half the panel thickness: two skins and a core between them',
      'steps/kits/small-kit.yaml:18:9 tube.wall: found "2.5", would be right: a length with its unit, for example 1000 mm',
      'steps/shelf/item.yaml:28:12 sizes.low.width: found "800", would be right: a length with its unit, for example 1000 mm',
      'steps/shelf/item.yaml:30:11 sizes.low.lean: found "15 m", would be right: an angle, for example 45 deg, not a length',
      'steps/shelf/item.yaml:57:11 order.1.then: found "7", would be right: a kind of work, with a side when it has one, for example wrap-side:left',
    ]);
    expect(read).toThrow(faultsOf(read).map(faultLine).join('\n'));
  });

  it.each([['', 'nothing'], ['# only a comment\n', 'nothing'], ['just words', '"just words"'], ['- a\n- b\n', 'a list'], ['7', '"7"']])('a file that holds %j has no sections', (text, found) => {
    expect(faultsOf(() => kitFromText(text, kitFile))).toEqual([
      { position: { file: kitFile, line: 1, column: 1 }, field: '', found, remedy: expect.stringContaining('a section with kind, name, panel') },
    ]);
  });
});

describe('a hostile file', () => {
  it.each([
    ['alias bomb', `a: &a [x, x]\n${'bcdefghij'.split('').map((name, place) => `${name}: &${name} [*${'abcdefghi'[place]}, *${'abcdefghi'[place]}]`).join('\n')}\n`],
    ['brackets without end', '['.repeat(90_000)],
    ['sections without end', `${Array.from({ length: 400 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n')}\n`],
    ['dashes without end', '- '.repeat(40_000)],
    ['too long a file', '#'.repeat(100_001)],
    ['a long number', `kind: ${'9'.repeat(90_000)}`],
    ['a hundred thousand blanks', `parameters: {a: {range: "1${' '.repeat(90_000)}2", purpose: x}}`],
    ['a ring of many expressions', `expressions:\n${Array.from({ length: 5000 }, (_, at) => `  a${at}: a${at + 1}`).join('\n')}\n`],
    ['a prototype', '__proto__:\n  kind: item\n'],
  ])('%s gives faults, soon', (_, text) => {
    const { answer, time } = timed(() => [faultsOf(() => readSample({ [itemFile]: text })), faultsOf(() => kitFromText(text, kitFile))]);
    for (const faults of answer) expect(faults.length).toBeGreaterThan(0);
    expect(time / catalogueTime, 'times the reading of all items').toBeLessThan(40);
  });

  it('does not reach the prototype of anything', () => {
    faultsOf(() => readSample({ [itemFile]: sample(itemFile).replace('parameters:\n', 'parameters:\n  __proto__:\n    polluted: true\n') }));
    expect('polluted' in {}).toBe(false);
  });
});
