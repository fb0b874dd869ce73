import { useCallback, useEffect, useRef, useState } from 'react';
import { askAlive } from './asking.ts';

/** How often is asked whether the program still runs, ms. */
const EVERY = 4000;

export interface Aliveness {
  /** The program answered when it was last asked. */
  readonly isAlive: boolean;
  /** How often it has come back: what it broke off is begun anew. */
  readonly returns: number;
  /** The marks of its files by now; null until it has answered. */
  readonly marks: Readonly<Record<string, string>> | null;
  /** How many makings the program has begun, as far as is known. */
  readonly begun: number;
  /** Asks at once. */
  readonly ask: () => Promise<void>;
}

/** Whether the program behind the page still runs, and what its files are. Asked now and then, and whenever the page is looked at again. */
export function useAlive(): Aliveness {
  const [state, setState] = useState<Omit<Aliveness, 'ask'>>({ isAlive: true, returns: 0, marks: null, begun: 0 });
  const isAsking = useRef(false);
  const ask = useCallback(async (): Promise<void> => {
    if (isAsking.current) return;
    isAsking.current = true;
    try {
      const { marks, begun } = await askAlive();
      setState((before) => ({ isAlive: true, returns: before.returns + (before.isAlive ? 0 : 1), marks: sameOr(before.marks, marks), begun }));
    } catch {
      setState((before) => (before.isAlive ? { ...before, isAlive: false } : before));
    } finally {
      isAsking.current = false;
    }
  }, []);
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
  return { ...state, ask };
}

/** The old object where nothing has changed, so that nothing is drawn again. */
const sameOr = (before: Aliveness['marks'], now: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  (before !== null && JSON.stringify(before) === JSON.stringify(now) ? before : now);
