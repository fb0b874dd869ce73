import type { ServerResponse } from 'node:http';
import { bookletsOfSize, directionsOf, runsOfItem } from '../paper-groups.ts';
import type { MakeNews, MakeOrder } from '../types.ts';
import { openEvents } from './respond.ts';
import type { Making, Workshop } from './workshop.ts';

/** The makings the page asked for, one at a time, and the files that came of them. */
export interface Makings {
  /** Begins one. False when one is still going. */
  begin(order: MakeOrder): boolean;
  stop(): void;
  /** Tells all news of the last making from its beginning, and goes on while it goes. */
  follow(response: ServerResponse): void;
  /** Whether a path is that of a file made for this page. */
  isMade(path: string): boolean;
  /** Stops what is going and waits for its end. */
  close(): Promise<void>;
}

export function newMakings(workshop: Workshop): Makings {
  const made = new Set<string>();
  const followers = new Set<ServerResponse>();
  let news: MakeNews[] = [];
  let going: Making | null = null;

  const tell = (one: MakeNews): void => {
    if (one.news === 'file') made.add(one.path);
    if (one.news === 'end') going = null;
    news.push(one);
    for (const follower of followers) write(follower, one);
  };
  const write = (follower: ServerResponse, one: MakeNews): void => {
    follower.write(`data: ${JSON.stringify(one)}\n\n`);
    if (one.news === 'end') follower.end();
  };

  return {
    begin: (order) => {
      if (going !== null) return false;
      news = [begun(order, workshop)];
      going = workshop.make(order, tell);
      return true;
    },
    stop: () => { going?.stop(); },
    follow: (response) => {
      const say = openEvents(response);
      for (const one of news) say(one);
      if (going === null) {
        response.end();
        return;
      }
      followers.add(response);
      response.on('close', () => { followers.delete(response); });
    },
    isMade: (path) => made.has(path),
    close: async () => {
      const last = going;
      last?.stop();
      await last?.ended;
    },
  };
}

function begun(order: MakeOrder, workshop: Workshop): MakeNews {
  if (order.what === 'pack') return { news: 'begun', what: 'pack', sizes: 1, booklets: order.papers.length };
  const sizes = order.items.reduce((sum, item) => sum + item.sizes.length, 0);
  return { news: 'begun', what: 'booklets', sizes: sizes * runsOfItem(order).length, booklets: sizes * bookletsOfSize(order, directionsOf(workshop.texts().locales, order.langs)) };
}
