import { createHash } from 'node:crypto';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { namesOf } from '../../src/page/server/addresses.ts';
import { newGuard } from '../../src/page/server/guard.ts';
import { saveValues } from '../../src/page/server/save.ts';
import type { Workshop } from '../../src/page/index.ts';
import { withSizeValues } from '../../src/read/index.ts';
import { files } from '../support/items.ts';
import { SLOWEST } from '../support/waiting.ts';
import { ask, servePage, type ServedPage } from './shop.ts';

const RACK = 'steps/rack/item.yaml';
const KIT = 'steps/kits/stall-kit.yaml';
const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

let page: ServedPage;
beforeAll(async () => { page = await servePage(); });
afterAll(async () => { await page.close(); });

const origin = (): string => page.url.slice(0, -1);
const json = { 'content-type': 'application/json' };

describe('the page\'s server', () => {
  it('listens on this computer alone unless told otherwise', () => {
    expect(page.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    expect(page.told()).toBe('');
  });

  it('gives page, scripts, kernel, fonts and texts, each under its own type', async () => {
    for (const [path, type] of [['/', 'text/html'], ['/page.js', 'text/javascript'], ['/shaper.js', 'text/javascript'], ['/planner.js', 'text/javascript'], ['/printer.js', 'text/javascript'], ['/page.css', 'text/css'], ['/fonts.css', 'text/css'], ['/manifold.wasm', 'application/wasm'], ['/highs.wasm', 'application/wasm'], ['/texts', 'application/json']] as const) {
      const { status, headers, body } = await ask(page.url, path);
      expect([path, status, String(headers['content-type']).split(';')[0]]).toEqual([path, 200, type]);
      expect(body.length).toBeGreaterThan(100);
    }
    const { body } = await ask(page.url, '/fonts.css');
    const [font = ''] = /\/fonts\/[0-9a-f]+\.woff2/.exec(body) ?? [];
    expect((await ask(page.url, font)).body.slice(0, 4)).toBe('wOF2');
  });

  // RFC 9110, 8.8.3 and 13.1.2 (ETag, If-None-Match, 304), 8.6 and 12.5.3 (lengths, Accept-Encoding); RFC 1952 by zlib.
  it('sends scripts packed to a browser that takes that, and not again to one that has them', async () => {
    for (const path of ['/page.js', '/manifold.wasm', '/texts']) {
      const plain = await ask(page.url, path);
      const packed = await ask(page.url, path, { 'accept-encoding': 'br, gzip;q=0.8' });
      expect([path, plain.headers['content-encoding'], packed.headers['content-encoding'], packed.headers['vary']]).toEqual([path, undefined, 'gzip', 'Accept-Encoding']);
      expect(gunzipSync(packed.bytes).equals(plain.bytes)).toBe(true);
      expect(packed.bytes.length).toBeLessThan(plain.bytes.length / 2);
    }
    expect((await ask(page.url, '/page.js', { 'accept-encoding': 'gzip;q=0, br' })).headers['content-encoding']).toBeUndefined();
    const { headers } = await ask(page.url, '/page.js');
    const tag = String(headers['etag']);
    expect([tag.startsWith('W/"'), headers['cache-control']]).toEqual([true, 'private, no-cache']);
    const again = await ask(page.url, '/page.js', { 'if-none-match': `"other", ${tag}` });
    expect([again.status, again.bytes.length, again.headers['content-length'], again.headers['etag']]).toEqual([304, 0, undefined, tag]);
    expect((await ask(page.url, '/page.js', { 'if-none-match': '"other"' })).status).toBe(200);
    const texts = await ask(page.url, '/texts');
    expect([texts.headers['etag'], texts.headers['cache-control']]).toEqual([undefined, 'no-store']);
  });

  it('tells the browser to run scripts from here alone and to let nobody frame the page', async () => {
    const policy = String((await ask(page.url, '/')).headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(/script-src 'self' 'wasm-unsafe-eval'(;|$)/);
    expect(policy).toContain("frame-ancestors 'self'");
  });

  // RFC 9110, 7.2 (Host) and the usual defence against DNS rebinding: common practice.
  it.each(['evil.example', 'evil.example:80', '127.0.0.1', '127.0.0.1.evil.example'])('refuses the foreign Host "%s"', async (host) => {
    const { status, body } = await ask(page.url, '/texts', { host });
    expect(status).toBe(403);
    expect(body).toContain('would be right: one of 127.0.0.1:');
    expect(body).not.toContain('kind: item');
  });

  it('answers to localhost too', async () => {
    expect((await ask(page.url, '/texts', { host: `localhost:${new URL(page.url).port}` })).status).toBe(200);
  });

  // Fetch Metadata Request Headers (W3C): what another site's page asks for says so.
  it('refuses what another site\'s page asks for, but for a link to the page', async () => {
    expect((await ask(page.url, '/texts', { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors', 'sec-fetch-dest': 'script' })).status).toBe(403);
    expect((await ask(page.url, '/', { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'iframe' })).status).toBe(403);
    expect((await ask(page.url, '/', { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'document' })).status).toBe(200);
  });

  it('writes and makes only for its own page', async () => {
    const before = page.shop.read(RACK).toString();
    const order = JSON.stringify({ path: RACK, size: 'standard', values: { width: '900 mm' }, mark: sha256(before) });
    for (const path of ['/save', '/make', '/stop']) {
      for (const headers of [json, { ...json, origin: 'http://evil.example' }, { ...json, origin: 'null' }, { origin: origin(), 'content-type': 'text/plain' }]) {
        expect((await ask(page.url, path, headers, order)).status, `${path} ${JSON.stringify(headers)}`).toBe(403);
      }
    }
    expect(page.shop.read(RACK).toString()).toBe(before);
  });

  it('gives no file of the disk but those it made', async () => {
    for (const path of ['/made/steps/rack/item.yaml', '/made/../package.json', '/made/%2e%2e/%2e%2e/etc/passwd', '/../../etc/passwd', '/steps/rack/item.yaml']) {
      expect((await ask(page.url, path)).status, path).toBe(404);
    }
  });

  it('tells an order that is no order', async () => {
    const own = { ...json, origin: origin() };
    expect((await ask(page.url, '/make', own, '{"what":"booklets","items":[{"item":"../x","sizes":["low"]}],"langs":["en"],"editions":["words"],"papers":["a4"],"stitched":false,"despiteFindings":false}')).status).toBe(400);
    const booklets = { what: 'booklets', items: [{ item: 'rack', sizes: ['low'] }], langs: ['en'], editions: ['words'], papers: ['a4'], stitched: false, despiteFindings: false };
    const pack = { what: 'pack', pieces: [{ item: 'rack', size: 'low', count: 2 }], learners: 4, langs: ['en'], start: '08:30', papers: ['a4'] };
    const [option, named] = ['--out', { item: 'rack', sizes: ['low'] }];
    // What begins with a dash would be an option of the command that makes.
    const asOptions = [
      ...[[option], ['en', option, 'elsewhere'], [`en+${option}`], ['-x']].map((langs) => ({ ...booklets, langs })), { ...booklets, editions: [option] }, { ...booklets, papers: [option] },
      { ...booklets, items: [{ ...named, item: option }] }, { ...booklets, items: [{ ...named, sizes: ['low', option] }] }, { ...pack, papers: [option] }, { ...pack, pieces: [{ item: 'rack', size: option, count: 2 }] }, { ...pack, pieces: [{ item: option, size: 'low', count: 2 }] },
    ];
    for (const wrong of [...asOptions, { ...booklets, langs: [] }, { ...pack, learners: 0 }, { ...pack, start: '--out' }, { ...pack, pieces: [] }, { ...pack, langs: [] }, { ...pack, langs: ['--out'] }, { ...pack, pieces: [{ item: 'rack', size: 'low', count: 1.5 }] }]) {
      expect((await ask(page.url, '/make', own, JSON.stringify(wrong))).status, JSON.stringify(wrong)).toBe(400);
    }
    expect((await ask(page.url, '/save', own, 'no json')).status).toBe(400);
    expect((await ask(page.url, '/save', own, JSON.stringify({ path: 'x'.repeat(200_000) }))).status).toBe(413);
  });

  it('warns when others can reach it, and refuses a port that is none', async () => {
    for (const [option, told] of [['--host=0.0.0.0', 'look at the items; with --allow-changes also change them'], ['--allow-changes', 'can now change items and make booklets']] as const) {
      const shared = await servePage(['--host', '0.0.0.0', option]);
      try {
        await expect.poll(() => shared.told(), { timeout: SLOWEST }).toContain(told);
        expect(shared.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?key=[\w-]{32}$/);
        expect(shared.told()).not.toContain(new URL(shared.url).searchParams.get('key'));
        expect((await ask(shared.url, '/texts')).status).toBe(403);
      } finally {
        await shared.close();
      }
    }
    expect(await page.shop.run(['page', '--port', '99999'])).toMatchObject({ code: 2, told: 'foldwright: --port 99999: would be right: a whole number from 0 to 65535\n' });
    const { port } = new URL(page.url);
    expect((await page.shop.run(['page', '--port', port])).told).toBe(`foldwright: --port ${port}: taken by another program; would be right: one that is free, or 0 for any\n`);
  });
});

describe('the names a page answers to', () => {
  it('are those of this computer for its own address, and the address itself for another', () => {
    expect(namesOf('127.0.0.1')).toEqual(['127.0.0.1', 'localhost', '[::1]']);
    expect(namesOf('192.0.2.7')).toEqual(['192.0.2.7']);
    expect(namesOf('2001:db8::7')).toEqual(['[2001:db8::7]']);
  });

  it('may leave port 80 out', () => {
    const guard = newGuard(['workbench.local'], 80);
    const told = (host: string): string | null => guard({ method: 'GET', url: '/', headers: { host } } as never);
    expect([told('workbench.local'), told('workbench.local:80')]).toEqual([null, null]);
    expect(told('workbench.local:81')).toContain('would be right');
    expect(told('')).toContain('would be right');
  });
});

describe('saving values', () => {
  const text = files.text(RACK) ?? '';
  const shopWith = (now: string): { readonly shop: Workshop; readonly written: [string, string][] } => {
    const written: [string, string][] = [];
    return {
      written,
      shop: {
        texts: () => ({ files: { [RACK]: now, [KIT]: files.text(KIT) ?? '' }, locales: {} }),
        write: (path, content) => { written.push([path, content]); },
        read: () => Buffer.alloc(0), make: () => ({ stop: () => undefined, ended: Promise.resolve() }),
      },
    };
  };
  const order = { path: RACK, size: 'standard', values: { width: '900 mm', decks: '3' }, mark: sha256(text) };

  it('changes the values and no other letter of the file', () => {
    const { shop, written } = shopWith(text);
    const answer = saveValues(shop, order);
    const standard = text.indexOf('  standard:');
    const wanted = text.slice(0, standard) + text.slice(standard).replace('width: 1000 mm', 'width: 900 mm').replace('decks: 4', 'decks: 3');
    expect(written).toEqual([[RACK, wanted]]);
    expect(answer).toEqual({ saved: true, text: wanted, mark: sha256(wanted) });
  });

  it('keeps line ends, a mark of byte order, comments, quotes and sections on one line', () => {
    const odd = `\uFEFF${text.replace('    width: 1000 mm\n', '    width:   "1000 mm"   # as the shop has them\n')}`.replaceAll('\n', '\r\n');
    const changed = withSizeValues(odd, 'standard', { width: '900 mm' });
    expect(changed).toBe(odd.replace('"1000 mm"   # as', '900 mm   # as'));
    const flow = 'sizes:\n  low: { side: 250 mm, height: 320 mm } # both\n';
    expect(withSizeValues(flow, 'low', { height: '333.5 mm' })).toBe('sizes:\n  low: { side: 250 mm, height: 333.5 mm } # both\n');
  });

  it('refuses what the reader refuses, with its own message, and writes nothing', () => {
    const { shop, written } = shopWith(text);
    const answer = saveValues(shop, { ...order, values: { width: '1200 mm' } });
    expect(answer).toEqual({ saved: false, why: 'refused', told: `${RACK}:44:12 sizes.standard.width: found "1200 mm", would be right: a value within 500 mm to 1100 mm` });
    expect(written).toEqual([]);
  });

  it.each(['900 mm\nuse: seat', '900 mm # x', '{a: 1}', '*x', '', '900 mm, depth: 1 mm'])('refuses the value %j, which is more than a figure with a unit', (width) => {
    const { shop, written } = shopWith(text);
    expect(saveValues(shop, { ...order, values: { width } })).toMatchObject({ saved: false, why: 'refused' });
    expect(written).toEqual([]);
  });

  it('refuses a file that is another by now, a size and a path that are not there', () => {
    const { shop, written } = shopWith(text.replace('ferry', 'harbour'));
    expect(saveValues(shop, order)).toMatchObject({ saved: false, why: 'moved' });
    expect(saveValues(shopWith(text).shop, { ...order, size: 'none' })).toMatchObject({ saved: false, why: 'refused' });
    expect(saveValues(shopWith(text).shop, { ...order, path: KIT })).toMatchObject({ saved: false, why: 'refused' });
    expect(saveValues(shopWith(text).shop, { ...order, path: 'locales/en/about.json' })).toMatchObject({ saved: false, why: 'refused' });
    expect(written).toEqual([]);
  });
});
