import type { Finger } from './fingers.ts';

/** How a drawing that fills its frame is enlarged and moved: a place p of the frame is shown at `scale × p + (x, y)`, px. */
export interface Zoom {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface Frame {
  readonly width: number;
  readonly height: number;
}

export const WHOLE: Zoom = { scale: 1, x: 0, y: 0 };

/** A drawing's thinnest line, 0.25 mm, is then as thick as a finger nail is long. */
const MOST = 12;

/** Enlarged by a factor about a place that stays where it is, then moved; the frame stays filled. */
export function zoomed({ scale, x, y }: Zoom, about: Finger, factor: number, by: Finger, frame: Frame): Zoom {
  const larger = Math.min(MOST, Math.max(1, scale * factor));
  const grown = larger / scale;
  return {
    scale: larger,
    x: held(about.x + (x - about.x) * grown + by.x, frame.width, larger),
    y: held(about.y + (y - about.y) * grown + by.y, frame.height, larger),
  };
}

const held = (offset: number, length: number, scale: number): number => Math.min(0, Math.max(length * (1 - scale), offset));
