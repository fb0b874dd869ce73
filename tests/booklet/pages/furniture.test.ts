import { describe, expect, it } from 'vitest';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { pictogram, type PictogramName } from '../../../src/draw/pictograms/index.ts';
import { furnitureInput, type Furniture } from './furniture-booklet.ts';
import { rackInput, withoutPicture } from './rack-booklet.ts';


/** The item's pages with a report that supports a load of 400 N and asks for no wall fixing. */
function safe(name: Furniture, change: Partial<BookletInput> = {}, wanted: Parameters<typeof furnitureInput>[1] = {}): BookletInput {
  const input = furnitureInput(name, wanted);
  return { ...input, report: { ...input.report, advice: { ...input.report.advice, safeLoadPerDeck: 400, wall: null } }, ...change };
}

const htmlOf = (input: BookletInput): string => bookletPages(input).html;
const pagesOf = (input: BookletInput): readonly string[] => htmlOf(input).split('<section class="page"').slice(1);
const textOf = (html: string): string => html.replace(/<[^>]*>/g, '\n').replaceAll('&#x27;', '\'').replace(/\n+/g, '\n');
const labelsOf = (html: string): string[] => [...html.matchAll(/aria-label="([^"]*)"/g)].map((match) => match[1] ?? '');
const headingsOf = (html: string): (string | undefined)[] => [...html.matchAll(/<h1[^>]*>([^<]*)</g)].map((match) => match[1]);
const usePage = (input: BookletInput): string => pagesOf(input).find((page) => page.includes('class="load main"')) ?? '';
const shows = (html: string, name: PictogramName): boolean => html.includes(pictogram(name).svg);

