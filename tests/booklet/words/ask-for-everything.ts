import { checkModel, type Report } from '../../../src/check/index.ts';
import { declaredFor } from '../../../src/read/index.ts';
import { pairPictures } from '../../../src/draw/pictograms/index.ts';
import type { Caution, Plan, Standing, Step, StepDetail, Tool } from '../../../src/plan/index.ts';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { loadWords, textsMark, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { buildModel, type Joining, type Model, type Shape } from '../../../src/model/index.ts';
import { structureItem, structureNames } from '../../support/structures.ts';
import { askForChanges } from '../change-pages/change.ts';
import { askForCutting } from '../cut-pages/orders.ts';
import { furniture, modelsOf, reportsOf, type Furniture } from '../pages/furniture-booklet.ts';
import { packDocumentPages, readNotes } from '../../../src/booklet/workshop/index.ts';
import { packInput, rackKeys, type WantedPack } from '../workshop/pack-input.ts';
import { localesOnDisk, rackInput, rackPlan, standInPictures } from '../pages/rack-booklet.ts';

/**
 * Makes booklets until everything that pages can say has been said: both editions, every size, standing,
 * check, caution and verdict, with and without a safe load and a reviewer. `seen` gets each booklet's HTML.
 */
export function askForEverything(lang: string, onAsk: (key: string) => void, files = localesOnDisk(), seen: (html: string) => void = () => undefined): void {
  const make = (edition: 'words' | 'pictures', change: Partial<BookletInput> = {}): void => {
    seen(bookletPages({ ...rackInput({ lang, edition, onAsk, files }), ...change }).html);
  };
  make('words');
  make('pictures');
  const { report } = rackInput({ lang, files });
  make('words', { report: failed(report) });
  make('words', { words: loadWords(reviewed(files, lang), lang, onAsk) });
  make('words', { words: loadWords(told(files, lang, { reviewed: null, source: false }), lang, onAsk) });
  make('words', { words: loadWords(told(files, lang, { reviewed: null, source: true }), lang, onAsk) });
  const plan = planOfOddities();
  make('words', { plan, pictures: standInPictures(plan) });
  for (const change of furnitureOf(rackInput({ lang, onAsk, files }), plan)) make('words', { ...change, plan, pictures: standInPictures(plan), despiteFindings: false });
  make('words', { despiteFindings: true });
  make('words', { replaces: '0123abcd' });
  askForChanges(lang, onAsk, files, seen);
  askForCutting(lang, onAsk, files, seen);
  askForPacks(lang, onAsk, files);
}

/** Workshop packs with and without notes, for a learner alone and for uneven teams that do not end together. */
function askForPacks(lang: string, onAsk: (key: string) => void, files: LocaleFiles): void {
  const make = (wanted: WantedPack): void => { packDocumentPages(packInput({ lang, onAsk, locales: files, ...wanted })); };
  const oneStep = { lang, notes: readNotes('notes.md', '## wrap-side:left\n\nSlowly.\n', rackKeys) };
  make({ learners: 1, notes: null });
  make({ order: [['rack', 7], ['chair', 3]], learners: 13, notes: oneStep, steps: planOfOddities().steps });
  make({ notes: { ...oneStep, lang: lang === 'en' ? 'fr' : 'en' } });
  make({ locales: told(files, lang, { reviewed: null, source: false }) });
}

const plateShape: Shape = { form: 'plate', width: 300, height: 160, thickness: 10, holes: [] };

/** Every other item with all its sizes and findings, by name and use only; with flat panels, a mattress and every named length. */
function furnitureOf({ model, report, variants }: BookletInput, plan: Plan): readonly Partial<BookletInput>[] {
  const pins = plan.steps.flatMap((step) => step.drillsFor);
  const lengths = ['width', 'depth', 'height', 'lowest-deck', 'deck-spacing', 'deck-top', 'back-height'];
  const safe: Report['advice'] = { ...report.advice, safeLoadPerDeck: 900, loads: [], wall: null, mattress: 80 };
  const bearing = (...loads: readonly number[]): Report['advice'] => ({ ...safe, loads: loads.map((load, index) => ({ place: 'shelf', panel: `deck-${index}`, height: 900 - 400 * index, load })) });
  const change: Partial<Model> = {
    plates: [{ marked: 'upper', width: 300, height: 160, thickness: 9, skin: 1, holes: [{ at: [40, 32], diameter: 6 }], partIds: ['plate'] }],
    parts: [...model.parts, ...model.parts.slice(0, 1).map((part) => ({ ...part, id: 'plate', kind: 'flat-panel' as const, shape: plateShape }))],
    joinings: [...model.joinings, ...pins.map((pin): Joining => ({ by: 'plate-pin', pin, nut: 'nut', plate: 'plate', tube: 'tube' }))],
    dimensions: lengths.map((name, index) => ({ letter: 'ABCDEFG'.charAt(index), name, value: 100 * index, from: [0, 0, 0], to: [0, 0, 0] })),
  };
  const others = (Object.keys(furniture) as Furniture[]).flatMap((name): Partial<BookletInput>[] => {
    const sizes = modelsOf(name);
    const [first, found] = [sizes[0], reportsOf(name)[0]];
    if (!first || !found) return [];
    const { item, size, use } = first;
    return [{ model: { ...model, ...change, item, size, use }, variants: sizes, report: { findings: found.findings, notApplied: [], advice: safe } }];
  });
  // Structures by name and size, with a bar and a fitting among the parts.
  const drafts = structureNames.map((name, index): Partial<BookletInput> => {
    const item = structureItem(name);
    const sizes = item.sizes.map(({ name: size }) => buildModel(item, size));
    const parts = (sizes[0]?.parts ?? []).filter(({ kind }) => kind === 'bar' || kind === 'fitting');
    const [first] = sizes;
    const findings = first === undefined ? [] : checkModel(first, declaredFor(item, first.size)).findings;
    return { model: { ...model, ...change, parts: [...model.parts, ...parts], item: name, size: first?.size ?? '' }, variants: sizes, report: { findings, notApplied: [], advice: { ...safe, people: (['adults', 'anyone', 'pupils'] as const)[index % 3] ?? 'adults' } } };
  });
  // A rack of one deck, and one of several, with every named length.
  const racks = [1, 3].map((decks): Partial<BookletInput> =>
    ({ model: { ...model, ...change, deckTops: model.deckTops.slice(0, decks) }, variants, report: { ...report, advice: safe } }));
  // Places that bear unlike loads, and several seats.
  const places: readonly Partial<BookletInput>[] = [
    { report: { ...report, advice: bearing(900, 500) } }, { model: { ...model, ...change, use: 'seat' }, report: { ...report, advice: bearing(900, 900) } },
  ];
  return [...others, ...drafts, ...racks, ...places];
}

/** The same locale files with another word on who wrote or read them. */
export function told(files: LocaleFiles, lang: string, change: object): LocaleFiles {
  const path = `${lang}/about.json`;
  return { ...files, [path]: JSON.stringify({ ...(JSON.parse(files[path] ?? '') as object), ...change }) };
}

/** The same locale files with the language's texts reviewed as they stand. */
export function reviewed(files: LocaleFiles, lang: string): LocaleFiles {
  const draft = told(files, lang, { reviewed: null, source: false });
  return told(draft, lang, { reviewed: { by: 'A. Reader', on: '2026-03-14', of: textsMark(draft, lang) } });
}

function failed({ findings, notApplied, advice }: Report): Report {
  return {
    notApplied,
    findings: findings.map((finding, index) => ({ ...finding, verdict: (['fail', 'caution', 'pass'] as const)[index % 3] ?? 'pass' })),
    advice: { ...advice, safeLoadPerDeck: null, wall: null },
  };
}

const backrest: StepDetail = { on: 'plate', plate: 'plate', side: 'back' };

/** What the rack's first steps become. */
const newActions: readonly Partial<Step>[] = [
  { action: 'cut-panel', key: 'cut-panel', detail: { on: 'plates', index: 0, letter: null }, side: null, run: null, times: 2 },
  { action: 'hold-panel', key: 'hold-panel:backrest-back', detail: backrest, side: 'back', newParts: [{ kind: 'flat-panel', ids: ['plate'] }] },
  { action: 'drill', key: 'drill:backrest-back', detail: backrest, side: 'back', drillsFor: ['plate-pin'] },
  { action: 'pin-panel', key: 'pin-panel:backrest-back', detail: backrest, side: 'back', newParts: [{ kind: 'joint-pin', ids: ['plate-pin'] }] },
  ...(['onto', 'into'] as const).map((tubes): Partial<Step> => ({ action: 'push-tubes', key: `push-tubes-${tubes}`, detail: { on: 'tubes', tubes }, side: null })),
  ...(['slide-on', 'lay-panel', 'fit-end', 'fit-hinge', 'fit-bracket'] as const).map((action): Partial<Step> => ({ action, key: action, detail: { on: 'whole' }, side: null, newParts: [{ kind: 'bar', ids: ['bar'] }, { kind: 'fitting', ids: ['fitting'] }] })),
  { action: 'cap-ends', key: 'cap-ends', detail: { on: 'whole' }, side: null },
  ...(['turn-up', 'pin-corners', 'set-in'] as const).map((action): Partial<Step> => ({ action, key: action, detail: { on: 'whole' }, side: null })),
  ...(['masonry', 'timber', 'board'] as const).map((wall): Partial<Step> => ({ action: 'fix-to-wall', key: `fix-to-wall:${wall}`, detail: { on: 'wall', wall }, side: null })),
  { action: 'drill', key: 'drill', detail: { on: 'whole' }, side: null, drillsFor: [] },
];

/** The rack's steps with the actions of other items, and every check, standing and caution there is, each check also as a measure. */
function planOfOddities(): Plan {
  const names = Object.keys(pairPictures);
  const standings: readonly Standing['name'][] = ['bench', 'lying', 'upright'];
  const tools: readonly Tool[] = ['hands', 'tape', 'pencil', 'straight-edge', 'saw', 'knife', 'punch', 'creaser', 'mallet', 'file', 'drill', 'screwdriver', 'scale', 'finder', 'bottle', 'square', 'plumb-line', 'clamp', 'steps', 'block', 'board', 'water', 'sticky-tape'];
  const cautions: readonly Caution[] = ['sharp', 'dust', 'eyes', 'gloves', 'crush', 'bit', 'lines', 'children', 'climbing', 'sitting', 'tipping', 'manual'];
  const steps = rackPlan.steps.map((step, index): Step => ({
    ...step,
    ...newActions[index],
    tools: tools.slice(index % tools.length, (index % tools.length) + 1),
    standing: { name: standings[index % standings.length] ?? 'bench', pose: [index] },
    cautions: cautions.slice(index % cautions.length, (index % cautions.length) + 1),
    check: index % 2 === 0
      ? { kind: 'pair', name: names[index % names.length] ?? '' }
      : { kind: 'measure', name: names[index % names.length] ?? '', value: 3 },
  }));
  return { steps, batches: [], reasons: [] };
}
