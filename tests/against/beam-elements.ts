import { lusolve, matrix, multiply, type Matrix } from 'mathjs';

/**
 * An independent reference: a straight beam of two-node cubic elements (deflection and slope at each node),
 * solved as a linear system. It shares no formula with the rooms.
 */
export interface Beam {
  readonly length: number;
  readonly modulus: number;
  readonly second: number;
  readonly elements: number;
  /** Numbers of the held freedoms: 2n is the deflection of node n, 2n + 1 its slope. */
  readonly held: readonly number[];
}

type Grid = number[][];

/** Deflections and slopes of all nodes under loads at the freedoms. */
export function solveBeam(beam: Beam, loads: readonly number[]): readonly number[] {
  return solveFree(beam, bendingGrid(beam), loads);
}

/** Loads of an even line load, N/mm, on all nodes. */
export function evenLoad(beam: Beam, lineLoad: number): number[] {
  const h = beam.length / beam.elements;
  const loads = new Array<number>(2 * (beam.elements + 1)).fill(0);
  const share = [h / 2, h ** 2 / 12, h / 2, -(h ** 2) / 12];
  for (let element = 0; element < beam.elements; element += 1) {
    share.forEach((part, index) => { loads[2 * element + index] = (loads[2 * element + index] ?? 0) + part * lineLoad; });
  }
  return loads;
}

/** The least load at which the beam buckles, N, by inverse iteration on K x = P G x. */
export function bucklingLoad(beam: Beam): number {
  const bending = bendingGrid(beam);
  const geometry = assemble(beam, (h) => [
    [36, 3 * h, -36, 3 * h], [3 * h, 4 * h * h, -3 * h, -h * h], [-36, -3 * h, 36, -3 * h], [3 * h, -h * h, -3 * h, 4 * h * h],
  ].map((row) => row.map((value) => value / (30 * h))));
  let shape: readonly number[] = bending.map((_, index) => Math.sin(1 + index));
  let load = 0;
  for (let round = 0; round < 60; round += 1) {
    const right = multiply(matrix(geometry), matrix([...shape])) as Matrix;
    const next = solveFree(beam, bending, right.toArray() as number[]);
    const size = Math.hypot(...next);
    load = Math.hypot(...free(beam, shape)) / size;
    shape = next.map((value) => value / size);
  }
  return load;
}

const bendingGrid = (beam: Beam): Grid => assemble(beam, (h) => [
  [12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h],
].map((row) => row.map((value) => (value * beam.modulus * beam.second) / h ** 3)));

function assemble(beam: Beam, element: (h: number) => Grid): Grid {
  const size = 2 * (beam.elements + 1);
  const grid = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const own = element(beam.length / beam.elements);
  for (let first = 0; first < 2 * beam.elements; first += 2) {
    own.forEach((row, i) => { row.forEach((value, j) => {
      const target = grid[first + i];
      if (target) target[first + j] = (target[first + j] ?? 0) + value;
    }); });
  }
  return grid;
}

const free = (beam: Beam, values: readonly number[]): number[] => values.filter((_, index) => !beam.held.includes(index));

function solveFree(beam: Beam, grid: Grid, loads: readonly number[]): readonly number[] {
  const inner = free(beam, loads.map((_, index) => index));
  const solved = lusolve(inner.map((i) => inner.map((j) => grid[i]?.[j] ?? 0)), inner.map((i) => loads[i] ?? 0)) as number[][];
  const all = new Array<number>(loads.length).fill(0);
  inner.forEach((index, place) => { all[index] = solved[place]?.[0] ?? 0; });
  return all;
}