describe('flat panels', () => {
  it('have pages after the flat pattern where the item has any', () => {
    const headings = headingsOf(htmlOf(furnitureInput('bed')));
    expect(headings.slice(headings.indexOf('Creasing'), headings.indexOf('Steps') + 1)).toEqual(['Creasing', 'Flat panels', 'Steps']);
    expect(headingsOf(htmlOf(furnitureInput('desk')))).not.toContain('Flat panels');
    expect(headingsOf(bookletPages(rackInput()).html)).not.toContain('Flat panels');
  });

  it('show each kind once, told in words with its sides, count and holes', () => {
    const input = furnitureInput('bed');
    const html = htmlOf(input);
    expect([...html.matchAll(/data-picture="(plate:[^"]*)"/g)].map((match) => match[1])).toEqual(['plate:1', 'plate:2', 'plate:3']);
    const [, end, ...more] = input.model.plates;
    expect([input.model.plates[0]?.partIds.length, end?.partIds.length, more.length]).toEqual([2, 1, 1]);
    expect(labelsOf(html)).toContain(`1 flat panel of \u2066${Math.round(end?.width ?? 0)}\u00a0×\u00a0${Math.round(end?.height ?? 0)}\u00a0mm\u2069 cut from a corner of a stock panel, with ${end?.holes.length ?? 0} pin holes measured from one corner.`);
  });

  it('need their picture', () => {
    const input = furnitureInput('chair');
    expect(() => bookletPages({ ...input, pictures: withoutPicture(input.pictures, { what: 'plate', plate: 0 }) })).toThrow('no picture "plate:1"');
  });

  it('are counted among the parts', () => {
    expect(textOf(htmlOf(furnitureInput('bed')).split('Overall dimensions')[0] ?? '')).toMatch(/Flat panel\s+×2\s+792\s×\s239\smm\s+×1\s+392\s×\s239\smm\s+×1\s+392\s×\s151\smm/);
  });
});

describe('the steps', () => {
  const bandOf = (input: BookletInput, number: number): string =>
    htmlOf(input).split('<article').find((band) => band.includes(`data-picture="step:${number}"`)) ?? '';
  const stepWith = (input: BookletInput, key: RegExp): number => input.plan.steps.find((step) => key.test(step.key))?.number ?? 0;

  it('show of a step that is done several times the sign for once more, and of no other', () => {
    for (const input of [furnitureInput('chair'), furnitureInput('bed'), rackInput()]) {
      for (const { number, times } of input.plan.steps) expect(shows(bandOf(input, number), 'again'), `${input.model.item} ${number}`).toBe(times > 1);
    }
  });

  it('say whether posts are drilled or a flat panel\'s tubes', () => {
    const bed = furnitureInput('bed');
    expect(textOf(bandOf(bed, stepWith(bed, /^drill:front/)))).toContain('Drill through joint and post of the front side at every mark.');
    expect(textOf(bandOf(bed, stepWith(bed, /^drill:guard-panel-left/)))).toContain('Drill through the panel’s holes and the tubes of the left side.');
  });

  it('tell the frames of an item with the same sentences as a deck\'s, and a rail by its own', () => {
    const chair = furnitureInput('chair');
    expect(textOf(bandOf(chair, stepWith(chair, /^push-tubes:foot-frame-long/)))).toContain('Push the joints onto the tube ends, up to the stop.');
    expect(textOf(bandOf(chair, stepWith(chair, /^push-tubes:.*rail-rail/)))).toContain('Push the joints onto the tube ends, up to the stop.');
    expect(textOf(bandOf(chair, stepWith(chair, /^pin-panel/)))).toContain('Put 6 joint pins through the back side from inside, their wing nuts outside.');
  });
});

describe('the lengths', () => {
  it('are named by the use of the item', () => {
    const named = (name: Furniture): string => textOf(htmlOf(furnitureInput(name)).split('Cut lengths')[0] ?? '');
    expect(named('chair')).toContain('Top of the seat');
    expect(named('desk')).toContain('Top of the table');
    expect(named('bed')).toContain('Top of the bed’s base');
  });

  it('stand in columns that leave room for the lettered drawing', () => {
    // By hand: 58 mm for five size marks; three sizes keep the 18.5 mm they have.
    expect(htmlOf(furnitureInput('chair'))).toContain('--column:11.6mm');
    expect(htmlOf(furnitureInput('bed'))).toContain('--column:18.5mm');
  });

  it('of one kind of tube stand in a row each', () => {
    const chair = furnitureInput('chair');
    const posts = chair.model.tubes.filter((tube) => tube.kind === 'post').map((tube) => tube.length);
    expect(posts).toHaveLength(2);
    const table = textOf(/<table class="pieces">.*?<\/table>/s.exec(htmlOf(chair))?.[0] ?? '');
    for (const length of posts) expect(table).toMatch(new RegExp(`Post\\n[A-Z]\\n.\\n${Math.round(length * 10) / 10}\\n×2\\n`));
  });
});

describe('safe use', () => {
  // 400 N over 9.81 m/s² is 40.8 kg, rounded down to 40.
  it.each([
    ['desk', 'At most \u206640\u00a0kg\u2069 on the deck, spread evenly.', 'load'],
    ['chair', 'One person at a time, of at most \u206640\u00a0kg\u2069.', 'seat-load'],
    ['stool', 'One person at a time, of at most \u206640\u00a0kg\u2069.', 'seat-load'],
    ['bed', 'One child at a time. At most \u206640\u00a0kg\u2069 on the base.', 'bed-load'],
  ] as const)('of the %s tells its load', (name, said, glyph) => {
    const page = usePage(safe(name));
    expect(labelsOf(page)).toContain(said);
    expect(page).toContain('>40</text>');
    expect(shows(page, glyph)).toBe(true);
  });

  it('tells no load where the report supports none or a check failed', () => {
    for (const name of ['desk', 'chair', 'bed'] as const) {
      const input = safe(name);
      const none = { ...input, report: { ...input.report, advice: { ...input.report.advice, safeLoadPerDeck: null } } };
      for (const page of [usePage(none), usePage({ ...input, despiteFindings: true })]) {
        expect(labelsOf(page)).toContain('No safe load has been shown. Do not load it before a licensed engineer has checked it.');
        expect(page).not.toContain('kg</text>');
      }
    }
  });

  it('warns by what the item is for', () => {
    const text = (name: Furniture): string => textOf(usePage(safe(name)));
    expect(text('desk')).toContain('Do not climb, stand or sit on it.');
    expect(text('chair')).toContain('Do not stand or climb on it, nor tilt it.');
    expect(text('chair')).not.toContain('sit on it');
    expect(text('bed')).toContain('Do not stand or jump on it, nor climb on its guards.');
    expect(text('bed')).toContain('Keep cords and small parts out of a child’s reach.');
    for (const name of ['desk', 'chair', 'bed'] as const) expect(textOf(htmlOf(safe(name)))).toContain('does not replace local codes');
    expect([shows(usePage(safe('bed')), 'M055'), shows(usePage(safe('bed')), 'P009'), shows(usePage(safe('chair')), 'M055')]).toEqual([true, true, false]);
  });

  // ISO 7010 P018, no sitting (from memory).
  it('forbids on its page and on the cover to sit on what is no seat, and on nothing that is one', () => {
    const forbidden = (input: BookletInput): readonly boolean[] => [pagesOf(input)[0] ?? '', usePage(input)].map((page) => shows(page, 'P018'));
    expect([safe('desk'), rackInput()].map(forbidden)).toEqual([[true, true], [true, true]]);
    expect([safe('chair'), safe('stool'), safe('bed')].map(forbidden)).toEqual([[false, false], [false, false], [false, false]]);
    expect(textOf(usePage(safe('desk')))).toContain('It is not a seat: do not sit on it.');
  });

  it('of a bed tells for whom it is and how thick the mattress may be', () => {
    const bed = safe('bed');
    const page = usePage(bed);
    expect([shows(page, 'bed-child-right'), shows(page, 'bed-child-wrong'), shows(page, 'mattress')]).toEqual([true, true, true]);
    expect(page).toContain(`>${bed.model.parameters['mattress']?.value ?? NaN}</text>`);
    expect(shows(usePage(safe('chair')), 'mattress')).toBe(false);
  });

  it('does not ask to fix to a wall what the report does not', () => {
    expect(textOf(htmlOf(safe('chair')))).not.toContain('fix it to a wall');
    expect(textOf(htmlOf(rackInput()))).toContain('fix it to a wall');
  });
});

describe('a booklet that is printed although a check failed', () => {
  const said = 'A check failed: not proven safe.';

  it.each(['words', 'pictures'] as const)('says so at the foot of every page (%s)', (edition) => {
    for (const input of [rackInput({ edition }), furnitureInput('chair', { edition })]) {
      const pages = pagesOf({ ...input, despiteFindings: true });
      expect(pages.length).toBeGreaterThan(10);
      for (const page of pages) {
        const foot = /<footer.*?<\/footer>/s.exec(page)?.[0] ?? '';
        expect(shows(foot, 'unproved')).toBe(true);
        expect(labelsOf(foot)).toContain(said);
        expect(textOf(foot).includes(said)).toBe(edition === 'words');
      }
    }
  });

  it('is the only one that does', () => {
    for (const edition of ['words', 'pictures'] as const) {
      const html = htmlOf(rackInput({ edition }));
      expect(shows(html, 'unproved')).toBe(false);
      expect(labelsOf(html)).not.toContain(said);
    }
  });

  it('keeps its numbering: the cover has none', () => {
    const [cover = '', second = ''] = pagesOf({ ...rackInput(), despiteFindings: true });
    expect(cover).not.toContain('class="folio"');
    expect(second).toContain('class="folio"');
  });
});

describe('the edition without words', () => {
  it.each(['desk', 'chair', 'bed', 'stool'] as const)('has none, despite a failed check or not: %s', (name) => {
    for (const despiteFindings of [true, false]) {
      const input = safe(name, { despiteFindings }, { edition: 'pictures' });
      const left = textOf(htmlOf(input)).replaceAll(input.contentMark, '');
      expect(left.replace(/\b(mm|kg|min|h)\b/g, '').replace(/\bR[\d.]+/g, '').replace(/^[A-W]\d?$/gm, '')).toMatch(/^[\d\s×/·:.–Ø]*$/);
    }
  });
});
