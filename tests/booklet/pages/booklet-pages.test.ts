import { describe, expect, it } from 'vitest';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { pictureId, type PictureOf } from '../../../src/draw/index.ts';
import { WORK } from '../../../src/work/facts.ts';
import { loadWords } from '../../../src/booklet/words/index.ts';
import { told } from '../words/ask-for-everything.ts';
import { localesOnDisk, rackInput, rackPlan, withoutPicture, withPictures } from './rack-booklet.ts';

/** What stands on paper: the HTML without tags, attributes and the insides of drawings' paths. */
const textOf = (html: string): string => html.replace(/<[^>]*>/g, '\n').replaceAll('&#x27;', '\'').replace(/\n+/g, '\n');
const labelsOf = (html: string): string[] => [...html.matchAll(/aria-label="([^"]*)"/g)].map((match) => match[1] ?? '');
const picturesOf = (html: string): string[] => [...html.matchAll(/data-picture="([^"]*)"/g)].map((match) => match[1] ?? '');
const count = (text: string, piece: string): number => text.split(piece).length - 1;

const english = bookletPages(rackInput());
const changed = (change: Partial<BookletInput>): string => bookletPages({ ...rackInput(), ...change }).html;

describe('the pages', () => {
  it('are as many as they say and numbered in order', () => {
    expect(count(english.html, '<section class="page"')).toBe(english.pageCount);
    const numbers = [...english.html.matchAll(/class="folio"><span dir="ltr" class="apart">(\d+)\u00a0\/\u00a0(\d+)</g)].map((match) => [Number(match[1]), Number(match[2])]);
    expect(numbers).toEqual(Array.from({ length: english.pageCount - 1 }, (_, index) => [index + 2, english.pageCount]));
  });

  it('come in the order of the booklet', () => {
    const headings = [...english.html.matchAll(/<h1[^>]*>([^<]*)</g)].map((match) => match[1]);
    expect(headings).toEqual(['Storage rack', 'Before you start', 'Parts', 'Overall dimensions', 'Cut lengths', 'Flat pattern', 'Creasing', 'Steps', 'Last checks', 'Safe use', 'About this booklet']);
  });

  it('show every picture of the steps once and in order', () => {
    expect(picturesOf(english.html).filter((id) => id.startsWith('step:'))).toEqual(rackPlan.steps.map((step) => `step:${step.number}`));
  });

  it('show a step\'s further pictures after its first', () => {
    const input = rackInput();
    const { html } = bookletPages({ ...input, pictures: withPictures(input.pictures, ...[0, 2, 1].map((piece) => ({ of: { what: 'step' as const, step: 3, piece }, width: 165, height: piece === 0 ? 60 : 50 }))) });
    expect(picturesOf(html).filter((id) => id.startsWith('step:3:') || id === 'step:3')).toEqual(['step:3', 'step:3:a', 'step:3:b']);
  });

  it('are the same bytes each time', () => {
    expect(bookletPages(rackInput()).html).toBe(english.html);
    expect(bookletPages(rackInput()).css).toBe(english.css);
  });

  it('count the parts of the model', () => {
    // By hand from the rack's file: 4 decks of 1 panel, 2 long and 2 short tubes and 4 corner joints; 4 posts; one pin and nut at every joint; 3 faces with 2 crossed cords.
    const parts = textOf(english.html).split('Overall dimensions')[0] ?? '';
    for (const row of [['Panel', 4], ['Long tube', 8], ['Short tube', 8], ['Post', 4], ['Corner joint', 16], ['Joint pin', 16], ['Wing nut', 16]]) expect(parts).toContain(`${row[0] ?? ''}\n×${row[1] ?? ''}\n`);
    // The cords are of two lengths, each counted for itself.
    const cords = /Cord\n((?:×\d+\nØ4\u00a0×\u00a0[\d.]+\u00a0mm\n)+)/.exec(parts)?.[1] ?? '';
    expect([...cords.matchAll(/×(\d+)/g)].reduce((sum, match) => sum + Number(match[1]), 0)).toBe(6);
  });

  it('put the parts of one scale over its bar, with the scale in figures', () => {
    const parts = textOf(english.html).split('Overall dimensions')[0] ?? '';
    // At 1:10 a bar of 50 mm is 500 mm long, at 1:2 it is 100 mm: by hand.
    expect(parts).toMatch(/Panel[^]*Cord[^]*500\u00a0mm\n1\u202f:\u202f10\n[^]*Corner joint[^]*Wing nut[^]*100\u00a0mm\n1\u202f:\u202f2\n/);
    expect(english.html).toContain('width="51mm" height="4mm"');
  });

  it('tell on the cover which revision and content they are, with words also in which languages they come', () => {
    const coverOf = (edition: 'words' | 'pictures'): string => textOf(bookletPages(rackInput({ lang: 'fr', edition })).html).split(/2\u00a0\/\u00a0/)[0] ?? '';
    expect(coverOf('words')).toMatch(/1124[^]*Révision[^]*3f9c1a7e[^]*English\n · \nFrançais\n · \nالعربية\n/);
    expect(coverOf('pictures')).toMatch(/1124[^]*1 · 3f9c1a7e\n\d+\u00a0h/);
    expect(bookletPages(rackInput({ lang: 'fr' })).html).toMatch(/<b lang="fr"><span dir="auto" class="apart">Français</);
  });

  it('set a high drawing of the cuts smaller to keep it with its table, or give it a page', () => {
    const withBars = (height: number): string[] => changed({ pictures: withPictures(rackInput().pictures, { of: { what: 'cut-bars', piece: 0 }, width: 165, height }) })
      .split('<section class="page"').filter((page) => page.includes('data-picture="cut-bars"') || page.includes('class="pieces"'));
    expect(withBars(210)).toHaveLength(1);
    // By hand: 274 mm of an A4 page less 18 for the heading, 12.5 for its second row of steps, 8 of white, 8 + 3 × 14 + 1 of table leave 184.5 mm of 210.
    expect(Number(/data-picture="cut-bars".*? height="([\d.]+)mm"/.exec(withBars(210)[0] ?? '')?.[1])).toBeCloseTo(184.5, 2);
    expect(withBars(260)).toHaveLength(2);
  });

  it('mark the booklet\'s own size in the table by ground, weight and pointer', () => {
    expect(english.html.match(/<th scope="col" class="figure this">.*?<\/th>/g)).toHaveLength(1);
    expect(english.html).toMatch(/class="figure this"><svg class="pointer".*?Standard/);
    expect(count(english.html, '<td class="figure this">')).toBe(rackInput().model.dimensions.length);
  });

  it('announce each run of what is built several times', () => {
    const starts = rackPlan.steps.filter(({ run }, index) => run !== null && run !== rackPlan.steps[index - 1]?.run);
    expect(count(english.html, 'class="band repeated run"')).toBe(starts.length);
    expect(labelsOf(english.html)).toContain('Make 4 alike: do the steps along this line 4 times.');
  });

  it('draw the line along the steps that are done several times, and along no others; of those tried on waste first along what is done on the pieces alone', () => {
    const inRun = rackPlan.steps.filter((step) => step.times > 1);
    const tried = inRun.filter(({ action }) => action === 'crease' || action === 'half-cut');
    expect(tried.length).toBeGreaterThan(1);
    expect(count(english.html, '<article class="band repeated"')).toBe(inRun.length - tried.length);
    expect(count(english.html, '<article class="band"')).toBe(rackPlan.steps.length - inRun.length + tried.length);
    // The sign for once more stands beside the first picture after those of the trial.
    const input = rackInput();
    const pieces = tried.flatMap(({ number, action }) => Array.from({ length: (WORK[action].triedIn ?? 0) + 1 }, (_, piece) => ({ of: { what: 'step' as const, step: number, piece }, width: 165, height: 30 })));
    const { html } = bookletPages({ ...input, pictures: withPictures(input.pictures, ...pieces) });
    const beside = html.split('class="on-each"').slice(1).map((after) => /data-picture="([^"]*)"/.exec(after)?.[1]);
    expect(beside).toEqual(tried.map(({ action, number }) => pictureId({ what: 'step', step: number, piece: WORK[action].triedIn ?? 0 })));
  });
});

