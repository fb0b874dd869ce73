import { useEffect, useRef, useState } from 'react';
import type { BookletEdition, Paper } from '../../../booklet/index.ts';
import type { PrinterAnswer, PrinterOrder, Subject } from '../workers/messages.ts';

export type Pages = Extract<PrinterAnswer, { answer: 'pages' }>;

export interface PrinterState {
  readonly pages: Pages | null;
  /** Share of the pictures that are drawn, or null before the first. */
  readonly share: number | null;
  readonly told: string | null;
}

/** How long the values must rest before all pictures are drawn, ms. */
const REST = 800;

/** The booklet's pages as they would be printed; drawn only while `isOpen`. */
export function usePrinter(isOpen: boolean, subject: Subject | null, locales: Readonly<Record<string, string>>, wish: { readonly lang: string; readonly edition: BookletEdition; readonly paper: Paper }): PrinterState {
  const worker = useRef<Worker | null>(null);
  const [state, setState] = useState<PrinterState>({ pages: null, share: null, told: null });
  const { lang, edition, paper } = wish;
  const wished = useRef(wish);
  useEffect(() => { wished.current = wish; });

  useEffect(() => {
    if (!isOpen || subject === null) return undefined;
    setState((before) => ({ ...before, share: null, told: null }));
    const rest = setTimeout(() => {
      const started = new Worker('/printer.js', { type: 'module' });
      started.addEventListener('message', ({ data }: MessageEvent<PrinterAnswer>) => { setState((before) => after(before, data)); });
      worker.current = started;
      order(started, { order: 'draw', subject, locales });
      order(started, { order: 'pages', ...wished.current });
    }, REST);
    return () => {
      clearTimeout(rest);
      worker.current?.terminate();
      worker.current = null;
    };
  }, [isOpen, subject, locales]);
  useEffect(() => { order(worker.current, { order: 'pages', lang, edition, paper }); }, [lang, edition, paper]);
  return state;
}

const order = (worker: Worker | null, asked: PrinterOrder): void => { worker?.postMessage(asked); };

function after(before: PrinterState, answer: PrinterAnswer): PrinterState {
  switch (answer.answer) {
    case 'drawn': return { ...before, share: answer.drawn / answer.expected };
    case 'pages': return { pages: answer, share: 1, told: null };
    case 'faulty': return { ...before, told: answer.told };
  }
}
