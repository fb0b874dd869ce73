import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { request } from 'node:http';
import { connect } from 'node:net';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { localeFiles } from '../../src/cli/files.ts';
import { openPage, type Workshop } from '../../src/page/index.ts';
import type { OpenPage } from '../../src/page/server/open-page.ts';
import { LIMITS } from '../../src/page/server/limits.ts';
import { newKey } from '../../src/page/server/key.ts';
import type { MakeNews } from '../../src/page/types.ts';
import { files } from '../support/items.ts';
import { SLOWEST } from '../support/waiting.ts';
import { ask } from './shop.ts';

const RACK = 'steps/rack/item.yaml';
const text = files.text(RACK) ?? '';
const locales = localeFiles(fileURLToPath(new URL('../../locales', import.meta.url)));
const json = { 'content-type': 'application/json' };
const saving = JSON.stringify({ path: RACK, size: 'standard', values: { width: '900 mm' }, mark: createHash('sha256').update(text).digest('hex') });
const growing = JSON.stringify({ what: 'size', path: RACK, size: 'standard', name: 'wide', title: 'Wide', values: {}, mark: createHash('sha256').update(text).digest('hex') });
const making = JSON.stringify({ what: 'booklets', items: [{ item: 'rack', sizes: ['low'] }], langs: ['en'], editions: ['words'], papers: ['a4'], stitched: false, despiteFindings: false });

/** A page as it is shared with a network, that works on nothing real and makes until it is told to stop. */
interface Shared {
  readonly page: OpenPage;
  readonly url: string;
  readonly written: string[];
  readonly orders: string[];
  /** Tells news of the making that goes on. */
  readonly say: (news: MakeNews) => void;
  /** The headers of a browser that was let in. */
  readonly known: Readonly<Record<string, string>>;
}

async function share(allowChanges: boolean): Promise<Shared> {
  const written: string[] = [];
  const orders: string[] = [];
  let say: (news: MakeNews) => void = () => undefined;
  const workshop: Workshop = {
    texts: () => ({ files: { [RACK]: text, 'steps/kits/stall-kit.yaml': files.text('steps/kits/stall-kit.yaml') ?? '' }, locales }),
    write: (path) => { written.push(path); },
    read: () => Buffer.from('made'),
    make: (order, tell) => {
      orders.push(order.what);
      say = tell;
      tell({ news: 'file', path: 'booklets/rack/low/rack-low.pdf', bytes: 4 });
      let end = (): void => undefined;
      const ended = new Promise<void>((resolve) => { end = resolve; });
      return { stop: () => { tell({ news: 'end', how: 'stopped' } satisfies MakeNews); end(); }, ended };
    },
  };
  const page = await openPage({ port: 0, host: '0.0.0.0', allowChanges, workshop });
  const [address] = page.urls;
  const entered = await ask(address, new URL(address).pathname + new URL(address).search);
  const cookie = String(entered.headers['set-cookie']?.[0]).split(';')[0] ?? '';
  const url = `${new URL(address).origin}/`;
  return { page, url, written, orders, say: (news) => { say(news); }, known: { cookie, origin: url.slice(0, -1), ...json } };
}

let looked: Shared;
let changed: Shared;
beforeAll(async () => { [looked, changed] = await Promise.all([share(false), share(true)]); });
afterAll(async () => { await Promise.all([looked.page.close(), changed.page.close()]); });

