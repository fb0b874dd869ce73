import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packDocumentPages, readNotes } from '../../../src/booklet/workshop/index.ts';
import { openPrinter, picturePlace, type Paper, type PictureBook, type PrintDocument, type Printer } from '../../../src/booklet/print/index.ts';
import { packInput, rackKeys, type WantedPack } from './pack-input.ts';

let printer: Printer;
let book: PictureBook;

beforeAll(async () => {
  printer = await openPrinter();
  book = await printer.pictures([1, 2, 3].map((number) => ({
    id: `finished:${number}`, width: 96, height: 100, svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 96 100"><path d="M1 1H95V99H1z" fill="none" stroke="#000" stroke-width="0.5"/></svg>',
  })));
});
afterAll(() => printer.close());

function documentOf(wanted: WantedPack): { readonly doc: PrintDocument; readonly pageCount: number } {
  const input = packInput(wanted);
  const { html, css, dir, title, pageCount } = packDocumentPages({ ...input, placePicture: picturePlace });
  return { pageCount, doc: { id: `pack-${input.words.lang}`, html, css, dir, title, lang: input.words.lang, paper: input.paper, contentMark: 'mark' } };
}

const wanted: readonly (readonly [string, string, Paper, WantedPack])[] = [
  ['one item', 'en', 'a4', {}],
  ['one item', 'en', 'letter', {}],
  ['three items, uneven teams', 'en', 'a4', { order: [['rack', 7], ['chair', 24], ['stool', 3]], learners: 13 }],
  ['one item', 'fr', 'a4', {}],
  ['one item', 'ar', 'a4', {}],
  ['two items, English notes for one', 'ar', 'letter', { order: [['rack', 6], ['chair', 10]], learners: 1, notes: { lang: 'en', notes: readNotes('en.md', 'General.\n\n## half-cut\n\nA long note '.concat('that goes on and on '.repeat(40)), rackKeys) } }],
];

describe.each(wanted)('the workshop pack of %s in %s on %s', (_, lang, paper, more) => {
  it('has nothing cut off, no foreign letter, and all its pages', async () => {
    const { doc, pageCount } = documentOf({ ...more, lang, paper });
    expect(await printer.measure(doc)).toEqual([]);
    const pdf = await PDFDocument.load(await printer.document(doc, book), { updateMetadata: false });
    expect(pdf.getPageCount()).toBe(pageCount);
    expect(pageCount).toBeGreaterThan(8);
  });
});

/** Text of the pages, tags taken out. */
const textOf = (more: WantedPack): string => packDocumentPages(packInput(more)).html.replace(/<[^>]*>/g, ' ').replace(/&#x27;/g, '\'').replace(/\s+/g, ' ');

describe('the pages', () => {
  it('tell the order, the teams and the times', () => {
    const text = textOf({});
    for (const told of ['×6 Storage rack, Standard', 'Learners 12', 'Teams 6', 'People in a team 2', 'Start 08:30', 'Cautions', 'What to bring', 'The day before', 'Timetable', 'Trainer’s notes', 'Common mistakes', 'Check list']) {
      expect(text).toContain(told);
    }
  });

  it('run from right to left in Arabic, times and steps from left to right', () => {
    const { dir, html } = packDocumentPages(packInput({ lang: 'ar' }));
    expect(dir).toBe('rtl');
    expect(html).toContain('<span dir="ltr" class="apart">08:30</span>');
    expect(html).toMatch(/<span dir="ltr" class="apart">\d+–\d+[^<]*<\/span>/);
  });

  it('name the dangers of the work and defer to local codes, in every language', () => {
    for (const lang of ['en', 'fr', 'ar']) {
      const { html } = packDocumentPages(packInput({ lang }));
      const { words } = packInput({ lang });
      for (const key of ['cautions.knives', 'cautions.dust', 'cautions.drilling', 'cautions.load', 'cautions.tipping', 'cautions.children', 'defer']) {
        expect(html.replaceAll('&#x27;', '\''), key).toContain(words.t(`pack.${key}`));
      }
    }
    expect(textOf({})).toMatch(/mask, eye protection, gloves.*cut(ting)? wet|Mask, eye protection, gloves.*Saw and drill wet\. Clean up wet/);
  });

  it('say when the notes are in another language, set in its own direction, or when there are none', () => {
    const english = { lang: 'en', notes: readNotes('en.md', 'Stand it up.\n\n## half-cut\n\nDeep.\n', rackKeys) };
    const { html } = packDocumentPages(packInput({ lang: 'ar', notes: english }));
    expect(html).toContain('لا ملاحظات بهذه اللغة بعد؛ هذه بلغة أخرى.');
    expect(html).toMatch(/<div class="note main" lang="en" dir="ltr"[^>]*><p>Stand it up\.<\/p>/);
    expect(textOf({ notes: null })).toContain('There are no notes for this item yet.');
    expect(textOf({})).not.toContain('There are no notes');
  });

  it('show a note on one step with its number', () => {
    const notes = { lang: 'en', notes: readNotes('en.md', '## wrap-side\n\nAll sides.\n\n## wrap-side:left\n\nThis one.\n', rackKeys) };
    const number = packInput().items[0]?.plan.steps.find(({ key }) => key === 'wrap-side:left')?.number ?? 0;
    expect(textOf({ notes })).toMatch(new RegExp(`All sides\\. Step ${number} This one\\.`));
  });

  it('ask the trainer to sign: every check with a box, then name, date and signature', () => {
    const { html } = packDocumentPages(packInput());
    const checks = new Set(packInput().items.flatMap(({ plan }) => plan.steps.flatMap(({ check }) => (check ? [check.name] : []))));
    expect(html.match(/class="box"/g)).toHaveLength(checks.size + 2);
    expect(textOf({})).toMatch(/Trainer’s name Date Signature/);
  });

  it('tell a learner who is alone that the trainer helps', () => {
    expect(textOf({ learners: 1 })).toContain('the trainer is the other');
    expect(textOf({ learners: 2 })).not.toContain('the trainer is the other');
  });

  it('show every minute of the learners in the timetable', () => {
    const input = packInput({ order: [['rack', 7], ['chair', 24]], learners: 13 });
    const text = packDocumentPages(input).html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
    // Each team's last step of each day ends at a time that stands on the page.
    const two = (value: number): string => String(value).padStart(2, '0');
    for (const { day, team } of input.timetable.tasks) {
      const last = input.timetable.tasks.filter((task) => task.day === day && task.team === team).at(-1);
      const end = Math.round(last?.end ?? 0);
      expect(text).toContain(`${two(Math.floor(end / 60))}:${two(end % 60)}`);
    }
  });
});
