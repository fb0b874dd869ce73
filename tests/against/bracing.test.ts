// Crossed cables and stiff decks against the exact change of a bar's length and a plane frame of springs solved as a matrix (C).
import { lusolve } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { pushDeck, tautDiagonalStiffness, type Wall } from './rigid-deck.ts';

describe('a taut diagonal', () => {
  it('answers a small shift of its top as a bar of that length does (C)', () => {
    const [run, rise, stretchStiffness, shift] = [1040, 1320, 60_000, 1e-3];
    const length = Math.hypot(run, rise);
    const longer = Math.hypot(run + shift, rise);
    const pull = (stretchStiffness * (longer - length)) / length;
    const sideways = (pull * (run + shift)) / longer;
    expect(tautDiagonalStiffness(stretchStiffness, length, run)).toBeCloseTo(sideways / shift, 4);
  });
});

describe('a stiff deck on walls', () => {
  const walls: readonly Wall[] = [
    { along: 'x', offset: 270, stiffness: 13.7 },
    { along: 'y', offset: -520, stiffness: 6 },
    { along: 'y', offset: 520, stiffness: 6 },
  ];
  const skew: readonly Wall[] = [
    { along: 'x', offset: 270, stiffness: 9 }, { along: 'x', offset: -270, stiffness: 4 },
    { along: 'y', offset: -520, stiffness: 7 }, { along: 'y', offset: 500, stiffness: 3 },
  ];

  /** Shift in x, shift in y and turn of the deck, by the three equations of balance. */
  function solved(held: readonly Wall[], force: readonly [number, number]): { x: number; y: number; turn: number } {
    const grid = [[0, 0, 0], [0, 0, 0], [0, 0, 0]];
    for (const { along, offset, stiffness } of held) {
      const row = along === 'x' ? [1, 0, -offset] : [0, 1, offset];
      row.forEach((a, i) => { row.forEach((b, j) => { const line = grid[i]; if (line) line[j] = (line[j] ?? 0) + stiffness * a * b; }); });
    }
    const [x, y, turn] = (lusolve(grid, [...force, 0]) as number[][]).map((row) => row[0] ?? NaN);
    return { x: x ?? NaN, y: y ?? NaN, turn: turn ?? NaN };
  }

  it.each([['three walls', walls], ['four uneven walls', skew]] as const)('%s: drift of the worst edge and every wall force (C)', (_, held) => {
    const { x, y, turn } = solved(held, [40, 0]);
    const pushed = pushDeck(held, 40, 'x', 270);
    expect(pushed.drift).toBeCloseTo(Math.max(Math.abs(x - turn * 270), Math.abs(x + turn * 270)), 9);
    held.forEach((wall, index) => {
      const force = wall.stiffness * Math.abs(wall.along === 'x' ? x - turn * wall.offset : y + turn * wall.offset);
      expect(pushed.wallForces[index]).toBeGreaterThanOrEqual(force - 1e-9);
    });
  });

  it('pushed along the side walls it only shifts: F / Σk (C)', () => {
    expect(pushDeck(walls, 40, 'y', 520).drift).toBeCloseTo(40 / 12, 9);
  });

  it('with a single wall there is nothing that stops it turning', () => {
    expect(pushDeck([{ along: 'x', offset: 270, stiffness: 13.7 }], 40, 'x', 270).drift).toBe(Infinity);
  });
});
