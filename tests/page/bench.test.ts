import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openGlBrowser, type GlBrowser } from './gl-browser.ts';
import { openHand, type Hand } from './hand.ts';
import { servePage, type ServedPage } from './shop.ts';
import { fingersOn } from '../support/fingers.ts';
import { afterFrames } from '../support/waiting.ts';

const RACK = 'steps/rack/item.yaml';
const WIDTH = '.measure:first-child input[type=number]';
const FINISHED = '.measure:first-child .finished-name + .measure-figure input';
const DEPTH = '.measure:nth-child(2) input[type=number]';
const DECKS = '.measure:nth-child(4) input[type=number]';
const TIP_ANGLE = 'Lean before it tips';
const CHECKED = 'document.querySelector(".sum")?.getAttribute("aria-busy") === "false"';
const PLANNED = 'document.querySelector(".walk")?.getAttribute("aria-busy") === "false"';

let served: ServedPage;
let gl: GlBrowser;
let hand: Hand;
const value = (selector: string): Promise<string> => hand.page.$eval(selector, (element) => (element as HTMLInputElement).value);
const press = (selector: string): Promise<void> => hand.page.$eval(selector, (element) => { (element as HTMLButtonElement).click(); });
const open = async (width: number): Promise<void> => {
  hand = await openHand(gl.browser, served.url, { width });
  await hand.page.waitForSelector('.pickers select');
  await hand.page.select('.pickers select', RACK);
  await hand.until(CHECKED);
  await hand.until(`document.querySelector("${FINISHED}") !== null`);
};
beforeAll(async () => {
  [served, gl] = await Promise.all([servePage(), openGlBrowser()]);
  await open(1280);
});
afterAll(async () => {
  await hand.close();
  await gl.close();
  await served.close();
});

