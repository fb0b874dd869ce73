import { Vector3, type Camera } from 'three';
import type { Vec3 } from '../../../model/index.ts';

/** A text that stays at a place of the model. */
export interface PlacedLabel {
  readonly key: string;
  readonly at: Vec3;
  readonly text: string;
  readonly look: 'letter' | 'caution' | 'fail';
}

/** Height of a label with a little air, and the width of a letter in it, pixels. */
const LABEL = { height: 28, letter: 8, ends: 18 };

/**
 * Moves the labels' elements to where their places are seen; one that would lie on another goes beside it, over or under.
 * `width` and `height` of the view are in pixels.
 */
export function placeLabels(holder: HTMLElement, labels: readonly PlacedLabel[], camera: Camera, width: number, height: number): void {
  const taken: { readonly x: number; readonly y: number; readonly half: number }[] = [];
  labels.forEach(({ at, text }, index) => {
    const element = holder.children[index];
    if (!(element instanceof HTMLElement)) return;
    const seen = new Vector3(...at).project(camera);
    const half = (text.length * LABEL.letter + LABEL.ends) / 2;
    const x = within(((seen.x + 1) / 2) * width, half, width);
    const home = within(((1 - seen.y) / 2) * height, LABEL.height / 2, height);
    const isFree = (y: number): boolean => y >= LABEL.height / 2 && y <= height - LABEL.height / 2
      && !taken.some((other) => Math.abs(other.x - x) < other.half + half && Math.abs(other.y - y) < LABEL.height);
    const aside = Array.from({ length: 2 * labels.length }, (_, turn) => Math.ceil(turn / 2) * LABEL.height * (turn % 2 === 0 ? 1 : -1));
    const y = aside.map((by) => home + by).find(isFree) ?? home;
    taken.push({ x, y, half });
    element.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) translate(-50%, -50%)`;
  });
}

const within = (at: number, half: number, size: number): number => Math.min(Math.max(at, half), size - half);
