import type { ServerResponse } from 'node:http';
import { bookletsOfSize, directionsOf, runsOfItem } from '../paper-groups.ts';
import type { MadeFile, MakeNews, MakeOrder } from '../types.ts';
import { LIMITS } from './limits.ts';
import { openEvents, Refused } from './respond.ts';
import type { Making, Workshop } from './workshop.ts';

/** The makings the page asked for, one at a time, and the files that came of them. */
export interface Makings {
  /** Begins one. False when one is still going. */
  begin(order: MakeOrder): boolean;
  stop(): void;
  /** Tells all news of the last making from its beginning, and goes on while it goes. Throws where too many listen. */
  follow(response: ServerResponse): void;
  /** How many were begun so far. */
  begun(): number;
  /** Whether a path is that of a file made for this page. */
  isMade(path: string): boolean;
  /** Stops what is going and waits for its end. */
  close(): Promise<void>;
}

export function newMakings(workshop: Workshop): Makings {
  const made = new Map<string, MadeFile>();
  const followers = new Map<ServerResponse, (news: MakeNews) => void>();
  let count = 0;
  let news: MakeNews[] = [];
  let going: Making | null = null;

  const tell = (one: MakeNews): void => {
    if (one.news === 'file') made.set(one.path, { path: one.path, bytes: one.bytes });
    if (one.news === 'end') going = null;
    news.push(one);
    for (const [follower, say] of followers) {
      say(one);
      if (one.news === 'end') follower.end();
    }
  };

  return {
    begin: (order) => {
      if (going !== null) return false;
      news = [begun(order, workshop, [...made.values()])];
      count += 1;
      going = workshop.make(order, tell);
      return true;
    },
    stop: () => { going?.stop(); },
    follow: (response) => {
      if (followers.size >= LIMITS.streams) throw new Refused(503, `found ${LIMITS.streams} streams of news already; would help: a page closed elsewhere`);
      const say = openEvents(response);
      for (const one of news) say(one);
      if (going === null) {
        response.end();
        return;
      }
      followers.set(response, say);
      response.on('close', () => { followers.delete(response); });
    },
    begun: () => count,
    isMade: (path) => made.has(path),
    close: async () => {
      const last = going;
      last?.stop();
      await last?.ended;
    },
  };
}

function begun(order: MakeOrder, workshop: Workshop, earlier: readonly MadeFile[]): MakeNews {
  if (order.what === 'pack') return { news: 'begun', what: 'pack', sizes: order.langs.length, booklets: order.langs.length * order.papers.length, earlier };
  const sizes = order.items.reduce((sum, item) => sum + item.sizes.length, 0);
  return { news: 'begun', what: 'booklets', sizes: sizes * runsOfItem(order).length, booklets: sizes * bookletsOfSize(order, directionsOf(workshop.texts().locales, order.langs)), earlier };
}