describe('a page that is shared with a network', () => {
  it('has a key of 192 random bits in every address, another for every start', () => {
    const keys = [looked, changed].map(({ page }) => page.urls.map((url) => new URL(url).searchParams.get('key') ?? ''));
    for (const key of keys.flat()) expect(key).toMatch(/^[\w-]{32}$/);
    expect(keys.map((all) => new Set(all).size)).toEqual([1, 1]);
    expect(keys[0]?.[0]).not.toBe(keys[1]?.[0]);
    expect(looked.page.urls[0]).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?key=/);
  });

  it('lets nobody in without the key, or with another', async () => {
    const key = new URL(looked.page.urls[0]).searchParams.get('key') ?? '';
    const [name = ''] = (looked.known['cookie'] ?? '').split('=');
    const wrong = [key.slice(0, -1), `${key}x`, key.toUpperCase(), '', changed.known['cookie']?.split('=')[1] ?? ''];
    for (const path of ['/', '/page.js', '/fonts.css', '/texts', '/alive', '/news', '/made/booklets/rack/low/rack-low.pdf', '/?key=', ...wrong.map((each) => `/?key=${each}`), `/texts?key=${key}`]) {
      const { status, body, headers } = await ask(looked.url, path);
      expect([path, status, body]).toEqual([path, 403, 'no key, or not the one of this page; would be right: the whole address as the program printed it\n']);
      expect(headers['set-cookie']).toBeUndefined();
    }
    for (const each of wrong) expect((await ask(looked.url, '/texts', { cookie: `${name}=${each}` })).status).toBe(403);
    for (const path of ['/save', '/grow', '/make', '/stop']) expect((await ask(changed.url, path, { origin: changed.url.slice(0, -1), ...json }, saving)).status).toBe(403);
    expect(changed.written).toEqual([]);
  });

  // RFC 6265 and its revision (SameSite): the cookie is for no script, and for no request of another site.
  it('takes the key out of the address at once, and sends it no further', async () => {
    const address = new URL(looked.page.urls[0]);
    const { status, headers, body } = await ask(looked.url, `${address.pathname}${address.search}`);
    expect([status, headers['location'], body, headers['referrer-policy'], headers['cache-control']]).toEqual([303, '/', '', 'no-referrer', 'no-store']);
    expect(headers['set-cookie']).toEqual([expect.stringMatching(/^foldwright-\d+=[\w-]{32}; Path=\/; HttpOnly; SameSite=Lax$/)]);
    const key = address.searchParams.get('key') ?? '-';
    for (const path of ['/', '/texts', '/alive', '/nothing']) expect((await ask(looked.url, path, looked.known)).body).not.toContain(key);
  });

  it('knows its cookie among others, and of two pages on one computer its own', () => {
    const [one, other] = [newKey(4000), newKey(4001)];
    const cookies = (...keys: readonly { cookie: string }[]): string => keys.map(({ cookie }) => cookie.split(';')[0]).join('; ');
    const held = (cookie: string): string => one.heldBy({ headers: { cookie }, url: '/' } as never);
    expect([held(cookies(other, one)), held(cookies(one)), held(`a=b; ${cookies(one)}; c`), held(cookies(other)), held('foldwright-4000='), held('')]).toEqual(['cookie', 'cookie', 'cookie', 'nowhere', 'nowhere', 'nowhere']);
  });

  it('still refuses foreign names and other sites to one who has the key', async () => {
    expect((await ask(looked.url, '/texts', { ...looked.known, host: 'evil.example' })).status).toBe(403);
    expect((await ask(looked.url, '/texts', { ...looked.known, 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    for (const origin of ['http://evil.example', 'null', `${changed.url.slice(0, -1)}0`]) {
      expect((await ask(changed.url, '/save', { ...changed.known, origin }, saving)).status).toBe(403);
    }
    expect(changed.written).toEqual([]);
  });

  it('is only to be looked at, and says so', async () => {
    expect(JSON.parse((await ask(looked.url, '/texts', looked.known)).body)).toMatchObject({ mayChange: false });
    for (const [path, order] of [['/save', saving], ['/grow', growing], ['/make', making], ['/stop', '{}']] as const) {
      const { status, body } = await ask(looked.url, path, looked.known, order);
      expect([path, status, body]).toEqual([path, 403, 'this page is only to be looked at; would be right: the program started with --allow-changes\n']);
    }
    expect([looked.written, looked.orders]).toEqual([[], []]);
  });

  it('saves and makes where it was started so, one making at a time, and tells the others', async () => {
    expect(JSON.parse((await ask(changed.url, '/texts', changed.known)).body)).toMatchObject({ mayChange: true });
    expect(JSON.parse((await ask(changed.url, '/save', changed.known, saving)).body)).toMatchObject({ saved: true });
    expect(changed.written).toEqual([RACK]);
    const begun = async (): Promise<unknown> => JSON.parse((await ask(changed.url, '/make', changed.known, making)).body);
    expect([await begun(), await begun()]).toEqual([{ begun: true }, { begun: false }]);
    expect(JSON.parse((await ask(changed.url, '/alive', changed.known)).body)).toMatchObject({ begun: 1 });
    const news = ask(changed.url, '/news', changed.known);
    await ask(changed.url, '/stop', changed.known, '{}');
    const heardOf = (body: string): readonly MakeNews[] => body.split('\n').filter((line) => line !== '').map((line) => JSON.parse(line.slice('data: '.length)) as MakeNews);
    const heard = heardOf((await news).body);
    expect(heard.map((one) => one.news)).toEqual(['begun', 'file', 'end']);
    expect(heard[0]).toMatchObject({ earlier: [] });
    expect(changed.orders).toEqual(['booklets']);
    expect(await begun()).toEqual({ begun: true });
    await ask(changed.url, '/stop', changed.known, '{}');
    expect(heardOf((await ask(changed.url, '/news', changed.known)).body)[0]).toMatchObject({ news: 'begun', earlier: [{ path: 'booklets/rack/low/rack-low.pdf', bytes: 4 }] });
  });
});

describe('what one who asks may take', () => {
  // As they go over the wire: clients that tidy paths would hide them.
  it.each(['/made/../package.json', '/made/..%2f..%2fetc/passwd', '/made/%2e%2e/%2e%2e/etc/passwd', '/made//etc/passwd', '/made/..\\..\\etc\\passwd', '/made/booklets/rack/low/rack-low.pdf%00.html', '/made/booklets/rack/low/../low/rack-low.pdf', '/../../etc/passwd', '/fonts/../../package.json', '/%', '/made/%ff'])('is no file but those that were made: not %s', async (path) => {
    const { status, body } = await ask(changed.url, path, changed.known);
    expect([path, status]).toEqual([path, path.includes('%') && !/%(2|00)/.test(path) ? 400 : 404]);
    expect(body).not.toContain('root:');
    expect(body).not.toContain('"name"');
  });

  it('is nothing by other methods', async () => {
    for (const method of ['PUT', 'DELETE', 'PATCH', 'OPTIONS']) expect([method, await statusOf(changed, '/save', { method })]).toEqual([method, 405]);
  });

  it('is no long request: told by its length, sent on without an end, or long in its address', async () => {
    expect(await statusOf(changed, '/save', { body: Buffer.alloc(LIMITS.body + 1, 'x') })).toBe(413);
    expect(await statusOf(changed, '/save', { body: Buffer.alloc(LIMITS.body * 4, 'x'), isChunked: true })).toBe(413);
    expect(await statusOf(changed, `/${'x'.repeat(LIMITS.headers)}`, { method: 'GET' })).toBe(431);
    expect((await ask(changed.url, '/alive', changed.known)).status).toBe(200);
  });

  it('is no slow request: headers or contents that do not come are left', async () => {
    const head = `Host: ${new URL(changed.url).host}\r\nOrigin: ${changed.url.slice(0, -1)}\r\nCookie: ${changed.known['cookie'] ?? ''}\r\nContent-Type: application/json\r\n`;
    const answers = await Promise.all([
      raw(changed, 'GET /alive HTTP/1.1\r\nHost: '),
      raw(changed, `POST /save HTTP/1.1\r\n${head}Content-Length: 100\r\n\r\n{"path"`),
      raw(changed, `POST /save HTTP/1.1\r\n${head}Transfer-Encoding: chunked\r\n\r\n5\r\n{"pat\r\n`),
    ]);
    for (const answer of answers) expect(answer).toContain('408 Request Timeout');
  });

  it('are no streams of news without end', async () => {
    await ask(changed.url, '/make', changed.known, making);
    const streams = await Promise.all(Array.from({ length: LIMITS.streams }, () => streamOf(changed)));
    expect(streams.map(({ status }) => status)).toEqual(Array.from({ length: LIMITS.streams }, () => 200));
    const refused = await streamOf(changed);
    expect(refused.status).toBe(503);
    for (const { end } of [...streams, refused]) end();
    await expect.poll(async () => {
      const { status, end } = await streamOf(changed);
      end();
      return status;
    }, { timeout: SLOWEST }).toBe(200);
    await ask(changed.url, '/stop', changed.known, '{}');
  });
});

describe('one who does not read the news', () => {
  it('is left before they fill the memory; those who read hear all of them', async () => {
    await ask(changed.url, '/make', changed.known, making);
    const { hostname, port } = new URL(changed.url);
    const deaf = connect(Number(port), hostname);
    deaf.on('error', () => undefined);
    deaf.write(`GET /news HTTP/1.1\r\nHost: ${new URL(changed.url).host}\r\nCookie: ${changed.known['cookie'] ?? ''}\r\n\r\n`);
    await once(deaf, 'readable');
    const left = once(deaf, 'close');
    const heard = await streamOf(changed);
    // More than a system keeps for one who does not read, a piece at a time, so that the other one can.
    const [piece, pieces] = ['x'.repeat(100_000), 400];
    for (let count = 0; count < pieces; count++) {
      changed.say({ news: 'item', item: piece });
      await ask(changed.url, '/alive', changed.known);
    }
    await ask(changed.url, '/stop', changed.known, '{}');
    deaf.resume();
    await left;
    expect(deaf.bytesRead).toBeLessThan(piece.length * pieces);
    expect((await heard.body).split('\n').filter((line) => line.startsWith('data: {"news":"item"'))).toHaveLength(pieces);
  });
});

interface Sent {
  readonly method?: string;
  readonly body?: Buffer;
  readonly isChunked?: boolean;
}

/** The status of an answer, also where the rest of the request is not taken any more. */
function statusOf({ url, known }: Shared, path: string, { method = 'POST', body, isChunked = false }: Sent): Promise<number> {
  const { hostname, port } = new URL(url);
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, path, method, headers: { ...known, ...(body === undefined ? {} : isChunked ? { 'transfer-encoding': 'chunked' } : { 'content-length': String(body.length) }) } }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
      asked.on('error', () => undefined);
    });
    asked.on('error', reject);
    asked.end(body);
  });
}

/** All that comes back to bytes that are sent and followed by nothing, until the connection is closed from over there. */
async function raw({ url }: Shared, bytes: string): Promise<string> {
  const { hostname, port } = new URL(url);
  const socket = connect(Number(port), hostname);
  let back = '';
  socket.on('data', (piece: Buffer) => { back += piece.toString(); });
  socket.write(bytes);
  await once(socket, 'close');
  return back;
}

/** A stream of news once it has begun, and all that it has brought when it ends. */
function streamOf({ url, known }: Shared): Promise<{ readonly status: number; readonly body: Promise<string>; readonly end: () => void }> {
  const { hostname, port } = new URL(url);
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, path: '/news', headers: known }, (response) => {
      let heard = '';
      response.on('error', () => undefined);
      response.on('data', (piece: Buffer) => { heard += piece.toString(); });
      resolve({ status: response.statusCode ?? 0, body: new Promise((ended) => { response.on('close', () => { ended(heard); }); }), end: () => { asked.destroy(); } });
    });
    asked.on('error', reject);
    asked.end();
  });
}
