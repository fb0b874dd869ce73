import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { cordsFor, loadSolver, planOrder, type CutOrder, type OrderLine, type Solver } from '../../src/cut/index.ts';
import { cableEnds } from '../../src/model/index.ts';
import { letterOf } from '../../src/cut/order/needs.ts';
import { servesPanel, servesTube } from '../../src/cut/order/serves.ts';
import { stockFromText, type Stock } from '../../src/read/index.ts';
import { itemNamed, items, modelOf } from '../support/items.ts';

const stockFile = 'steps/stock/tern-island.yaml';
const counted = stockFromText(readFileSync(stockFile, 'utf8'), stockFile);
const known = items.flatMap((item) => item.sizes.map(({ name }) => modelOf(item, name)));

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

/** So many of the second size of each item, as the command takes it. */
const lines = (asked: Readonly<Record<string, number>>): readonly OrderLine[] =>
  Object.entries(asked).map(([name, count]) => ({ model: modelOf(itemNamed(name), itemNamed(name).sizes[1]?.name), count }));

let solver: Solver;
beforeAll(async () => { solver = await loadSolver(); });
const order = (asked: Readonly<Record<string, number>>, stock: Stock | null = null): CutOrder => planOrder(lines(asked), stock, known, solver);

/** How often a letter comes out of all sheets. */
const tubesOf = ({ tubes }: CutOrder, letter: string): number => sum(tubes.map(({ times, pieces }) => times * pieces.filter((each) => each === letter).length));
const panelsOf = ({ panels }: CutOrder, letter: string): number => sum(panels.map(({ times, pieces }) => times * pieces.filter((each) => each.letter === letter).length));

function eachPieceOnce(plan: CutOrder): void {
  for (const { letter, count } of plan.tubePieces) expect([letter, tubesOf(plan, letter)]).toEqual([letter, count]);
  for (const { letter, count } of plan.panelPieces) expect([letter, panelsOf(plan, letter)]).toEqual([letter, count]);
}

describe.each([
  { asked: { rack: 6, chair: 24 }, tubes: 125, panels: 38 },
  { asked: { desk: 12, stool: 12 }, tubes: 69, panels: 24 },
])('the demo order $asked from whole kits', ({ asked, tubes, panels }) => {
  let plan: CutOrder;
  beforeAll(() => { plan = order(asked); });

  it('is proven the best: no plan needs fewer tubes or panels', () => {
    expect(plan.tubeThrift).toMatchObject({ used: tubes, fromKits: tubes, fewestFromKits: tubes, proven: true });
    expect(plan.panelThrift).toMatchObject({ used: panels, fromKits: panels, fewestFromKits: panels, proven: true });
  });

  it('cuts every piece once, those of the models', () => {
    eachPieceOnce(plan);
    const wanted = sum(plan.lines.map(({ model, count }) => count * model.parts.filter(({ shape }) => shape.form === 'tube').length));
    expect(sum(plan.tubePieces.map(({ count }) => count))).toBe(wanted);
    for (const piece of [...plan.tubePieces, ...plan.panelPieces]) expect(sum(piece.uses.map(({ count }) => count))).toBe(piece.count);
  });

  it('saws at places counted from one end, each piece as long as it is, less the play at most', () => {
    const { sawKerf } = plan.kit.practice;
    expect(sawKerf).toBeLessThanOrEqual(plan.kit.joint.endPlay);
    for (const { pieces, ends, usable, shorter, offCut } of plan.tubes) {
      const lengths = pieces.map((letter) => plan.tubePieces.find((piece) => piece.letter === letter)?.length ?? NaN);
      ends.forEach((end, index) => { expect(end).toBeCloseTo(sum(lengths.slice(0, index + 1)), 9); });
      expect(ends.at(-1)).toBeLessThanOrEqual(usable + 0.05);
      expect(shorter).toBeLessThanOrEqual(plan.kit.joint.endPlay);
      expect(offCut === 0 || Math.abs(offCut - (usable - (ends.at(-1) ?? 0) - sawKerf)) < 1e-9).toBe(true);
    }
  });

  it('asks for as many kits as the part that runs out first', () => {
    const { contents } = plan.kit;
    expect(plan.kits.kits).toBe(Math.max(...plan.kits.parts.map(({ kits }) => kits ?? 0)));
    expect(plan.kits.parts.find(({ kind }) => kind === 'tube')).toEqual({ kind: 'tube', needed: tubes, kits: Math.ceil(tubes / (contents?.tubes ?? NaN)) });
    expect(plan.kits.parts.find(({ kind }) => kind === 'panel')).toEqual({ kind: 'panel', needed: panels, kits: Math.ceil(panels / (contents?.panels ?? NaN)) });
  });
});