describe('measures', () => {
  it('take a finished length, and set the tubes by it', async () => {
    expect([await value(WIDTH), await value(FINISHED)]).toEqual(['1000', '1124']);
    await hand.put(FINISHED, '900');
    await hand.until(`document.querySelector("${WIDTH}").value === "776"`);
    await hand.until('[...document.querySelectorAll(".labels .letter")].some((label) => label.textContent === "P 900")');
  });

  it('refuse in words what is not allowed, keep it in sight, and are not saved with it', async () => {
    await hand.put(FINISHED, '9000');
    expect(await hand.text('.refused')).toBe('9000 is not allowed: from 624 mm to 1224 mm. 900 mm still holds.');
    await hand.page.focus(FINISHED);
    await hand.page.focus(DECKS);
    expect([await value(FINISHED), await hand.page.$eval('.main-button', (button) => (button as HTMLButtonElement).disabled)]).toEqual(['9000', true]);
    await hand.put(FINISHED, '900');
    await hand.put(DECKS, '2.5');
    await hand.page.focus(WIDTH);
    expect([await value(DECKS), await hand.text('.refused')]).toEqual(['2.5', '2.5 is not allowed: whole numbers only. 4 still holds.']);
    await hand.put(DECKS, '4');
    expect(await hand.texts('.refused')).toEqual([]);
  });

  it('stand beside what was before, with units, in lengths, checks, load and steps', async () => {
    await hand.until('document.querySelector(".compare").disabled === false');
    await press('.compare');
    await hand.until(`${CHECKED} && ${PLANNED}`);
    // So small a rack has two steps fewer.
    await hand.put(WIDTH, '500');
    await hand.put(DEPTH, '300');
    await hand.until('document.querySelector(".walk .was") !== null');
    await hand.until(CHECKED);
    expect(await hand.text('.walk .was')).toMatch(/^Steps: \d+ \(before: \d+\)$/);
    expect(await hand.text('.sum')).toMatch(/\(before: Fails: \d+ · cautions: \d+ · passes: \d+\)$/);
    expect(await hand.text('.load .was')).toMatch(/\(before: Safe load: \d+ kg \(\d+ N\)/);
    expect((await hand.texts('.finding-figures .was')).some((was) => /^\(before: [\d.]+ N, caution\)$/.test(was))).toBe(true);
    await hand.put(WIDTH, '776');
    await hand.put(DEPTH, '500');
  });
});

describe('undo', () => {
  it('goes back over several changes and after saving', async () => {
    await hand.put(WIDTH, '800');
    await hand.page.focus(DECKS);
    await hand.put(DECKS, '5');
    await hand.until(CHECKED);
    await press('.main-button');
    await hand.until('document.querySelector(".saving p").textContent === "Saved in steps/rack/item.yaml."');
    await press('.undo');
    expect([await value(WIDTH), await value(DECKS)]).toEqual(['800', '4']);
    await press('.undo');
    expect([await value(WIDTH), await hand.text('.changes')]).toEqual(['776', expect.stringMatching(/^(?=.*Width: 800 mm 776 mm)(?=.*Decks: 5 4)/)]);
    await press('.redo');
    await press('.redo');
    expect([await value(WIDTH), await value(DECKS), await hand.texts('.changes')]).toEqual(['800', '5', []]);
    expect(await hand.texts('.history li')).toHaveLength(Number(/\d+/.exec(await hand.text('.history summary'))?.[0]));
  });
});

describe('the order of work', () => {
  it('tells the place of a step and why it comes there', async () => {
    await hand.until(PLANNED);
    const steps = Number(/(\d+)$/.exec(await hand.text('.walk .count'))?.[1]);
    await hand.put('.walk input', '22');
    expect(await hand.text('.said .at')).toBe(`22 of ${steps}`);
    expect(await hand.text('.why')).toMatch(/After steps [\d, ]+: their parts are needed here\./);
    expect(await hand.text('.why')).toMatch(/Before steps [\d, ]+: these parts would be in the way: /);
  });
});

describe('a check that does not hold', () => {
  it('is mended by a value that is found for it and taken', async () => {
    await hand.page.select('.pickers label:nth-of-type(2) select', 'low');
    await hand.until(CHECKED);
    await hand.until(`document.querySelector("${WIDTH}").value === "800" && document.querySelector(".sum").getAttribute("aria-busy") === "false"`);
    const row = TIP_ANGLE;
    const verdict = (): Promise<string> => hand.page.$$eval('.findings li', (rows, wanted) => rows.find((each) => each.querySelector('.finding-name')?.textContent === wanted)?.querySelector('.verdict')?.textContent ?? '', row);
    expect(await verdict()).toBe('caution');
    await hand.page.$$eval('.findings li', (rows, wanted) => { rows.find((each) => each.querySelector('.finding-name')?.textContent === wanted)?.querySelector<HTMLButtonElement>('.mend')?.click(); }, row);
    await hand.until('document.querySelector(".mends button") !== null');
    await press('.mends button');
    await hand.until('document.querySelector(".changes") !== null');
    await hand.until(`[...document.querySelectorAll(".findings li")].find((each) => each.querySelector(".finding-name").textContent === "${row}").querySelector(".verdict").textContent !== "caution"`);
    await press('.undo');
    await hand.page.select('.pickers label:nth-of-type(2) select', 'standard');
    await hand.until(CHECKED);
  });
});

describe('a new size', () => {
  it('is made from the one that is looked at, and looked at then', async () => {
    await press('.grow summary');
    await hand.page.type('.grow input[name=title]', 'For the quay');
    await hand.page.type('.grow input[name=name]', 'tall');
    await press('.grow [type=submit]');
    await hand.until('document.querySelector(".grow [role=alert]") !== null');
    expect(await hand.text('.grow [role=alert]')).toContain('sizes.tall: found twice, would be right: a name of its own');
    await hand.page.type('.grow input[name=name]', '-quay');
    await press('.grow [type=submit]');
    await hand.until('document.querySelectorAll(".pickers select")[1].value === "tall-quay"');
    expect(await hand.texts('.pickers label:nth-of-type(2) option')).toContain('For the quay');
    expect(served.shop.read(RACK).toString()).toContain('  tall-quay:\n    width: 800 mm\n');
    expect((await served.shop.run(['draw', 'rack', '--size', 'tall-quay', '--step', '1', '--out', 'one.svg'])).code).toBe(0);
  });
});

describe('a finger', () => {
  it('that scrolls over a tape changes nothing; one that slides along it does', async () => {
    await hand.close();
    await open(360);
    const fingers = await fingersOn(hand.page);
    const drag = async (x: number, y: number): Promise<string> => {
      await hand.page.evaluate(() => { document.querySelector('.tape input')?.scrollIntoView({ block: 'end' }); });
      await hand.page.evaluate(atRest);
      const box = await (await hand.page.$('.tape input'))?.boundingBox();
      const share = (Number(await value(WIDTH)) - 500) / 600;
      const from = { x: (box?.x ?? 0) + 10 + ((box?.width ?? 0) - 20) * share, y: (box?.y ?? 0) + (box?.height ?? 0) / 2 };
      await fingers.drag([from, { x: from.x + x, y: from.y + y }]);
      await afterFrames(hand.page);
      return value(WIDTH);
    };
    const before = await value(WIDTH);
    expect(await drag(-3, -120)).toBe(before);
    await drag(-60, 2);
    await hand.until(`Number(document.querySelector(${JSON.stringify(WIDTH)}).value) < ${Number(before)}`);
  });
});

/** Waits in the page until it has not scrolled for some frames: a finger on what still runs only stops it. */
const atRest = (): Promise<void> => new Promise((done) => {
  let [last, still] = [NaN, 0];
  const look = (): void => {
    still = window.scrollY === last ? still + 1 : 0;
    last = window.scrollY;
    if (still === 10) done();
    else requestAnimationFrame(look);
  };
  look();
});

describe('making', () => {
  it('names what is changed and not saved, and proposes pieces for pairs', async () => {
    await hand.put(WIDTH, '700');
    await hand.page.evaluate(() => { location.hash = '#make'; });
    await hand.until('document.querySelector(".unsaved") !== null');
    expect(await hand.text('.unsaved p')).toMatch(/^Changed but not saved, so not in the booklets: Storage rack, /);
    await press('input[value="stool/low"]');
    expect(await value('.pack input[name="stool/low"]')).toBe('6');
    await hand.put('.pack input[name="stool/low"]', '1');
    expect(await hand.text('.pack [role=alert]')).toBe('Learners: 12, items: 1. That makes teams of 12. For pairs take 6 items.');
    await press('.unsaved button');
    await hand.until('document.querySelector(".unsaved") === null');
    expect(served.shop.read(RACK).toString()).toContain('width: 700 mm');
  });

  it('shows how far it is, and the button that stops it, on the screen', async () => {
    // In every language, which no machine is done with before it is looked at and stopped.
    await press('.all-languages');
    await press('.makings .main-button');
    await hand.until('document.querySelector("progress") !== null');
    const places = await hand.page.$$eval('progress, .stop-button', (all) => all.map((element) => element.getBoundingClientRect()).map(({ top, bottom }) => top >= 0 && bottom <= window.innerHeight));
    expect(places).toEqual([true, true]);
    await press('.stop-button');
    await hand.until('document.querySelector(".making p").textContent.startsWith("Stopped")');
  });
});

describe('the program behind the page', () => {
  it('is missed when it is gone, and what was kept is saved when it is back', async () => {
    await hand.page.evaluate(() => { location.hash = '#change'; });
    await hand.until(PLANNED);
    await served.halt();
    await hand.until('document.querySelector(".news")?.textContent.includes("does not answer. Your changes are kept here") === true');
    await hand.put(WIDTH, '720');
    await hand.until('document.querySelector(".changes") !== null');
    await served.again();
    await hand.until('document.querySelector(".news") === null');
    await hand.until(PLANNED);
    await press('.main-button');
    await hand.until('document.querySelector(".saving p").textContent === "Saved in steps/rack/item.yaml."');
    expect(served.shop.read(RACK).toString()).toContain('width: 720 mm');
  });

  it('tells when somebody has changed a file, before anything is saved', async () => {
    served.shop.change(RACK, 'width: 720 mm', 'width: 730 mm');
    await hand.until('document.querySelector(".news") !== null');
    expect(await hand.text('.news p')).toBe(`Somebody has changed ${RACK}.`);
    await press('.news button');
    await hand.until(`document.querySelector("${WIDTH}").value === "730"`);
    await hand.until('document.querySelector(".news") === null');
  });
});
