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
/** Smaller than its frame only while two fingers hold it. */
const LEAST = 0.25;

/** Enlarged by a factor about a place that stays where it is, then moved; `isHeld` keeps it no smaller than the frame and the frame filled. */
export function zoomed({ scale, x, y }: Zoom, about: Finger, factor: number, by: Finger, frame: Frame, isHeld = true): Zoom {
  const larger = Math.min(MOST, Math.max(isHeld ? 1 : LEAST, scale * factor));
  const grown = larger / scale;
  const moved = { x: about.x + (x - about.x) * grown + by.x, y: about.y + (y - about.y) * grown + by.y };
  return { scale: larger, x: isHeld ? held(moved.x, frame.width, larger) : moved.x, y: isHeld ? held(moved.y, frame.height, larger) : moved.y };
}

const held = (offset: number, length: number, scale: number): number => Math.min(0, Math.max(length * (1 - scale), offset));

/** Where a drawing of that shape stands, and how wide, in a frame that shows all of it in the middle, px. */
export function fitted(shape: Frame, frame: Frame): { readonly x: number; readonly y: number; readonly width: number } {
  const scale = Math.min(frame.width / shape.width, frame.height / shape.height);
  return { x: (frame.width - scale * shape.width) / 2, y: (frame.height - scale * shape.height) / 2, width: scale * shape.width };
}