describe('the safe load', () => {
  /** Of decks from the highest down; only the least of them where none is told. */
  const withLoad = (safeLoadPerDeck: number | null, ...each: readonly number[]): string => {
    const { report } = rackInput();
    const loads = each.map((load, index) => ({ place: 'shelf', panel: `deck ${index}`, height: 1000 - 300 * index, load }));
    return changed({ report: { ...report, advice: { ...report.advice, safeLoadPerDeck, loads, wall: null } } });
  };
  const numeralsOf = (html: string): readonly string[] => [...(html.split('class="load main"')[1] ?? '').matchAll(/>(\d+)<\/text>/g)].map(([, numeral = '']) => numeral);

  it('stands on the load as a numeral, rounded down', () => {
    expect(labelsOf(withLoad(200))).toContain('At most \u206620\u00a0kg\u2069 on each deck, spread evenly.');
    expect(withLoad(200)).toContain('>20</text>');
  });

  it('stands on each deck, and in a bracket what all bear at once', () => {
    const html = withLoad(200, 200, 200, 200, 200);
    expect(labelsOf(html)).toContain('At most \u206620\u00a0kg\u2069 on each deck, spread evenly. All at once: at most \u206680\u00a0kg\u2069.');
    expect(numeralsOf(html)).toEqual([...rackInput().model.deckTops.map(() => '20'), '80']);
  });

  it('is each place’s own from the highest down where they bear unlike loads', () => {
    const html = withLoad(70, 140, 70);
    expect(labelsOf(html)).toContain('From the top down, at most \u206610\u00a0kg\u2069 / \u20667\u00a0kg\u2069, spread evenly. All at once: at most \u206617\u00a0kg\u2069.');
    expect(numeralsOf(html)).toEqual(['10', '7', '17']);
  });

  it('is one person’s on each of several seats', () => {
    const { report, model } = rackInput();
    const loads = [0, 1].map((index) => ({ place: 'sitting', panel: `seat ${index}`, height: 400, load: 750 }));
    const html = changed({ model: { ...model, use: 'seat' }, report: { ...report, advice: { ...report.advice, safeLoadPerDeck: 750, loads, wall: null } } });
    expect(labelsOf(html)).toContain('One person on each seat, of at most \u206675\u00a0kg\u2069. All at once: at most \u2066150\u00a0kg\u2069.');
    expect(numeralsOf(html)).toEqual(['75', '75', '150']);
  });

  it('is not told where the checks support none', () => {
    for (const html of [withLoad(null), withLoad(5)]) {
      expect(labelsOf(html)).toContain('No safe load has been shown. Do not load it before a licensed engineer has checked it.');
      expect(html).not.toContain('kg</text>');
    }
  });

  it('always comes with the caution on local codes', () => {
    expect(count(textOf(withLoad(null)), 'does not replace local codes')).toBe(3);
  });
});

