import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { filesInMemory, filesOnDisk, kitFromText, listItems, namesOf, readItem } from '../../src/read/index.ts';
import type { Quantity } from '../../src/read/index.ts';
import { changed, itemFile, kitFile, readSample, sample } from './samples.ts';
import { faultsOf } from '../support/faults.ts';

const mm = (value: number): Quantity => ({ value, dimension: 'length' });
const rad = (value: number): Quantity => ({ value, dimension: 'angle' });
const count = (value: number): Quantity => ({ value, dimension: 'count' });
const ratio = (value: number): Quantity => ({ value, dimension: 'ratio' });

describe('a good item file', () => {
  const item = readSample();

  it('gives every parameter in its base unit, exactly', () => {
    expect(item.parameters.map(({ name, least, most, whole }) => [name, least, most, whole])).toEqual([
      ['width', mm(500), mm(1100), false],
      ['height', mm(700), mm(2000), false],
      // The doubles nearest to π/6 = 0.523598775598298873… and, below, π/12; Math.PI / 6 is one step off.
      ['lean', rad(Math.PI / 36), rad(0.5235987755982989), false],
      ['decks', count(2), count(5), true],
      ['slack', ratio(0), ratio(0.5), false],
    ]);
    expect(item.sizes).toEqual([
      { name: 'low', values: { width: mm(800), height: mm(900), lean: rad(0.26179938779914946), decks: count(2), slack: ratio(0.25) } },
      { name: 'high', values: { width: mm(914.4), height: mm(2000), lean: rad(0.2), decks: count(5), slack: ratio(0) } },
    ]);
  });

  it('keeps pieces, connections and order with their places', () => {
    expect(item.pieces.map(({ is, name }) => [is, name])).toEqual([['deck', 'deck'], ['post', 'post']]);
    expect(item.connections).toEqual([
      { kind: 'pin', piece: 'post', to: ['deck'], position: { file: itemFile, line: 51, column: 5 } },
      { kind: 'brace', piece: 'deck', to: null, faces: ['back', 'left'], position: { file: itemFile, line: 53, column: 5 } },
    ]);
    expect(item.order).toEqual([
      { first: 'wrap-side:left', then: 'wrap-side:front', because: 'The left side is short.', position: { file: itemFile, line: 56, column: 5 } },
    ]);
  });

  it('evaluates its expressions on quantities', () => {
    const names = namesOf(item, 'high');
    expect(names.spacing).toEqual(mm(500));
    expect(names.lift).toEqual(mm(20));
    const deck = item.pieces.find((piece) => piece.is === 'deck');
    expect(deck?.is === 'deck' && deck.top.evaluate({ ...names, index: count(3) })).toEqual(mm(1520));
    expect(deck?.is === 'deck' && deck.top.position).toEqual({ file: itemFile, line: 45, column: 10 });
  });

  it('lists expressions after those they need, whatever their order in the file', () => {
    const swapped = changed(itemFile, '  spacing: height / (decks - 1)\n', '  first: lift + 1 mm\n  spacing: height / (decks - 1)\n');
    const read = readSample({ [itemFile]: swapped });
    expect(read.expressions.map(({ name }) => name)).toEqual(['lift', 'first', 'spacing']);
    expect(namesOf(read, 'high').first).toEqual(mm(21));
  });

  it('names its source and both texts by a hash, which changes with the kit', () => {
    const expected = createHash('sha256').update(`${sample(itemFile)}\0${sample(kitFile)}`).digest('hex');
    expect(item.source).toEqual({ file: itemFile, sha256: expected });
    expect(readSample({ [kitFile]: `${sample(kitFile)}\n` }).source.sha256).not.toBe(expected);
  });

  it('may leave out expressions and order, begin with a byte order mark and end its lines as on Windows', () => {
    const text = `\uFEFF${changed(itemFile, sample(itemFile).slice(sample(itemFile).indexOf('order:')), 'place: indoors\nfor: adults\n').replaceAll('\n', '\r\n')}`;
    const read = readSample({ [itemFile]: text });
    expect(read.order).toEqual([]);
    expect(read.connections[1]?.position).toEqual({ file: itemFile, line: 53, column: 5 });
  });
});

