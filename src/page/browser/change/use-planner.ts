import { useCallback, useEffect, useRef, useState } from 'react';
import type { Drawing, PlannedStep, PlannerAnswer, PlannerOrder, Subject } from '../workers/messages.ts';
import { newShapeStore, type ShapeStore } from '../workers/shape-store.ts';

export type Moment = Extract<PlannerAnswer, { answer: 'moment' }>;

export interface PlannerState {
  /** The steps, as last worked out. */
  readonly steps: readonly PlannedStep[];
  /** The run they belong to. */
  readonly run: number;
  readonly isBusy: boolean;
  readonly told: string | null;
  readonly moment: Moment | null;
  readonly picture: { readonly run: number; readonly number: number; readonly drawings: readonly Drawing[] } | null;
}

export interface Planner extends PlannerState {
  readonly store: ShapeStore;
  readonly askMoment: (number: number, done: number) => void;
  readonly askPicture: (number: number) => void;
}

/** How long the values must rest before the order of work is worked out, ms: that takes seconds. */
const REST = 450;

const nothing: PlannerState = { steps: [], run: 0, isBusy: true, told: null, moment: null, picture: null };

/** Steps, motions and step pictures of the subject, from a worker that is given up for a new one when the values change under it, and when the program comes back (`returns`). */
export function usePlanner(subject: Subject | null, lang: string, locales: Readonly<Record<string, string>>, returns: number): Planner {
  const worker = useRef<Worker | null>(null);
  const [state, setState] = useState<PlannerState>(nothing);
  const [store] = useState(newShapeStore);
  const spoken = useRef(lang);
  useEffect(() => { spoken.current = lang; }, [lang]);

  useEffect(() => {
    if (subject === null) return undefined;
    setState((before) => ({ ...before, isBusy: true }));
    const rest = setTimeout(() => {
      const started = new Worker('/planner.js', { type: 'module' });
      started.addEventListener('message', ({ data }: MessageEvent<PlannerAnswer>) => {
        if (data.answer === 'moment') store.take(data.packet);
        setState((before) => after(before, data));
      });
      worker.current = started;
      order(started, { order: 'plan', subject, lang: spoken.current, locales });
    }, REST);
    return () => {
      clearTimeout(rest);
      worker.current?.terminate();
      worker.current = null;
    };
  }, [subject, locales, store, returns]);
  useEffect(() => { order(worker.current, { order: 'words', lang }); }, [lang]);

  const askMoment = useCallback((number: number, done: number) => { order(worker.current, { order: 'moment', number, done }); }, []);
  const askPicture = useCallback((number: number) => { order(worker.current, { order: 'picture', number }); }, []);
  return { ...state, store, askMoment, askPicture };
}

const order = (worker: Worker | null, asked: PlannerOrder): void => { worker?.postMessage(asked); };

function after(before: PlannerState, answer: PlannerAnswer): PlannerState {
  switch (answer.answer) {
    case 'planned': return { ...before, steps: answer.steps, run: answer.run, isBusy: false, told: null };
    case 'moment': return { ...before, moment: answer };
    case 'picture': return { ...before, picture: answer };
    case 'faulty': return { ...nothing, isBusy: false, told: answer.told };
  }
}
