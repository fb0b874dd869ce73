import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attacks, setTrap, type Trap } from '../security/trap.ts';
import { bare, TURNED } from '../security/turned.ts';
import { openGlBrowser, type GlBrowser } from './gl-browser.ts';
import { openHand } from './hand.ts';
import { servePage, type ServedPage } from './shop.ts';

const STOOL = 'steps/stool/item.yaml';
const KIT = 'steps/kits/stall-kit.yaml';
const CHECKED = 'document.querySelector(".sum")?.getAttribute("aria-busy") === "false"';

let trap: Trap;
let gl: GlBrowser;
let served: ServedPage;
beforeAll(async () => {
  trap = await setTrap();
  gl = await openGlBrowser();
  served = await servePage();
});
afterAll(async () => {
  await served.close();
  await gl.close();
  await trap.close();
});

describe('texts of an item\'s own file that would do something if they were taken for more than texts', () => {
  it('stand as text in the page, and nothing of them runs', async () => {
    const [script = '', image = '', link = '', loaded = ''] = attacks(trap);
    const all = [script, image, link, loaded];
    // A measure that no locale file knows is told by the item's own words.
    const purpose = JSON.stringify(`${all.join(' ')} turned`);
    const text = served.shop.read(STOOL).toString().replace('sizes:\n', `  extra:\n    range: 1 mm to 2 mm\n    purpose: ${purpose}\n\nsizes:\n`).replaceAll('    foot_rest: ', '    extra: 1 mm\n    foot_rest: ');
    served.shop.write(STOOL, text);
    served.shop.write(KIT, `${served.shop.read(KIT).toString().trimEnd()}\n\nlocal-limits:\n  seat-test: { value: 1300 N, source: ${JSON.stringify(all.join(' '))} }\n`);

    const hand = await openHand(gl.browser, served.url);
    const ran: string[] = [];
    await hand.page.exposeFunction('hit', () => { ran.push('hit'); });
    await hand.page.exposeFunction('refusedByPolicy', (what: string) => { ran.push(what); });
    hand.page.on('dialog', (dialog) => { ran.push(dialog.message()); void dialog.dismiss(); });
    // What the page's own policy stops had become more than text all the same; but for the reader of schemas, which tries at its start whether it may evaluate.
    await hand.page.evaluateOnNewDocument('document.addEventListener("securitypolicyviolation", (event) => { if (event.blockedURI !== "eval") refusedByPolicy(`${event.violatedDirective} ${event.blockedURI}`); })');
    await hand.page.reload();
    await hand.page.waitForSelector('.pickers select');
    await hand.page.select('.pickers select', STOOL);
    await hand.until(CHECKED);
    await hand.until('[...document.querySelectorAll(".purpose")].some((element) => element.textContent.includes("turned"))');

    const purposes = (await hand.texts('.purpose')).map(bare).join(' ');
    expect(all.filter((attack) => !purposes.includes(bare(attack)))).toEqual([]);
    const sources = (await hand.texts('.source')).map(bare).join(' ');
    expect(all.filter((attack) => !sources.includes(bare(attack)))).toEqual([]);
    expect(await hand.page.evaluate((outside) => [...document.querySelectorAll('script, img, a, svg, [onload], [onerror]')].filter((element) => [...element.attributes].some(({ name, value }) => /^on/.test(name) || value === outside || /javascript:/.test(value))).map((element) => element.outerHTML.slice(0, 200)), trap.url)).toEqual([]);

    expect({ ran, asked: trap.asked }).toEqual({ ran: [], asked: [] });
    await hand.close();
  });

  it('are quoted in what is wrong with the file as they are, and the signs that turn a line are seen', async () => {
    const [script = '', image = ''] = ['<script>hit()</script>', '<img src=x onerror="hit()">'];
    const was = served.shop.read(STOOL).toString();
    served.shop.write(STOOL, was.replace(/^( {4}side: ).*$/m, `$1${JSON.stringify(`${script} ${TURNED}`)}`).replace(/^( {4}height: ).*$/m, `$1${JSON.stringify(image)}`));
    const hand = await openHand(gl.browser, served.url);
    try {
      const ran: string[] = [];
      await hand.page.exposeFunction('hit', () => { ran.push('hit'); });
      await hand.page.waitForSelector('.pickers select');
      await hand.page.select('.pickers select', STOOL);
      await hand.until('document.querySelector(".told pre") !== null');
      const told = await hand.page.$eval('.told pre', (element) => element.textContent);
      expect(told).toContain(`found "${script} \\u202eturned\\u2067", would be right: `);
      expect(told).toContain(`found "${image}", would be right: `);
      expect(await hand.page.$$eval('.told script, .told img', (all) => all.length)).toBe(0);
      expect({ ran, troubles: hand.troubles }).toEqual({ ran: [], troubles: [] });
    } finally {
      await hand.close();
      served.shop.write(STOOL, was);
    }
  });
});
