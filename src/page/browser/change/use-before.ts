import { useEffect, useRef, useState } from 'react';
import type { Checked, Shaped } from '../workers/messages.ts';

/** What came of a size's values at an earlier time. */
export interface Before {
  readonly shaped: Shaped | null;
  readonly checked: Checked | null;
  /** How many steps it took. */
  readonly steps: number | null;
}

interface Now {
  readonly shaped: Shaped | null;
  readonly checked: Checked | null;
  readonly planned: { readonly run: number; readonly steps: number } | null;
  readonly run: number;
}

export interface BeforeHook {
  readonly before: Before;
  /** From now on the present values are those before. To be called when all that comes of them is there. */
  readonly compareFromHere: () => void;
}

const NOTHING: Before = { shaped: null, checked: null, steps: null };

/**
 * What came of the values with which a size was first looked at, or those since which it is compared. It stays when the
 * file is saved. `name` tells the size, `values` its values as one text.
 */
export function useBefore(name: string, values: string, now: Now): BeforeHook {
  const firsts = useRef(new Map<string, string>());
  const [kept, setKept] = useState<ReadonlyMap<string, Before>>(new Map());
  const { shaped, checked, planned, run } = now;
  useEffect(() => {
    if (!firsts.current.has(name)) firsts.current.set(name, values);
    if (firsts.current.get(name) !== values) return;
    const fresh = { shaped: shaped?.run === run ? shaped : null, checked: checked?.run === run ? checked : null, steps: planned?.run === run ? planned.steps : null };
    setKept((all) => {
      const was = all.get(name) ?? NOTHING;
      const next = { shaped: was.shaped ?? fresh.shaped, checked: was.checked ?? fresh.checked, steps: was.steps ?? fresh.steps };
      return next.shaped === was.shaped && next.checked === was.checked && next.steps === was.steps ? all : new Map([...all, [name, next]]);
    });
  }, [name, values, shaped, checked, planned, run]);
  const compareFromHere = (): void => {
    firsts.current.set(name, values);
    setKept((all) => new Map([...all, [name, { shaped, checked, steps: planned?.steps ?? null }]]));
  };
  return { before: kept.get(name) ?? NOTHING, compareFromHere };
}
