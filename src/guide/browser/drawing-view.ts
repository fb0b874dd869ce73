import type { NearView } from './near-view.ts';
import { WHOLE, zoomed, type Zoom } from './zoom.ts';

/** A copy of a drawing that fills the stage, to be enlarged and moved about. */
export function drawingView(drawing: SVGElement, stage: HTMLElement): NearView {
  const element = drawing.cloneNode(true) as SVGElement;
  let zoom: Zoom = WHOLE;
  const apply = (next: Zoom): void => {
    zoom = next;
    element.style.transform = `translate(${next.x}px,${next.y}px) scale(${next.scale})`;
  };
  const frame = (): { width: number; height: number } => ({ width: stage.clientWidth, height: stage.clientHeight });
  return {
    element,
    push: (x, y) => { apply(zoomed(zoom, { x: 0, y: 0 }, 1, { x, y }, frame())); },
    enlarge: (about, factor, by) => { apply(zoomed(zoom, about, factor, by, frame())); },
    reset: () => { apply(WHOLE); },
    play: null,
    leave: () => undefined,
  };
}
