import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';

/** A part of a page, mm. */
export interface Part {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A page as ink: 0 white to 1 black at each pixel, asked for by mm from the upper left corner of the sheet. */
export interface InkedPage {
  /** Mean ink along a line across `along` from `from` to `to`, at each pixel step along x or y. */
  readonly profile: (axis: 'x' | 'y', from: number, to: number, across: readonly [number, number]) => Profile;
}

/** Ink along a line: its first place in mm, the step in mm, and the ink at each step. */
export interface Profile {
  readonly start: number;
  readonly step: number;
  readonly ink: readonly number[];
}

/**
 * A part of a page (mm from its upper left corner), rendered by poppler and read by pngjs, neither of which printed
 * it. `page` counts from 1. Ink is asked for by places on the whole page.
 */
export function renderInk(pdf: Uint8Array, page: number, part: Part, dotsPerInch = 300): InkedPage {
  const step = 25.4 / dotsPerInch;
  const [left, top, width, height] = [part.x, part.y, part.width, part.height].map((length) => Math.round(length / step)) as [number, number, number, number];
  const png = rendered(pdf, ['-r', String(dotsPerInch), '-f', String(page), '-l', String(page), ...['-x', left, '-y', top, '-W', width, '-H', height].map(String)]);
  const inkAt = (x: number, y: number): number => {
    if (x < left || y < top || x >= left + png.width || y >= top + png.height) throw new RangeError('a place outside the rendered part');
    return 1 - (png.data[4 * ((y - top) * png.width + (x - left))] ?? 255) / 255;
  };
  const pixels = (from: number, to: number): readonly number[] => {
    const first = Math.round(from / step);
    return Array.from({ length: Math.max(1, Math.round(to / step) - first) }, (_, index) => first + index);
  };
  return {
    profile: (axis, from, to, across) => {
      const along = pixels(from, to);
      const over = pixels(...across);
      const ink = along.map((at) => over.reduce((sum, other) => sum + (axis === 'x' ? inkAt(at, other) : inkAt(other, at)), 0) / over.length);
      return { start: ((along[0] ?? 0) + 0.5) * step, step, ink };
    },
  };
}

/** Middles of the dark runs of a profile, weighted by their ink, mm. */
export function lines({ start, step, ink }: Profile, least: number): readonly number[] {
  const runs: number[][] = [];
  ink.forEach((value, index) => {
    if (value < least) return;
    const last = runs.at(-1);
    if (last?.at(-1) === index - 1) last.push(index);
    else runs.push([index]);
  });
  return runs.map((run) => {
    // The pale pixels on either side belong to the line as well.
    const wide = [...new Set([(run[0] ?? 0) - 1, ...run, (run.at(-1) ?? 0) + 1])].filter((index) => index >= 0 && index < ink.length);
    const weight = wide.reduce((sum, index) => sum + (ink[index] ?? 0), 0);
    return start + (step * wide.reduce((sum, index) => sum + index * (ink[index] ?? 0), 0)) / weight;
  });
}

function rendered(pdf: Uint8Array, how: readonly string[]): PNG {
  const folder = mkdtempSync(join(tmpdir(), 'ink-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, pdf);
    execFileSync('pdftoppm', ['-gray', '-png', '-singlefile', ...how, file, join(folder, 'page')]);
    return PNG.sync.read(readFileSync(join(folder, 'page.png')));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
