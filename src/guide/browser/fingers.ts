/** A finger's place on the screen, px. */
export interface Finger {
  readonly x: number;
  readonly y: number;
}

export interface FingerWatcher {
  /** Another finger is down, at this time of the event's own, ms: a slow phone hears of it later. */
  readonly down: (fingers: readonly Finger[], target: Element, time: number) => void;
  /** True where the motion is taken: then the browser does not scroll. */
  readonly move: (fingers: readonly Finger[]) => boolean;
  /** A finger is lifted; those that are left. `cancelled` where the browser took the motion over. */
  readonly up: (fingers: readonly Finger[], cancelled: boolean) => void;
}

/** A touch is followed by made-up mouse events for so long, ms. */
const ECHO = 1000;

/** Watches fingers, and with `mouse` also the mouse as one finger. By touch events: pointer events are younger than some phones. */
export function watchFingers(element: HTMLElement, watcher: FingerWatcher, mouse: boolean): void {
  let touched = -ECHO;
  const stamp = (event: TouchEvent): void => { touched = event.timeStamp; };
  element.addEventListener('touchstart', (event) => {
    stamp(event);
    watcher.down(fingersOf(event), event.target as Element, event.timeStamp);
  }, { passive: true });
  element.addEventListener('touchmove', (event) => {
    stamp(event);
    if (watcher.move(fingersOf(event)) && event.cancelable) event.preventDefault();
  }, { passive: false });
  element.addEventListener('touchend', (event) => { stamp(event); watcher.up(fingersOf(event), false); }, { passive: true });
  element.addEventListener('touchcancel', (event) => { stamp(event); watcher.up(fingersOf(event), true); }, { passive: true });
  if (!mouse) return;
  element.addEventListener('mousedown', (event) => {
    if (event.button !== 0 || event.timeStamp - touched < ECHO) return;
    event.preventDefault();
    const at = ({ clientX, clientY }: MouseEvent): readonly Finger[] => [{ x: clientX, y: clientY }];
    const moved = (later: MouseEvent): void => { watcher.move(at(later)); };
    const lifted = (): void => {
      document.removeEventListener('mousemove', moved);
      document.removeEventListener('mouseup', lifted);
      watcher.up([], false);
    };
    document.addEventListener('mousemove', moved);
    document.addEventListener('mouseup', lifted);
    watcher.down(at(event), event.target as Element, event.timeStamp);
  });
}

function fingersOf({ touches }: TouchEvent): readonly Finger[] {
  return Array.prototype.map.call(touches, ({ clientX, clientY }: Touch) => ({ x: clientX, y: clientY })) as Finger[];
}

/** Between two fingers: their middle and how far apart they are, px. */
export function spread([one, other]: readonly Finger[]): { readonly middle: Finger; readonly apart: number } {
  if (one === undefined || other === undefined) return { middle: one || { x: 0, y: 0 }, apart: 0 };
  return { middle: { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 }, apart: Math.hypot(one.x - other.x, one.y - other.y) };
}
