import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sampled } from '../support/samples.ts';
import { newWorkshop, type Workshop } from './workshop.ts';

const ITEM = 'steps/rack/item.yaml';
const KIT = 'steps/kits/stall-kit.yaml';
const MAKE = ['make', 'rack', '--size', 'low', '--edition', 'pictures', '--paper', 'a4'] as const;
/** What plans as `make` does, without its threads. */
const PLAN = ['draw', 'rack', '--size', 'low', '--step', '1'] as const;
/** The width of the size that is made. */
const LOW_WIDTH = '  low:\n    width: 800 mm';

interface Mistake {
  readonly name: string;
  readonly args?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
  readonly spoil?: (shop: Workshop) => void;
  /** Where, what was found, what would be right. */
  readonly told: readonly RegExp[];
  /** What the command ends with; 2 for what is wrong with a file or the call. */
  readonly code?: number;
  /** Runs as a process of its own, for it comes as far as threads or a browser. */
  readonly apart?: true;
}

const inFile = (name: string, spoil: (shop: Workshop) => void, ...told: readonly RegExp[]): Mistake => ({ name, spoil, told });
const width = (name: string, value: string, ...told: readonly RegExp[]): Mistake =>
  inFile(name, (shop) => { shop.change(ITEM, LOW_WIDTH, `  low:\n    width: ${value}`); }, /^steps\/rack\/item\.yaml:37:12 sizes\.low\.width: /, ...told);
/** What the disk will not do. */
const disk = (name: string, args: readonly string[], ...told: readonly RegExp[]): Mistake => ({ name, args, told, code: 3, apart: true });
const asked = (name: string, args: readonly string[], ...told: readonly RegExp[]): Mistake => ({ name, args, told });

const tooWide = (shop: Workshop): void => {
  shop.change(ITEM, 'range: 500 mm to 1100 mm', 'range: 500 mm to 1900 mm');
  shop.change(ITEM, LOW_WIDTH, '  low:\n    width: 1900 mm');
};

