/** An upright face that resists a push in its own plane. Offset across from the middle of the plan, mm; stiffness N/mm. */
export interface Wall {
  readonly along: 'x' | 'y';
  readonly offset: number;
  readonly stiffness: number;
}

export interface Pushed {
  /** Of the edge that moves furthest, mm. */
  readonly drift: number;
  /** Greatest force in each wall, N, in the order given, whichever way the push comes. */
  readonly wallForces: readonly number[];
}

/** Stiffness of a face with one taut diagonal, N/mm: E A / L · cos² of its slope. */
export const tautDiagonalStiffness = (stretchStiffness: number, length: number, run: number): number =>
  (stretchStiffness / length) * (run / length) ** 2;

/**
 * A deck, stiff in its plane, pushed in its middle along x or y and held by walls: it shifts by F / Σk and
 * turns about the walls' centre of stiffness by F·arm / Σk·o² (statics of a stiff plate on springs).
 * `reach` is the half size of the deck across the push. Infinite where the walls cannot hold it.
 */
export function pushDeck(walls: readonly Wall[], force: number, along: 'x' | 'y', reach: number): Pushed {
  const parallel = walls.filter((wall) => wall.along === along);
  const across = walls.filter((wall) => wall.along !== along);
  const stiffness = total(parallel);
  const arm = centreOf(parallel);
  const acrossCentre = centreOf(across);
  const lever = (wall: Wall): number => wall.offset - (wall.along === along ? arm : acrossCentre);
  const turning = walls.reduce((sum, wall) => sum + wall.stiffness * lever(wall) ** 2, 0);
  const turn = arm === 0 ? 0 : (force * Math.abs(arm)) / turning;
  return {
    drift: force / stiffness + turn * (reach + Math.abs(arm)),
    wallForces: walls.map((wall) => {
      const shift = wall.along === along ? (force * wall.stiffness) / stiffness : 0;
      return shift + wall.stiffness * Math.abs(lever(wall)) * turn;
    }),
  };
}

const total = (walls: readonly Wall[]): number => walls.reduce((sum, wall) => sum + wall.stiffness, 0);

function centreOf(walls: readonly Wall[]): number {
  const stiffness = total(walls);
  return stiffness === 0 ? 0 : walls.reduce((sum, wall) => sum + wall.stiffness * wall.offset, 0) / stiffness;
}
