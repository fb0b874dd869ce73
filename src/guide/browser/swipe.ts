import { watchFingers, type Finger } from './fingers.ts';
import type { Near } from './near.ts';
import type { Pages } from './pages.ts';

/** A swipe goes at least so far, px, and so much further across than down. */
const FAR = 48;
const FLAT = 1.5;

/** One finger across turns the page; two on a drawing bring it near, and go on to enlarge it. */
export function listenToSwipes(frame: HTMLElement, pages: Pages, near: Near): void {
  let begin: Finger | null = null;
  let pinching = false;
  watchFingers(frame, {
    down: (fingers, target, time) => {
      const drawing = target.closest('.drawing');
      begin = fingers.length === 1 ? fingers[0] || null : null;
      if (fingers.length === 2 && drawing !== null) {
        pinching = true;
        near.lookAt(drawing, true);
      }
      if (pinching) near.fingers.down(fingers, target, time);
    },
    move: (fingers) => {
      if (pinching) return near.fingers.move(fingers);
      const [now] = fingers;
      return begin !== null && now !== undefined && isAcross(begin, now);
    },
    up: (fingers, cancelled) => {
      if (pinching) {
        near.fingers.up(fingers, cancelled);
        pinching = fingers.length > 0;
      }
    },
  }, false);
  // Where the finger is lifted, the touch that ends is not among those that are left: it is read by itself.
  frame.addEventListener('touchend', ({ changedTouches, touches }) => {
    const last = changedTouches[0];
    if (begin !== null && last !== undefined && touches.length === 0 && !pinching) turnPage(begin, { x: last.clientX, y: last.clientY }, pages);
    begin = null;
  }, { passive: true });
}

const isAcross = (from: Finger, to: Finger): boolean =>
  Math.abs(to.x - from.x) > FAR / 4 && Math.abs(to.x - from.x) > FLAT * Math.abs(to.y - from.y);

function turnPage(from: Finger, to: Finger, pages: Pages): void {
  const across = to.x - from.x;
  const enlarged = window.visualViewport ? window.visualViewport.scale > 1.05 : false;
  if (enlarged || Math.abs(across) < FAR || !isAcross(from, to)) return;
  const onwards = document.documentElement.dir === 'rtl' ? across > 0 : across < 0;
  if (onwards) pages.next();
  else pages.previous();
}
