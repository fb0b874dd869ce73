import { useEffect, useRef, type RefObject } from 'react';
import { nearerEye, turnedEye, type Eye } from './eye.ts';

/** Rad a pixel of the pointer, and a press of an arrow key. */
const PER_PIXEL = 0.008;
const PER_KEY = Math.PI / 24;
const NEARER = 1.15;

type Change = (change: (eye: Eye) => Eye) => void;

/**
 * Turns the model by a pointer or by the arrow keys; two fingers, the plus and minus keys, or the wheel with Ctrl bring
 * it nearer. The wheel alone goes on scrolling the page.
 */
export function useTurning(place: RefObject<HTMLElement | null>, change: Change, home: Eye): void {
  const latest = useRef({ change, home });
  useEffect(() => { latest.current = { change, home }; });
  useEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const pointers = new Map<number, { readonly x: number; readonly y: number }>();
    const apart = (): number => {
      const [one, other] = [...pointers.values()];
      return one === undefined || other === undefined ? 0 : Math.hypot(one.x - other.x, one.y - other.y);
    };

    const down = (event: PointerEvent): void => {
      if (event.target instanceof Element && event.target.closest('button') !== null) return;
      pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      element.setPointerCapture(event.pointerId);
    };
    const move = (event: PointerEvent): void => {
      const last = pointers.get(event.pointerId);
      if (last === undefined) return;
      const before = apart();
      pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      if (pointers.size > 1) latest.current.change((eye) => nearerEye(eye, before > 0 ? apart() / before : 1));
      else latest.current.change((eye) => turnedEye(eye, -(event.clientX - last.x) * PER_PIXEL, (event.clientY - last.y) * PER_PIXEL));
    };
    const up = (event: PointerEvent): void => { pointers.delete(event.pointerId); };
    const wheel = (event: WheelEvent): void => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      latest.current.change((eye) => nearerEye(eye, Math.exp(-event.deltaY / 300)));
    };
    const key = (event: KeyboardEvent): void => {
      const done = keyChange(event.key, latest.current.home);
      if (done === null || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      latest.current.change(done);
    };

    const heard: readonly (readonly [string, (event: never) => void])[] = [
      ['pointerdown', down], ['pointermove', move], ['pointerup', up], ['pointercancel', up], ['wheel', wheel], ['keydown', key],
    ];
    for (const [name, hear] of heard) element.addEventListener(name, hear as EventListener, { passive: false });
    return () => { for (const [name, hear] of heard) element.removeEventListener(name, hear as EventListener); };
  }, [place]);
}

function keyChange(key: string, home: Eye): ((eye: Eye) => Eye) | null {
  switch (key) {
    case 'ArrowLeft': return (eye) => turnedEye(eye, PER_KEY, 0);
    case 'ArrowRight': return (eye) => turnedEye(eye, -PER_KEY, 0);
    case 'ArrowUp': return (eye) => turnedEye(eye, 0, PER_KEY);
    case 'ArrowDown': return (eye) => turnedEye(eye, 0, -PER_KEY);
    case '+':
    case '=': return (eye) => nearerEye(eye, NEARER);
    case '-': return (eye) => nearerEye(eye, 1 / NEARER);
    case 'Home': return () => home;
    default: return null;
  }
}
