import { useEffect, useRef, useState } from 'react';
import type { Checked, Driver, Shaped, ShaperAnswer, Subject } from '../workers/messages.ts';
import { newShapeStore, type ShapeStore } from '../workers/shape-store.ts';

export interface ShaperState {
  /** The newest shapes there are; of an older run while newer ones are worked out. */
  readonly shaped: Shaped | null;
  readonly checked: Checked | null;
  /** Which measures set the finished lengths. */
  readonly drivers: readonly Driver[];
  /** Why the newest values give no item, or null. */
  readonly told: string | null;
}

export interface Shaper extends ShaperState {
  readonly store: ShapeStore;
}

/** Shapes and findings of the subject, worked out in a worker of their own; the newest values count. */
export function useShaper(subject: Subject | null): Shaper {
  const worker = useRef<Worker | null>(null);
  const [state, setState] = useState<ShaperState>({ shaped: null, checked: null, drivers: [], told: null });
  const [store] = useState(newShapeStore);
  useEffect(() => {
    const started = new Worker('/shaper.js', { type: 'module' });
    started.addEventListener('message', ({ data }: MessageEvent<ShaperAnswer>) => {
      if (data.answer === 'shaped') store.take(data.packet);
      setState((before) => after(before, data));
    });
    worker.current = started;
    return () => { started.terminate(); };
  }, [store]);
  useEffect(() => {
    if (subject !== null) worker.current?.postMessage(subject);
  }, [subject]);
  return { ...state, store };
}

function after(before: ShaperState, answer: ShaperAnswer): ShaperState {
  switch (answer.answer) {
    case 'shaped': return { ...before, shaped: answer, told: null };
    case 'checked': return { ...before, checked: answer };
    case 'driven': return { ...before, drivers: answer.drivers };
    case 'faulty': return { ...before, told: answer.told };
  }
}