const mistakes: readonly Mistake[] = [
  asked('an unknown item', ['make', 'rick'], /^foldwright: steps\/rick\/item\.yaml: no such item; would be right: one of bed, bench, chair, chest, desk, leaning-chair, rack, screen, stool, trolley, two-bay$/),
  asked('an item outside steps/', ['make', '../rack'], /no such item; would be right: one of bed, bench, chair, chest, desk, leaning-chair, rack, screen, stool, trolley, two-bay$/),
  asked('an unknown size', ['make', 'rack', '--size', 'huge'], /--size huge: not known; would be right: one of low, standard, tall$/),
  asked('an unknown language', ['make', 'rack', '--lang', 'xx'], /--lang xx: not known; would be right: one of .*en, .*, or two or three joined by \+$/),
  asked('an unknown language beside another', ['make', 'rack', '--lang', 'en', 'ar+xx'], /--lang ar\+xx: xx is not known; would be right: one of .*en/),
  asked('a language that is missing beside another', ['make', 'rack', '--lang', 'ar+'], /--lang ar\+: an empty place is not known; would be right: one of .*en/),
  asked('a language twice in one booklet', ['make', 'rack', '--lang', 'ar+fr+ar'], /--lang ar\+fr\+ar: ar stands twice; would be right: different languages$/),
  asked('four languages in one booklet', ['make', 'rack', '--lang', 'ar+fr+en+es'], /--lang ar\+fr\+en\+es: 4 languages in one booklet; would be right: at most 3$/),
  asked('an unknown edition', ['make', 'rack', '--edition', 'film'], /--edition film: not known; would be right: one of pictures, words, wall, overview$/),
  asked('an unknown paper', ['make', 'rack', '--paper', 'a6'], /--paper a6: not known; would be right: one of a4, letter, a5, half-letter, a3$/),
  asked('an overview on a paper it does not come on', ['make', 'rack', '--edition', 'overview', '--paper', 'a5'], /--edition overview --paper a5: .*; would be right: one of a4, letter$/),
  asked('a paper that is for the wall alone', ['make', 'rack', '--paper', 'a4', 'a3'], /--paper a3: .*; would be right: --edition wall$/),
  asked('an unknown binding', ['make', 'rack', '--bind', 'glued'], /--bind glued: not known; would be right: stitched$/),
  asked('a whole sheet to stitch', ['make', 'rack', '--bind', 'stitched', '--paper', 'a4'], /--bind stitched --paper a4: .*; would be right: a5 or half-letter$/),
  asked('a sheet\'s thickness without a unit', ['make', 'rack', '--bind', 'stitched', '--creep', '0.1'], /--creep: found "0.1", would be right: .* with its unit/),
  asked('a sheet as thick as a board', ['make', 'rack', '--bind', 'stitched', '--creep', '2 mm'], /--creep: found "2 mm", would be right: the thickness of a sheet of paper, 0 mm to 0.5 mm$/),
  asked('half a sheet', ['make', 'rack', '--bind', 'stitched', '--sheets', '0.5'], /--sheets: found "0.5", would be right: .* a whole number from 1 to 999$/),
  asked('sheets without a binding', ['make', 'rack', '--sheets', '10'], /--sheets: found without a binding; would be right: with --bind stitched$/),
  asked('an unknown option', ['make', 'rack', '--lagn', 'en'], /^foldwright: --lagn: no such option; would be right: --lang; see: foldwright --help$/),
  asked('an unknown command', ['makke'], /^foldwright: makke: no such command; would be right: make; see: /),
  asked('an unknown step', ['draw', 'rack', '--size', 'low', '--step', '99'], /--step 99: no such step; would be right: a whole number from 1 to \d+$/),
  asked('no step', ['draw', 'rack'], /--step <number>: not given; would be right: /),
  width('a width without a unit', '800', /found "800", would be right: a length with its unit, for example 1000 mm$/),
  width('a width out of its range', '1200 mm', /found "1200 mm", would be right: a value within 500 mm to 1100 mm$/),
  width('a width that is a force', '8 kN', /found "8 kN", would be right: a length, for example 1000 mm, not a force$/),
  inFile('an unknown parameter', (shop) => { shop.change(ITEM, LOW_WIDTH, '  low:\n    widht: 800 mm'); },
    /^steps\/rack\/item\.yaml:37:5 sizes\.low\.widht: found .*, would be right: a parameter of this item: width\?/m),
  inFile('an expression that reaches for the machine', (shop) => { shop.change(ITEM, '(decks - 1)', '(decks - 1) + process.exit(0)'); },
    /^steps\/rack\/item\.yaml:33:12 expressions\.spacing: found .*process.*, would be right: /),
  inFile('an expression that defines a function', (shop) => { shop.change(ITEM, 'top: lowest +', 'top: (f(x) = f(x)) +'); },
    /^steps\/rack\/item\.yaml:\d+:\d+ pieces\.deck\.top: found .*, would be right: /),
  inFile('a kit that is not there', (shop) => { shop.change(ITEM, 'kit: stall-kit', 'kit: stal-kit'); },
    /^steps\/rack\/item\.yaml:5:6 kit: found "stal-kit", would be right: the name of a kit file; stall-kit\? /),
  inFile('a tube thinner than its wall', (shop) => { shop.change(KIT, 'outside-diameter: 28 mm', 'outside-diameter: 4 mm'); },
    /^steps\/kits\/stall-kit\.yaml:\d+:\d+ tube\.wall: found "3 mm", would be right: /m),
  inFile('a fault of YAML', (shop) => { shop.change(ITEM, LOW_WIDTH, '  low:\n   width: [800 mm'); },
    /^steps\/rack\/item\.yaml:\d+:\d+: found .*, would be right: /),
  inFile('a repeated name', (shop) => { shop.change(ITEM, LOW_WIDTH, '  low:\n    width: 800 mm\n    width: 900 mm'); },
    /^steps\/rack\/item\.yaml:38:5.*: found .*, would be right: /),
  { name: 'a wish that geometry forbids', args: PLAN, spoil: (shop) => {
    shop.change(ITEM, 'order: []', 'order:\n  - first: wrap-side:left\n    then: lay-frame\n    because: We like it so.');
  }, told: [/^steps\/rack\/item\.yaml:\d+:\d+ order: found "wrap-side:left" before "lay-frame", would be right: leave this out: /] },
  { name: 'a wish for a step that is not there', args: PLAN, spoil: (shop) => {
    shop.change(ITEM, 'order: []', 'order:\n  - first: paint\n    then: lay-frame\n    because: We like it so.');
  }, told: [/^steps\/rack\/item\.yaml:\d+:\d+ order\.first: found "paint", would be right: the key of a step, one of /] },
  { name: 'a width no panel can give', code: 1, spoil: tooWide, told: [/steps\/rack\/item\.yaml: rack low fails .*stock-panel.*; see foldwright check rack$/] },
  // No plan of its cuts can be drawn, whatever is asked for.
  ...[[...MAKE, '--despite-findings'], ['draw', 'rack', '--size', 'low', '--step', '1'], ['guide', 'rack', '--size', 'low', '--despite-findings']].map((args): Mistake => ({
    name: `a width no panel can give, all the same: ${args[0] ?? ''}`, args, code: 1, spoil: tooWide,
    told: [/^foldwright: steps\/rack\/item\.yaml: rack low fails stock-panel; see foldwright check rack: what no piece of its kit is large enough for is not drawn$/],
  })),
  { name: 'tubes that are too weak', code: 1, spoil: (shop) => { shop.change(KIT, '  bending-strength: 240 MPa', '  bending-strength: 2 MPa'); },
    told: [/steps\/rack\/item\.yaml: rack low fails [^;]*; see foldwright check rack, or print it stamped with --despite-findings$/] },
  inFile('a locale file that is no JSON', (shop) => { shop.write('locales/en/actions.json', '{\n  "crease": \n'); },
    /locales\/en\/actions\.json:\d+:\d+ found a fault in the JSON text; /),
  inFile('a locale file that is missing', (shop) => { shop.remove('locales/fr/parts.json'); },
    /locales\/fr\/parts\.json:1:1 found no such file; add it/),
  inFile('no locales', (shop) => { shop.remove('locales'); }, /locales\/: no such folder; would be right: a folder for each language/),
  inFile('no items', (shop) => { shop.remove('steps'); }, /steps\/: no item here; would be right: a folder with an item\.yaml/),
  disk('a folder under a file', [...MAKE, '--out', 'steps/rack/item.yaml/here'],
    /steps\/rack\/item\.yaml: cannot be written \(a file stands in its place\); would be right: a folder that can be written$/),
  // The kernel keeps folders out of /proc, whoever asks.
  ...(process.platform === 'linux' ? [disk('a folder that cannot be made', [...MAKE, '--out', '/proc/booklets'],
    /\/proc\/booklets: cannot be written \(ENOENT\); would be right: a folder that can be written$/)] : []),
  { name: 'a browser that is not there', env: { FOLDWRIGHT_BROWSER: '/no/such/browser' },
    code: 3, apart: true, told: [/FOLDWRIGHT_BROWSER names “\/no\/such\/browser”, which is not a program that can be run; set it to the path/] },
];

