import type { Report } from '../../../src/check/index.ts';
import { pairPictures } from '../../../src/draw/pictograms/index.ts';
import type { Caution, Plan, Standing, Step } from '../../../src/plan/index.ts';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { loadWords, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { localesOnDisk, rackInput, rackPlan, standInPictures } from '../pages/rack-booklet.ts';

/**
 * Makes booklets until everything that pages can say has been said: both editions, every size, standing,
 * check, caution and verdict, with and without a safe load and a reviewer.
 */
export function askForEverything(lang: string, onAsk: (key: string) => void): void {
  const files = localesOnDisk();
  const make = (edition: 'words' | 'pictures', change: Partial<BookletInput> = {}): void => {
    bookletPages({ ...rackInput({ lang, edition, onAsk }), ...change });
  };
  make('words');
  make('pictures');
  const { report } = rackInput({ lang });
  make('words', { report: failed(report) });
  make('words', { words: loadWords(told(files, lang, { reviewer: 'A. Reader', source: false }), lang, onAsk) });
  make('words', { words: loadWords(told(files, lang, { reviewer: null, source: false }), lang, onAsk) });
  make('words', { words: loadWords(told(files, lang, { reviewer: null, source: true }), lang, onAsk) });
  const plan = planOfOddities();
  make('words', { plan, pictures: standInPictures(plan) });
}

/** The same locale files with another word on who wrote or read them. */
export function told(files: LocaleFiles, lang: string, change: object): LocaleFiles {
  const path = `${lang}/about.json`;
  return { ...files, [path]: JSON.stringify({ ...(JSON.parse(files[path] ?? '') as object), ...change }) };
}

function failed({ findings, advice }: Report): Report {
  return {
    findings: findings.map((finding, index) => ({ ...finding, verdict: (['fail', 'caution', 'pass'] as const)[index % 3] ?? 'pass' })),
    advice: { ...advice, safeLoadPerDeck: null, fixToWall: false },
  };
}

/** The rack's steps with every check, standing and caution there is, each check also as a measure. */
function planOfOddities(): Plan {
  const names = Object.keys(pairPictures);
  const standings: readonly Standing['name'][] = ['bench', 'on-back', 'on-front', 'upright', 'deck-building', 'deck-in-use'];
  const cautions: readonly Caution[] = ['sharp', 'dust', 'eyes', 'gloves', 'crush', 'children', 'climbing', 'tipping', 'manual'];
  const steps = rackPlan.steps.map((step, index): Step => ({
    ...step,
    tools: step.tools.slice(0, 1),
    standing: { name: standings[index % standings.length] ?? 'bench', pose: [index] },
    cautions: cautions.slice(index % cautions.length, (index % cautions.length) + 1),
    check: index % 2 === 0
      ? { kind: 'pair', name: names[index % names.length] ?? '' }
      : { kind: 'measure', name: names[index % names.length] ?? '', value: 3 },
  }));
  return { steps, reasons: [] };
}