describe('the edition without words', () => {
  it('has none: numerals, units and the letters of the lettered drawing', () => {
    const input = rackInput({ edition: 'pictures' });
    const left = textOf(bookletPages(input).html).replaceAll(input.contentMark, '');
    expect(left.replace(/\b(mm|kg|min|h)\b/g, '').replace(/\bR[\d.]+/g, '').replace(/^[A-W]$/gm, '')).toMatch(/^[\d\s×Ø/·:.–]*$/);
  });

  it('has the mark of its size in the place of its name, which is said to those who hear it', () => {
    const { html, title } = bookletPages(rackInput({ edition: 'pictures' }));
    expect(html).toMatch(/^<section[^>]*><div[^>]*><div class="cover"><h1 class="name"><svg class="size-mark"[^>]* aria-label="Storage rack, Standard"/);
    expect(title).toBe('Storage rack, Standard');
  });

  it('has the same alternative texts for the steps as the edition with words', () => {
    const steps = (html: string): string[] => labelsOf(html).filter((label) => label.startsWith('Step '));
    const { html } = bookletPages(rackInput({ edition: 'pictures' }));
    expect(steps(html)).toEqual(steps(english.html));
    const pins = rackPlan.steps.findIndex((step) => step.key === 'pin-side:left');
    expect(steps(html)[pins]).toBe(`Step ${pins + 1}. Drive 3 pins into the left side, the ends first. New parts: 3 panel pins. Do this 4 times.`);
  });

  it('names every chapter and pictogram for those who hear it', () => {
    const { html } = bookletPages(rackInput({ edition: 'pictures' }));
    expect([...html.matchAll(/<h1 class="chapter"[^>]*><svg[^>]*aria-label="([^"]*)"/g)].map((match) => match[1])).toHaveLength(6);
    expect(html.match(/<svg(?![^>]*(aria-label="[^"]+"|aria-hidden))[^>]*>/g)).toBeNull();
  });
});

describe('right-to-left booklets', () => {
  const arabic = bookletPages(rackInput({ lang: 'ar' }));

  it('say so', () => {
    expect([arabic.dir, english.dir]).toEqual(['rtl', 'ltr']);
  });

  it('keep every number with a unit, multiplication or fraction in a left-to-right span', () => {
    for (const lang of ['ar', 'en', 'fr']) {
      const { html } = bookletPages(rackInput({ lang }));
      const outside = html
        .replace(/<svg.*?<\/svg>/gs, '')
        .replace(/<span dir="ltr" class="apart">[^<]*<\/span>/g, '')
        // A time has the language's units, and so its direction.
        .replace(/<span dir="auto" class="apart">[^<]*<\/span>/g, '')
        .replace(/<span class="source".*?<\/span>/gs, '')
        .replace(/<[^>]*>/g, '\n');
      expect(outside).not.toMatch(/\d[\s\u00a0]*(mm|kg|N|h|min|×|\/)|×[\s\u00a0]*\d|[\u2066-\u2069]/);
    }
  });

  it('count in sentences in the digits that the language asks for, and measure in those of the drawings', () => {
    const words = loadWords(told(localesOnDisk(), 'ar', { numbers: 'ar-EG' }), 'ar');
    const { html } = bookletPages({ ...rackInput({ lang: 'ar' }), words });
    const captions = [...html.matchAll(/<span class="caption">(.*?)<\/span>/g)].map((match) => match[1] ?? '');
    expect(captions.filter((caption) => /[٠-٩]/.test(caption)).length).toBeGreaterThan(1);
    expect(captions.filter((caption) => /[0-9]/.test(caption))).toEqual([]);
    for (const [apart] of html.matchAll(/<span dir="ltr" class="apart">[^<]*<\/span>/g)) expect(apart).not.toMatch(/[٠-٩]/);
    expect(textOf(html)).toContain('1500');
  });
});

describe('what is missing or does not fit is told', () => {
  const without = (of: PictureOf): (() => string) => () => changed({ pictures: withoutPicture(rackInput().pictures, of) });

  it('a picture', () => {
    expect(without({ what: 'step', step: 5, piece: 0 })).toThrow('booklet: no picture "step:5"; there are crease-section, cut-bars');
    expect(without({ what: 'lettered' })).toThrow('no picture "lettered"');
  });

  it('a small picture wider than the margin', () => {
    expect(() => changed({ pictures: withPictures(rackInput().pictures, { of: { what: 'small-part', kind: 'cable', plate: 0 }, width: 25, height: 8 }) })).toThrow('"small:cable" is 25 mm wide; the margin holds 24 mm');
  });

  it('a step picture higher than a page', () => {
    expect(() => changed({ pictures: withPictures(rackInput().pictures, { of: { what: 'step', step: 5, piece: 0 }, width: 165, height: 340 }) })).toThrow('do not fit a page');
  });

  it('a strip with too many pictograms', () => {
    const steps = rackPlan.steps.map((step) => ({ ...step, cautions: ['sharp', 'dust', 'eyes', 'gloves', 'crush', 'manual', 'tipping', 'climbing', 'children'] as const, tools: [1, 2, 3].flatMap(() => ['tape', 'saw', 'knife', 'drill', 'pencil', 'punch', 'mallet', 'hands', 'creaser', 'straight-edge'] as const) }));
    expect(() => changed({ plan: { steps, batches: [], reasons: [] } })).toThrow('step 1 (cut-tubes) has more pictograms than a strip of 165 mm holds');
  });

  it('a check without a pair of pictures', () => {
    const steps = rackPlan.steps.map((step) => ({ ...step, check: { kind: 'pair', name: 'no-such-check' } as const }));
    expect(() => changed({ plan: { steps, batches: [], reasons: [] } })).toThrow('no-such-check');
  });
});