let shop: Workshop;
beforeEach(() => { shop = newWorkshop(); });
afterEach(() => { shop.close(); });

describe('a mistake', () => {
  it.each(sampled(mistakes, 'mistakes', 16, ({ name }) => name))('is told in one plain line, and nothing is written: $name', async ({ args = MAKE, env = {}, spoil, told, code = 2, apart = false }) => {
    spoil?.(shop);
    const before = shop.files();
    const outcome = await (apart ? shop.run : shop.ask)(args, env);
    expect(outcome.code).toBe(code);
    expect(outcome.out).toBe('');
    const lines = outcome.told.trimEnd().split('\n');
    for (const pattern of told) expect(lines.join('\n')).toMatch(pattern);
    for (const line of lines) {
      // A line of ours, not the machine's trace of calls.
      expect(line).toMatch(/^(foldwright: \S|steps\/\S+:\d+:\d+[ :])/);
      expect(line).not.toMatch(/\bat .*:\d+:\d+\)?$|TypeError|undefined/);
    }
    expect(shop.files()).toEqual(before);
  });

  it('does not hide another: all mistakes of a file are told at once, in the order of the file', async () => {
    shop.change(ITEM, LOW_WIDTH, '  low:\n    width: 800');
    shop.change(ITEM, 'kit: stall-kit', 'kit: none');
    shop.change(ITEM, 'faces: [back, left, right]', 'faces: [back, up]');
    const { told } = await shop.ask(['check', 'rack']);
    expect(told.trimEnd().split('\n').map((line) => line.split(' ')[1])).toEqual(['kit:', 'sizes.low.width:', 'connections.2.faces.2:']);
  });
});

describe('check', () => {
  it('ends with 1 when a size fails, and tells figure, limit and source', async () => {
    shop.change(ITEM, 'range: 500 mm to 1100 mm', 'range: 500 mm to 1900 mm');
    shop.change(ITEM, LOW_WIDTH, '  low:\n    width: 1900 mm');
    const { code, out, told } = await shop.ask(['check', 'rack']);
    expect(code).toBe(1);
    // 1900 mm of tube and what the flaps add can only be more than the panel's 1500 mm.
    const [, figure = '', limit = ''] = /fail\s+stock-panel: ([\d.]+) mm, at most ([\d.]+) mm, .*\[panel of stall-kit as delivered/.exec(out) ?? [];
    expect(Number(figure)).toBeGreaterThan(1900);
    expect(Number(limit)).toBe(1500);
    expect(told).toMatch(/^foldwright: \d+ findings? failed\n$/);
    expect(out).toMatch(/^rack standard$/m);
    // What fails is no margin to be left out, and what would hold is told by its measure and its direction.
    expect(out).toMatch(/^ {2}rack low +fails \S+ 0\.\d+, /m);
    expect(out).toMatch(/^ {2}would hold: width at most \d+ mm instead of 1900 mm/m);
  });

  it('ends with 0 for the demo as it comes', async () => {
    // Two stand for all: what the checks say of each, tests/check/table.test.ts and structures.test.ts ask; of words, untold.test.ts.
    for (const other of readdirSync(join(shop.folder, 'steps')).filter((name) => existsSync(join(shop.folder, 'steps', name, 'item.yaml')) && !['rack', 'stool'].includes(name))) shop.remove(`steps/${other}`);
    const { code, out, told } = await shop.ask(['check']);
    expect({ code, told }).toEqual({ code: 0, told: '' });
    expect(out.match(/^(rack|stool) \w+$/gm)).toEqual(['rack low', 'rack standard', 'rack tall', 'stool low', 'stool standard', 'stool high']);
    expect(out).not.toMatch(/^ +fail/m);
  });
});
