import type { NearView } from './near-view.ts';
import { fitted, WHOLE, zoomed, type Frame, type Zoom } from './zoom.ts';

/**
 * A copy of a drawing that fills the stage, to be enlarged and moved about. With `pinched` it begins where the drawing
 * stands on its page, so that what the fingers hold stays under them.
 */
export function drawingView(drawing: SVGSVGElement, stage: HTMLElement, pinched: boolean): NearView {
  const onPage = drawing.getBoundingClientRect();
  const paper = drawing.viewBox.baseVal;
  const element = drawing.cloneNode(true) as SVGElement;
  const frame = (): Frame => ({ width: stage.clientWidth, height: stage.clientHeight });
  let zoom: Zoom = WHOLE;
  let held = true;
  const apply = (next: Zoom): void => {
    zoom = next;
    element.style.transform = `translate(${next.x}px,${next.y}px) scale(${next.scale})`;
  };
  /** Whole in the stage, or as it stood on the page. */
  const begin = (): void => {
    if (!pinched) {
      apply(WHOLE);
      return;
    }
    held = false;
    const whole = fitted(paper, frame());
    const { left, top } = stage.getBoundingClientRect();
    const shown = fitted(paper, onPage);
    const scale = shown.width / whole.width;
    apply({ scale, x: onPage.left + shown.x - left - scale * whole.x, y: onPage.top + shown.y - top - scale * whole.y });
  };
  return {
    element,
    begin,
    push: (x, y) => { apply(zoomed(zoom, { x: 0, y: 0 }, 1, { x, y }, frame(), held)); },
    enlarge: (about, factor, by) => { apply(zoomed(zoom, about, factor, by, frame(), held)); },
    settle: () => {
      if (held) return;
      held = true;
      apply(zoomed(zoom, { x: 0, y: 0 }, 1, { x: 0, y: 0 }, frame(), held));
    },
    reset: () => { apply(WHOLE); },
    play: null,
    leave: () => undefined,
  };
}
