import { useCallback, useEffect, useRef, useState } from 'react';
import type { MadeFile, MakeNews, MakeOrder } from '../../types.ts';
import { askMake, askStop } from '../asking.ts';
import type { Aliveness } from '../use-alive.ts';

export interface Making {
  readonly isGoing: boolean;
  /** What was asked for last was not begun: another making still goes, and the news are of that one. */
  readonly isTaken: boolean;
  /** What was asked for, of how many sizes, and how many booklets or packs. */
  readonly asked: { readonly what: MakeOrder['what']; readonly sizes: number; readonly booklets: number };
  /** The item that is made now. */
  readonly item: string | null;
  /** Sizes begun, and how far the last of them is, 0 to 1. */
  readonly begun: number;
  readonly share: number;
  readonly files: readonly MadeFile[];
  /** Those of the makings before, since the program was started. */
  readonly earlier: readonly MadeFile[];
  readonly end: Extract<MakeNews, { news: 'end' }> | null;
}

export interface MakingHook extends Making {
  readonly begin: (order: MakeOrder) => Promise<void>;
  readonly stop: () => Promise<void>;
}

interface Counted extends Making {
  readonly done: number;
  readonly total: number;
}

const NOTHING: Counted = { isGoing: false, isTaken: false, asked: { what: 'booklets', sizes: 0, booklets: 0 }, item: null, begun: 0, share: 0, files: [], earlier: [], end: null, done: 0, total: 0 };

/**
 * Makes booklets on the server and hears how it goes; from the beginning also of one that somebody else began (`begun`
 * counts them), or that was begun before the page was loaded or the program came back (`returns`).
 */
export function useMaking({ returns, begun }: Pick<Aliveness, 'returns' | 'begun'>): MakingHook {
  const [state, setState] = useState<Counted>(NOTHING);
  const stream = useRef<EventSource | null>(null);
  const followed = useRef(0);
  const follow = useCallback((): void => {
    stream.current?.close();
    const opened = new EventSource('/news');
    stream.current = opened;
    opened.addEventListener('message', ({ data }: MessageEvent<string>) => {
      const news = JSON.parse(data) as MakeNews;
      if (news.news === 'end') opened.close();
      setState((before) => after(before, news));
    });
    opened.addEventListener('error', () => {
      opened.close();
      setState((before) => (before.isGoing ? { ...before, isGoing: false, end: { news: 'end', how: 'failed', told: '' } } : before));
    });
  }, []);
  useEffect(() => {
    follow();
    return () => { stream.current?.close(); };
  }, [follow, returns]);
  // One that this page began itself, or follows already, is not followed anew.
  useEffect(() => {
    if (begun !== followed.current && stream.current?.readyState !== EventSource.OPEN) follow();
    followed.current = begun;
  }, [follow, begun]);
  const begin = useCallback(async (order: MakeOrder): Promise<void> => {
    const isTaken = !await askMake(order);
    setState({ ...NOTHING, isGoing: true, isTaken });
    follow();
  }, [follow]);
  return { ...state, begin, stop: askStop };
}

function after(before: Counted, news: MakeNews): Counted {
  switch (news.news) {
    case 'begun': return { ...NOTHING, isGoing: true, isTaken: before.isGoing && before.isTaken, asked: { what: news.what, sizes: news.sizes, booklets: news.booklets }, earlier: news.earlier };
    case 'item': return { ...before, item: news.item, share: 0 };
    case 'size': return { ...before, begun: before.begun + 1, done: 0, total: news.total, share: 0 };
    case 'done': return { ...before, done: before.done + 1, share: Math.min(1, (before.done + 1) / Math.max(1, before.total)) };
    // A file that a second run wrote again is told once, as the newest.
    case 'file': {
      const others = (files: readonly MadeFile[]): readonly MadeFile[] => files.filter(({ path }) => path !== news.path);
      return { ...before, files: [...others(before.files), { path: news.path, bytes: news.bytes }], earlier: others(before.earlier) };
    }
    case 'end': return { ...before, isGoing: false, isTaken: false, end: news };
  }
}