describe('the demo order over the counted stock', () => {
  let plan: CutOrder;
  beforeAll(() => { plan = order({ rack: 12, chair: 16 }, counted); });

  it('cuts every piece once, from no pile more than it holds, and nothing cracked', () => {
    eachPieceOnce(plan);
    for (const { name, count, cracked } of counted.tubes) {
      const taken = sum(plan.tubes.filter(({ source }) => source.from === 'stock' && source.name === name).map(({ times }) => times));
      expect(taken).toBeLessThanOrEqual(cracked ? 0 : count);
    }
    for (const { name, count } of counted.panels) expect(sum(plan.panels.filter(({ source }) => source.name === name).map(({ times }) => times))).toBeLessThanOrEqual(count);
  });

  it('is proven the best in tubes, and within 3 % of the bound in panels', () => {
    expect(plan.tubeThrift.proven).toBe(true);
    expect(plan.panelThrift.fromKits).toBe(plan.panelThrift.fewestFromKits);
    expect(plan.panelThrift.stock).toBeLessThanOrEqual(1.03 * plan.panelThrift.leastStock);
  });

  it('saws nothing from a damaged end and lays no piece on damage', () => {
    for (const { ends, usable } of plan.tubes) expect(ends.at(-1)).toBeLessThanOrEqual(usable + 0.05);
    for (const { pieces, defects } of plan.panels) {
      for (const piece of pieces) {
        for (const defect of defects) {
          const apart = piece.x + piece.width <= defect.x + 0.06 || defect.x + defect.width <= piece.x + 0.06 || piece.y + piece.height <= defect.y + 0.06 || defect.y + defect.height <= piece.y + 0.06;
          expect(apart).toBe(true);
        }
      }
    }
  });

  it('names one piece of each letter of which there are several as the pattern of the others, on the first sheet that has it', () => {
    for (const { letter, count } of plan.panelPieces) {
      const own = plan.panels.flatMap(({ pieces }) => pieces.filter((piece) => piece.letter === letter));
      expect([letter, own.map(({ isPattern }) => isPattern)]).toEqual([letter, own.map((_, place) => count > 1 && place === 0)]);
    }
  });

  it('tells what is short', () => {
    const joints = sum(plan.lines.map(({ model, count }) => count * model.parts.filter(({ kind }) => kind === 'joint').length));
    expect(plan.counted.find(({ kind }) => kind === 'joint')).toEqual({ kind: 'joint', needed: joints, there: counted.joints, short: joints - counted.joints });
    // Cut for its loops and knots, none is as short as the pile of short ones; what the long ones do not give comes from further whole ones.
    const cables = plan.counted.find(({ kind }) => kind === 'cable');
    expect(cables?.there).toBe(sum(counted.cables.map(({ count }) => count)));
    expect(cables?.short).toBe(Math.max(0, (cables?.needed ?? NaN) - (counted.cables.find(({ name }) => name === 'long')?.count ?? NaN)));
    expect(cables?.needed).toBe(cordsFor(plan.lines.flatMap(({ model, count }) => model.parts.flatMap(({ shape }) => (shape.form === 'cable' ? Array.from({ length: count }, () => cableEnds(shape.length).cut) : []))), 3000));
    expect(plan.kits.parts.find(({ kind }) => kind === 'tube')?.needed).toBe(plan.tubeThrift.fromKits);
  });
});

