import type { PackedSolids } from '../data.ts';
import { all, one, onPress } from './elements.ts';
import { spread, watchFingers, type Finger, type FingerWatcher } from './fingers.ts';
import type { Look } from './look.ts';
import { drawingView } from './drawing-view.ts';
import { modelView, type ModelViews } from './model-view.ts';
import type { NearView } from './near-view.ts';
import type { Panels } from './panels.ts';

/** The panel that brings a drawing or a model near. */
export interface Near {
  /** Tells by the buttons what a page has to look at. */
  readonly offer: (page: HTMLElement) => void;
  /** `pinched` by two fingers that stay on it. */
  readonly lookAt: (drawing: Element, pinched?: boolean) => void;
  readonly push: (x: number, y: number) => void;
  readonly enlarge: (factor: number) => void;
  readonly isOpen: () => boolean;
  readonly fingers: FingerWatcher;
}

/** Two taps within this time, ms, and this distance, px, show the whole again. */
const TWICE = { time: 350, apart: 24 };
const STEP = 1.5;
/** By then a page is on the screen, ms. */
const SHOWN = 100;

export function newNear(solids: PackedSolids, panels: Panels, look: Look, current: () => HTMLElement): Near {
  const stage = one('#stage');
  let view: NearView | null = null;
  let models: ModelViews | null | undefined;

  const open = (next: NearView): void => {
    view = next;
    stage.textContent = '';
    stage.appendChild(next.element);
    play.disabled = next.play === null;
    panels.open('near', () => {
      if (view !== null) view.leave();
      view = null;
      stage.textContent = '';
    });
    next.begin();
    if (next.play !== null && !window.matchMedia('(prefers-reduced-motion: reduce)').matches) next.play();
  };
  const lookAt = (drawing: Element, pinched = false): void => {
    const svg = drawing.querySelector('svg');
    if (svg !== null) open(drawingView(svg, stage, pinched));
  };
  /** Whether the phone can draw models is found out once, after a page that has one is shown: it takes a while. */
  const findOut = (): void => {
    if (models !== undefined) return;
    models = modelView(solids, look.dark, () => { models = null; panels.close(); offer(current()); });
    offer(current());
  };
  const offer = (page: HTMLElement): void => {
    const hasModel = solids.stands[page.id] !== undefined;
    closer.disabled = page.querySelector('.drawing') === null;
    turn.disabled = !hasModel || !models;
    if (hasModel && models === undefined) setTimeout(findOut, SHOWN);
  };
  const enlarge = (factor: number): void => {
    if (view !== null) view.enlarge({ x: stage.clientWidth / 2, y: stage.clientHeight / 2 }, factor, { x: 0, y: 0 });
  };

  const closer = onPress('closer', () => { lookAt(mostSeen(all('.drawing', current()))); });
  const turn = onPress('turn', () => {
    const stand = solids.stands[current().id];
    const label = one('.drawing svg', current()).getAttribute('aria-label') || '';
    if (stand !== undefined && models) open(models.show(stand, stage, label));
  });
  const play = onPress('play', () => { if (view !== null && view.play !== null) view.play(); });
  onPress('larger', () => { enlarge(STEP); });
  onPress('smaller', () => { enlarge(1 / STEP); });
  all('.drawing').forEach((drawing) => { drawing.addEventListener('click', () => { lookAt(drawing); }); });

  const fingers = stageFingers(stage, () => view);
  watchFingers(stage, fingers, true);
  stage.addEventListener('wheel', (event) => {
    event.preventDefault();
    if (view !== null) view.enlarge(within(stage, { x: event.clientX, y: event.clientY }), event.deltaY < 0 ? 1.15 : 1 / 1.15, { x: 0, y: 0 });
  }, { passive: false });
  window.addEventListener('resize', () => { if (view !== null) view.reset(); });
  return { offer, lookAt, enlarge, fingers, push: (x, y) => { if (view !== null) view.push(x, y); }, isOpen: () => view !== null };
}

/** The drawing that takes up most of the screen. */
function mostSeen(drawings: readonly HTMLElement[]): HTMLElement {
  const seen = (drawing: HTMLElement): number => {
    const { top, bottom } = drawing.getBoundingClientRect();
    return Math.min(bottom, window.innerHeight) - Math.max(top, 0);
  };
  return drawings.reduce((best, drawing) => (seen(drawing) > seen(best) + 1 ? drawing : best));
}

function within(stage: HTMLElement, { x, y }: Finger): Finger {
  const { left, top } = stage.getBoundingClientRect();
  return { x: x - left, y: y - top };
}

/** One finger moves or turns, two enlarge, two taps show the whole again. */
function stageFingers(stage: HTMLElement, view: () => NearView | null): FingerWatcher {
  let last: readonly Finger[] = [];
  let tap: { readonly at: Finger; readonly time: number } | null = null;
  return {
    down: (fingers, _, now) => {
      last = fingers;
      const [first] = fingers;
      if (first === undefined) return;
      const again = tap !== null && fingers.length === 1 && now - tap.time < TWICE.time && Math.hypot(first.x - tap.at.x, first.y - tap.at.y) < TWICE.apart;
      tap = again || fingers.length > 1 ? null : { at: first, time: now };
      const shown = view();
      if (again && shown !== null) shown.reset();
    },
    move: (fingers) => {
      const shown = view();
      const [was, is] = [spread(last), spread(fingers)];
      const by = { x: is.middle.x - was.middle.x, y: is.middle.y - was.middle.y };
      if (shown !== null && fingers.length === last.length) {
        if (fingers.length === 1) shown.push(by.x, by.y);
        else if (was.apart > 0) shown.enlarge(within(stage, was.middle), is.apart / was.apart, by);
      }
      last = fingers;
      return true;
    },
    up: (fingers) => {
      last = fingers;
      const shown = view();
      if (fingers.length === 0 && shown !== null) shown.settle();
    },
  };
}