describe('a good kit file', () => {
  it('gives every value in its base unit, exactly', () => {
    const kit = kitFromText(sample(kitFile), kitFile);
    expect(kit).toEqual(readSample().kit);
    expect(kit.panel).toEqual({
      length: 1500, width: 1000, thickness: 9, skin: 0.8, neutralLayer: 1, tightestCrease: Math.PI / 4, density: 1.6e-7,
      skinModulus: 1200, skinStrength: 20, coreShearModulus: 4, coreShearStrength: 0.35, usedStockFactor: 0.6,
    });
    expect(kit.tube).toEqual({
      outsideDiameter: 28, wall: 2.5, length: 2000, density: 1.9e-6, modulus: 17_000, bendingStrength: 170, bearingStrength: 90, usedStockFactor: 0.7,
    });
    expect(kit.joint).toEqual({
      sleeveDiameter: 38, sleeveAbove: 22, sleeveBelow: 52, bore: 28.6, socketDiameter: 38, socketDepth: 50, stop: 20, endPlay: 2,
      studDiameter: 10, studReach: 42, studHeadDiameter: 18, studHead: 4, pinHeight: 36, mass: 0.18,
    });
    expect(kit.panelPin).toEqual({ diameter: 5, length: 17, headDiameter: 16, headHeight: 3 });
    expect(kit.jointPin).toEqual({ diameter: 6, length: 58, headDiameter: 14, headHeight: 4, strength: 240, wingSpan: 30, nutHeight: 10 });
    expect(kit.cable).toEqual({ diameter: 4, length: 3000, stiffness: 60_000, strength: 2000 });
    expect(kit.practice).toEqual({
      insideGap: 3, wrapClearance: 0.5, turnBack: Math.PI / 4, tab: 45, pinEdge: 15, punching: 'after-wrapping', pinEnd: 25, pinPitch: 300,
      notchGap: 4, notchRadius: 6, tabCorner: 12, sawKerf: 1, knifeKerf: 0,
    });
  });

  it('takes other spellings of the same value', () => {
    for (const density of ['160kg/m^3', '160 kg/m³', '0.16 g/cm^3', '1.6e2 kg/m^3', '0.00000016 kg/mm^3']) {
      expect(kitFromText(changed(kitFile, '160 kg/m^3', density), kitFile).panel.density).toBe(1.6e-7);
    }
    for (const angle of ['45°', '45deg', '45.0 deg']) {
      expect(kitFromText(changed(kitFile, 'tightest-crease: 45 deg', `tightest-crease: ${angle}`), kitFile).panel.tightestCrease).toBe(Math.PI / 4);
    }
  });
});

describe('finding files', () => {
  const root = fileURLToPath(new URL('../..', import.meta.url));

  it('lists item files, not kits or schemas', () => {
    expect(listItems(filesInMemory({ 'steps/b/item.yaml': '', 'steps/a/item.yaml': '', 'steps/kits/item-like.yaml': '', 'other/c/item.yaml': '' })))
      .toEqual(['steps/a/item.yaml', 'steps/b/item.yaml']);
    expect(listItems(filesInMemory({}))).toEqual([]);
    expect(listItems(filesOnDisk(`${root}/nowhere`))).toEqual([]);
  });

  it('reads every item of this repository from the disk', () => {
    const files = filesOnDisk(root);
    const paths = listItems(files);
    expect(paths).toContain('steps/rack/item.yaml');
    for (const path of paths) expect(readItem(files, path).sizes.length).toBeGreaterThan(0);
  });

  it('says which file is not there', () => {
    expect(faultsOf(() => readItem(filesInMemory({}), 'steps/bench/item.yaml')))
      .toMatchObject([{ position: { file: 'steps/bench/item.yaml', line: 1, column: 1 }, found: 'nothing' }]);
  });
});
