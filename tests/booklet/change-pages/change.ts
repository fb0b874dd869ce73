import { changePages, type Change, type ChangePagesInput } from '../../../src/booklet/index.ts';
import { loadWords, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import type { Paper } from '../../../src/booklet/pages/index.ts';
import { PART_KINDS } from '../../../src/parts/facts.ts';
import { localesOnDisk, rackPlan, standInPictures, standInPlace } from '../pages/rack-booklet.ts';

const same = { nth: 1, step: null } as const;
const [firstStep, secondStep] = rackPlan.steps;
const work = { is: 'work', times: 1, people: 1, minutes: 6, newParts: [{ kind: 'post', count: 4 }], tools: ['saw', 'tape'], cautions: ['dust'] } as const;

/** Something of every aspect, in every form that it has. */
export const everyChange: readonly Change[] = [
  { ...same, aspect: 'measure', name: 'width', before: { is: 'figure', value: 600, unit: 'mm' }, after: { is: 'figure', value: 640, unit: 'mm' } },
  { ...same, aspect: 'length', name: 'height', before: { is: 'figure', value: 1500, unit: 'mm' }, after: null },
  { ...same, aspect: 'part', name: 'post', before: { is: 'figure', value: 4, unit: '1' }, after: { is: 'figure', value: 6, unit: '1' } },
  { ...same, aspect: 'cut', name: 'post', before: { is: 'pieces', pieces: [{ kind: 'post', length: 1500, count: 4 }] }, after: { is: 'pieces', pieces: [{ kind: 'post', length: 1480.5, count: 4 }, { kind: 'post', length: 300, count: 2 }] } },
  { ...same, aspect: 'tubes', name: 'stock-tubes', before: { is: 'figure', value: 5, unit: '1' }, after: { is: 'figure', value: 6, unit: '1' } },
  { ...same, aspect: 'tubes', name: 'saw-cuts', before: { is: 'content', content: 'one' }, after: { is: 'content', content: 'other' } },
  { ...same, aspect: 'pattern', name: 'flat-pattern', before: { is: 'content', content: 'one' }, after: { is: 'content', content: 'other' } },
  { aspect: 'step', nth: 1, step: 1, name: firstStep?.key ?? '', before: work, after: { ...work, times: 2, tools: ['saw'], minutes: 66 } },
  { aspect: 'step', nth: 1, step: 2, name: secondStep?.key ?? '', before: { is: 'place', step: 4 }, after: { is: 'place', step: 2 } },
  { aspect: 'step', nth: 1, step: 9, name: 'no longer done', before: work, after: null },
  { ...same, aspect: 'finding', name: 'tip-angle', before: { is: 'judged', verdict: 'pass', figure: 0.4, limit: 0.175, unit: 'rad' }, after: { is: 'judged', verdict: 'caution', figure: 0.18, limit: 0.175, unit: 'rad' } },
  { aspect: 'finding', nth: 2, step: null, name: 'tip-angle', before: null, after: { is: 'judged', verdict: 'fail', figure: 0.1, limit: 0.175, unit: 'rad' } },
  { ...same, aspect: 'load', name: 'safe-load', before: { is: 'figure', value: 900, unit: 'N' }, after: { is: 'figure', value: null, unit: 'N' } },
  { ...same, aspect: 'load', name: 'tips', before: { is: 'figure', value: 80, unit: 'N' }, after: { is: 'figure', value: 60, unit: 'N' } },
  ...([['masonry', 'timber'], ['board', null]] as const).map(([was, is]): Change => ({ ...same, aspect: 'load', name: 'wall', before: { is: 'wall', wall: was }, after: { is: 'wall', wall: is } })),
  { ...same, aspect: 'picture', name: 'finished', before: { is: 'content', content: 'one' }, after: { is: 'content', content: 'other' } },
];

/** All pictures of the rack, each beside a smaller one; a few of which the earlier one is kept no more. */
const pairs: ChangePagesInput['pairs'] = standInPictures(rackPlan).map(({ of, width, height }, index) =>
  ({ of, before: index % 9 === 8 ? null : { id: `before:${index}`, width: width * 0.9, height: height * 0.9 }, after: { id: `${index}`, width, height } }));

export function changeInput({ lang = 'en', paper = 'a4', files = localesOnDisk(), onAsk, ...change }: Partial<ChangePagesInput> & { readonly lang?: string; readonly paper?: Paper; readonly files?: LocaleFiles; readonly onAsk?: (key: string) => void } = {}): ChangePagesInput {
  return {
    item: 'rack', size: 'standard', paper, words: loadWords(files, lang, onAsk), plan: rackPlan, changes: everyChange, pairs,
    reprints: [
      { edition: 'words', paper: null, langs: [lang], pages: [1, 4, 5, 6, 20], pageCount: 34 },
      { edition: 'pictures', paper: 'letter', langs: [], pages: [3], pageCount: 28 },
    ],
    serving: { asTheyAre: [{ kind: 'post', length: 300, count: 2 }], shortened: [{ kind: 'post', length: 1500, count: 4, to: 1480.5 }], fromOffCuts: PART_KINDS.filter((kind) => kind === 'long-tube').map((kind) => ({ kind, length: 560, count: 2 })) },
    contentMark: '0123abcd', earlierMark: '4567cdef', placePicture: standInPlace, ...change,
  };
}

/** Makes pages of what changed until all they can say has been said. */
export function askForChanges(lang: string, onAsk: (key: string) => void, files = localesOnDisk(), seen: (html: string) => void = () => undefined): void {
  const input = changeInput({ lang, onAsk, files, earlierMark: '0123abcd' });
  seen(changePages(input).html);
  for (const edition of ['pictures', 'words', 'wall', 'overview'] as const) for (const paper of ['a4', 'letter', 'a5', 'half-letter', 'a3'] as const) {
    seen(changePages({ ...input, changes: [], pairs: [], serving: null, reprints: [{ edition, paper, langs: [lang], pages: [1], pageCount: 2 }] }).html);
  }
}
