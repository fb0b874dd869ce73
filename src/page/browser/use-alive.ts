import { useCallback, useEffect, useRef, useState } from 'react';
import { askAlive } from './asking.ts';

/** A file's mark by its path. */
export type Marks = Readonly<Record<string, string>>;

/** How often is asked whether the program still runs, ms. */
const EVERY = 4000;

export interface Aliveness {
  /** The program answered when it was last asked. */
  readonly isAlive: boolean;
  /** How often it has come back: what it broke off is begun anew. */
  readonly returns: number;
  /** The marks of its files, asked for since the page has come to know what it knows of them; null until it has answered. */
  readonly marks: Marks | null;
  /** How many makings the program has begun, as far as is known. */
  readonly begun: number;
  /** Asks at once. */
  readonly ask: () => Promise<void>;
}

interface Answered extends Omit<Aliveness, 'ask'> {
  /** What the page knew when it asked: the answer tells nothing of what it has read or saved since. */
  readonly knowing: Marks | null;
}

/**
 * Whether the program behind the page still runs, and what its files are. Asked now and then, whenever the page is
 * looked at again, and when the page comes to know other marks of files (`known`), by reading or saving.
 */
export function useAlive(known: Marks): Aliveness {
  const [{ knowing, ...state }, setState] = useState<Answered>({ isAlive: true, returns: 0, marks: null, begun: 0, knowing: null });
  const isAsking = useRef(false);
  const latest = useRef(known);
  const ask = useCallback(async (): Promise<void> => {
    if (isAsking.current) return;
    isAsking.current = true;
    const asked = latest.current;
    try {
      const { marks, begun } = await askAlive();
      setState((before) => ({ isAlive: true, returns: before.returns + (before.isAlive ? 0 : 1), marks: sameOr(before.marks, marks), begun, knowing: asked }));
    } catch {
      setState((before) => (before.isAlive ? { ...before, isAlive: false } : before));
    } finally {
      isAsking.current = false;
    }
    if (asked !== latest.current) await ask();
  }, []);
  useEffect(() => {
    latest.current = known;
    void ask();
  }, [known, ask]);
  useEffect(() => {
    const timer = setInterval(() => { if (document.visibilityState === 'visible') void ask(); }, EVERY);
    const look = (): void => { void ask(); };
    document.addEventListener('visibilitychange', look);
    addEventListener('focus', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
      removeEventListener('focus', look);
    };
  }, [ask]);
  return { ...state, marks: knowing === known ? state.marks : null, ask };
}

/** The old object where nothing has changed, so that nothing is drawn again. */
const sameOr = (before: Aliveness['marks'], now: Marks): Marks =>
  (before !== null && JSON.stringify(before) === JSON.stringify(now) ? before : now);