describe('a stock that lacks', () => {
  it('is made up for by whole kits, as few pieces of them as can be', () => {
    const { tubeThrift, panelThrift } = order({ stool: 2 }, { ...counted, tubes: [], panels: [] });
    expect(tubeThrift).toMatchObject({ used: tubeThrift.fromKits, fewestFromKits: tubeThrift.fromKits, proven: true });
    expect(panelThrift).toMatchObject({ used: 2, fromKits: 2, fewestFromKits: 2 });
  });

  it('cuts several pieces from a cable that is long enough, from short ones first', () => {
    const two = { ...counted, cables: [{ name: 'short', count: 5, length: 500 }, { name: 'long', count: 1, length: 3000 }] };
    expect(order({ stool: 1 }, two).counted.find(({ kind }) => kind === 'cable')).toEqual({ kind: 'cable', needed: 4, there: 6, short: 3 });
    expect(order({ desk: 1 }, two).counted.find(({ kind }) => kind === 'cable')).toEqual({ kind: 'cable', needed: 4, there: 6, short: 3 });
    // Without a stock as many whole ones as hold the pieces: a rack's are too long for two.
    expect(order({ stool: 1 }).counted.find(({ kind }) => kind === 'cable')).toEqual({ kind: 'cable', needed: 4, there: null, short: 4 });
    expect(order({ rack: 1 }).counted.find(({ kind }) => kind === 'cable')?.needed).toBe(6);
  });
});

describe('what is refused', () => {
  it('items of another kit than the stock, told by name', () => {
    expect(() => order({ stool: 1 }, { ...counted, kit: 'other-kit' })).toThrow('stool is built from the kit stall-kit, not other-kit: plan each kit\'s items apart');
  });

  it('a piece longer than every tube, larger than every panel', () => {
    const [line] = lines({ stool: 1 });
    if (line === undefined) throw new Error('a line is needed');
    const long = { ...line, model: { ...line.model, tubes: [{ kind: 'post' as const, length: 2500, count: 1 }] } };
    expect(() => planOrder([long], null, known, solver)).toThrow(new RangeError('a tube of 2500 mm is longer than the tubes there are: at most 2000 mm'));
    const wide = { ...line, model: { ...line.model, patterns: line.model.patterns.map((pattern) => ({ ...pattern, min: [0, 0] as const, max: [1600, 300] as const })) } };
    expect(() => planOrder([wide], null, known, solver)).toThrow(new RangeError('a piece of 1600.0 × 300.0 mm does not fit on the panels there are'));
  });
});

describe('letters', () => {
  it('are never read as numerals, and go on after the last', () => {
    const letters = Array.from({ length: 60 }, (_, place) => letterOf(place));
    expect(letters.slice(0, 3)).toEqual(['A', 'B', 'C']);
    expect(letters.join('')).not.toMatch(/[IOQ]/);
    expect(new Set(letters).size).toBe(60);
    expect(letters[23]).toBe('AA');
  });
});

describe('what an off-cut serves', () => {
  it('is as long as the off-cut at most, the longest first, each item and part once', () => {
    const serves = servesTube(known, 650);
    expect(serves.length).toBeGreaterThan(0);
    const lengths = serves.map(({ sides }) => sides[0] ?? 0);
    expect(lengths.every((length) => length <= 650)).toBe(true);
    expect([...lengths].sort((a, b) => b - a)).toEqual(lengths);
    expect(new Set(serves.map(({ item, kind }) => `${item} ${kind}`)).size).toBe(serves.length);
    expect(lengths[0]).toBe(Math.max(...known.flatMap(({ tubes }) => tubes.map(({ length }) => length)).filter((length) => length <= 650)));
  });

  it('fits either way round on a panel, and is nothing on a sliver', () => {
    expect(servesPanel(known, [300, 1500])).toEqual(servesPanel(known, [1500, 300]));
    expect(servesPanel(known, [1500, 20])).toEqual([]);
    expect(servesTube(known, 100)).toEqual([]);
  });
});
