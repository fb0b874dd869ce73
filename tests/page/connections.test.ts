import { connect, type Socket } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, type Workshop } from '../../src/page/index.ts';
import type { OpenPage } from '../../src/page/server/open-page.ts';
import { LIMITS } from '../../src/page/server/limits.ts';
import { localeFiles } from '../../src/cli/files.ts';

const locales = localeFiles('locales');

/** There is nothing to work on: connections alone are tried. */
const workshop: Workshop = {
  texts: () => ({ files: {}, locales }),
  write: () => undefined,
  read: () => Buffer.alloc(0),
  make: () => ({ stop: () => undefined, ended: Promise.resolve() }),
};

let page: OpenPage;
let port: number;
beforeAll(async () => {
  page = await openPage({ port: 0, host: '127.0.0.1', allowChanges: false, workshop });
  port = Number(new URL(page.urls[0]).port);
});
afterAll(async () => { await page.close(); });

/** A connection that asks again as soon as it is answered: it is never idle, and never left for that. */
interface Busy {
  readonly socket: Socket;
  /** Answers it has had. */
  readonly answers: () => number;
  /** The next answer. @throws when the connection is closed before. */
  next(): Promise<void>;
}

const LAST = '}';

/** Asks for what the page asks every few seconds, and reads answers to their ends. */
function busy(): Busy {
  const socket = connect(port, '127.0.0.1');
  socket.setNoDelay(true);
  let answers = 0;
  let heard = '';
  const ask = (): void => { socket.write(`GET /alive HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n\r\n`); };
  socket.on('error', () => undefined);
  socket.on('data', (piece: Buffer) => {
    heard += piece.toString();
    if (!heard.endsWith(LAST)) return;
    expect(heard).toMatch(/^HTTP\/1\.1 200 /);
    heard = '';
    answers++;
    socket.emit('answer');
    ask();
  });
  // From the first on: one that is refused is closed before anybody asks for an answer of it.
  const closed = new Promise<never>((_, reject) => { socket.once('close', () => { reject(new Error('the connection was closed')); }); });
  closed.catch(() => undefined);
  ask();
  const next = (): Promise<void> => Promise.race([new Promise<void>((answered) => { socket.once('answer', answered); }), closed]);
  return { socket, answers: () => answers, next };
}

describe('connections beyond the limit', () => {
  it('are closed without an answer, while the others go on; when one leaves, the next comes in', async () => {
    const all = Array.from({ length: LIMITS.connections }, busy);
    try {
      await Promise.all(all.map((each) => each.next()));
      expect(all).toHaveLength(200);

      const more = Array.from({ length: 3 }, busy);
      for (const each of more) await expect(each.next()).rejects.toThrow('the connection was closed');
      expect(more.map(({ socket, answers }) => [socket.bytesRead, answers()])).toEqual([[0, 0], [0, 0], [0, 0]]);

      const before = all.map(({ answers }) => answers());
      await Promise.all(all.map((each) => each.next()));
      expect(all.filter(({ answers }, index) => answers() <= (before[index] ?? 0))).toEqual([]);
      expect(all.filter(({ socket }) => socket.destroyed)).toEqual([]);

      all.pop()?.socket.destroy();
      // The server hears of it at its own time; until then the next is refused like the others.
      for (;;) {
        const newcomer = busy();
        all.push(newcomer);
        if (await newcomer.next().then(() => true, () => false)) break;
        all.pop();
      }
      expect(all).toHaveLength(LIMITS.connections);
    } finally {
      for (const { socket } of all) socket.destroy();
    }
  });
});
