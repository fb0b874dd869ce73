import type { Page } from 'puppeteer';

/** A place on the screen, CSS px. */
export interface Point { readonly x: number; readonly y: number }

/** Fingers on a phone's screen. Each call ends when the page has been told of all of it. */
export interface Fingers {
  /** Along straight ways, all at once; they rest before they are lifted, so that nothing rolls on. */
  readonly drag: (...ways: readonly (readonly [from: Point, to: Point])[]) => Promise<void>;
  /** On the middle of the element that a selector finds. Ends when it has been pressed. */
  readonly tap: (selector: string) => Promise<void>;
  /** Twice on one place, soon enough to be taken together. */
  readonly tapTwice: (at: Point) => Promise<void>;
}

/** When a touch happens by its own clock, s: what it means hangs on these times, not on how fast the machine is. */
const MOVE = 0.016;
const REST = 0.3;
const TAP = 0.05;
const BETWEEN_TAPS = 0.1;
const BETWEEN_GESTURES = 1;
const MOVES = 8;

interface Touch { readonly type: 'touchStart' | 'touchMove' | 'touchEnd'; readonly points: readonly Point[]; readonly after: number }

export async function fingersOn(page: Page): Promise<Fingers> {
  const session = await page.createCDPSession();
  let last = 0;
  /** All are sent before the first is answered: a finger that is held for long by a slow machine would mean another thing. */
  const send = async (touches: readonly Touch[]): Promise<void> => {
    last = Math.max(Date.now() / 1000, last + BETWEEN_GESTURES);
    await Promise.all(touches.map(({ type, points, after }) => {
      last += after;
      return session.send('Input.dispatchTouchEvent', { type, timestamp: last, touchPoints: points.map(({ x, y }, id) => ({ x, y, id })) });
    }));
  };
  return {
    drag: async (...ways) => {
      const at = (share: number): readonly Point[] => ways.map(([from, to]) => ({ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }));
      const moves = Array.from({ length: MOVES }, (_, move): Touch => ({ type: 'touchMove', points: at((move + 1) / MOVES), after: MOVE }));
      await heard(page, ['touchend', 'touchcancel'], 1, () => send([{ type: 'touchStart', points: at(0), after: 0 }, ...moves, { type: 'touchEnd', points: [], after: REST }]));
    },
    tap: async (selector) => {
      const element = await page.waitForSelector(selector);
      if (element === null) throw new Error(`nothing to tap at ${selector}`);
      await element.scrollIntoView();
      const at = await element.clickablePoint();
      await heard(page, ['click'], 1, () => send(tapOn(at, 0)));
    },
    tapTwice: (at) => heard(page, ['touchend'], 2, () => send([...tapOn(at, 0), ...tapOn(at, BETWEEN_TAPS)])),
  };
}

const tapOn = (at: Point, after: number): readonly Touch[] => [{ type: 'touchStart', points: [at], after }, { type: 'touchEnd', points: [], after: TAP }];

/** Does something and waits until the page has worked through so many of these events; touches count when the last finger is lifted. */
async function heard(page: Page, types: readonly string[], times: number, act: () => Promise<void>): Promise<void> {
  const all = await page.evaluateHandle((awaited, count) => ({
    come: new Promise<void>((resolve) => {
      let left = count;
      const hear = (event: Event): void => {
        if ('touches' in event && (event as TouchEvent).touches.length > 0) return;
        left -= 1;
        if (left > 0) return;
        for (const type of awaited) window.removeEventListener(type, hear);
        resolve();
      };
      for (const type of awaited) window.addEventListener(type, hear);
    }),
  }), types, times);
  await act();
  await all.evaluate(({ come }) => come);
  await all.dispose();
}
