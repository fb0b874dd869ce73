import { readFileSync, readdirSync } from 'node:fs';
import * as drawn from '../../../src/draw/pictograms/index.ts';
import { findPicture, PART_SCALE, pictureId, type PictureOf } from '../../../src/draw/index.ts';
import type { PartKind } from '../../../src/model/index.ts';
import { suppliesOf, type Plan } from '../../../src/plan/index.ts';
import { glyphsFrom, type BookletInput, type Edition, type Paper, type PlacePicture, type SizedPicture } from '../../../src/booklet/pages/index.ts';
import { loadWords, type LocaleFiles } from '../../../src/booklet/words/index.ts';
import { modelOf, reportOf } from '../../support/items.ts';
import { once } from '../../support/once.ts';
import { planOnce } from '../../support/plans.ts';
import { rack, rackModel } from '../../support/rack.ts';

const root = new URL('../../../', import.meta.url).pathname;

/** The project's own locale files. */
export function localesOnDisk(): LocaleFiles {
  return localesIn('locales/');
}

const localesIn = once((name: string): LocaleFiles => {
  const folder = root + name;
  return Object.fromEntries(readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => readdirSync(folder + name).map((file) => [`${name}/${file}`, readFileSync(`${folder}${name}/${file}`, 'utf8')])));
});

/** The plan of the standard rack, to a wall of bricks. */
export const rackPlan: Plan = planOnce(rackModel('standard'), [], 'masonry');

const sized = (width: number, height: number, ...ofs: readonly PictureOf[]): readonly SizedPicture[] => ofs.map((of) => ({ of, width, height }));
const part = (kind: PartKind, variety = 0): PictureOf => ({ what: 'part', kind, variety });
const small = (kind: PartKind, plate = 0): PictureOf => ({ what: 'small-part', kind, plate });

/** Stand-in pictures: sizes in mm as the drawings have them. */
export const standInPictures = (plan: Plan): readonly SizedPicture[] => [
  ...sized(150, 175, { what: 'finished' }),
  ...sized(124, 170, { what: 'lettered' }),
  ...sized(165, 39, { what: 'stock' }),
  ...sized(165, 90, { what: 'cut-bars', piece: 0 }),
  ...sized(165, 190, { what: 'pattern', pattern: 0 }),
  ...sized(165, 120, { what: 'crease-section', pattern: 0 }),
  ...sized(62, 36, part('panel')), ...sized(120, 6, part('long-tube')), ...sized(70, 6, part('short-tube')), ...sized(150, 6, part('post')), ...sized(22, 24, part('joint')),
  ...sized(8, 8, part('panel-pin')), ...sized(12, 6, part('joint-pin')), ...sized(8, 6, part('wing-nut')), ...sized(140, 6, part('cable')),
  ...sized(22, 14, small('panel')), ...sized(24, 6, small('long-tube')), ...sized(20, 6, small('short-tube')), ...sized(24, 6, small('post')), ...sized(16, 16, small('joint')),
  ...sized(8, 12, small('panel-pin')), ...sized(14, 10, small('joint-pin')), ...sized(12, 10, small('wing-nut')), ...sized(24, 8, small('cable')),
  ...sized(40, 24, part('flat-panel')), ...sized(20, 12, small('flat-panel')), ...sized(12, 12, small('flat-panel', 1)), ...sized(12, 12, small('flat-panel', 2)),
  ...sized(165, 105, ...[0, 1, 2].map((plate) => ({ what: 'plate', plate }) as const)),
  ...sized(60, 4, part('bar')), ...sized(20, 2, small('bar')), ...[0, 1, 2, 3].flatMap((variety) => [...sized(14, 14, part('fitting', variety)), ...sized(8, 8, small('fitting', variety))]),
  ...suppliesOf(plan).flatMap(({ name }) => [...sized(20, 20, { what: 'supply', name }), ...sized(12, 12, { what: 'small-supply', name })]),
  ...plan.batches.flatMap(({ name }) => sized(50, 18, { what: 'run', run: name })),
  ...plan.steps.flatMap(({ number, newParts }) => newParts.flatMap(({ kind }) => sized(16, 16, { what: 'step-part', step: number, kind }))),
  ...plan.steps.flatMap(({ number }) => sized(165, number % 4 === 3 ? 75 : 100, { what: 'step', step: number, piece: 0 })),
];

/** The pictures with some of another size, or some more. */
export const withPictures = (pictures: readonly SizedPicture[], ...others: readonly SizedPicture[]): readonly SizedPicture[] =>
  [...pictures.filter(({ of }) => findPicture(others, of) === undefined), ...others];

export const withoutPicture = (pictures: readonly SizedPicture[], of: PictureOf): readonly SizedPicture[] =>
  pictures.filter((picture) => pictureId(picture.of) !== pictureId(of));

/** A box of thin lines, with its words, in the place of a picture. */
export const standInPlace: PlacePicture = ({ id, width, height, alt }) =>
  `<svg role="img" data-picture="${id}" aria-label="${alt.replaceAll('"', '&quot;')}" direction="ltr" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`
  + `<path d="M0.1 0.1H${width - 0.1}V${height - 0.1}H0.1zM0 0L${width} ${height}M${width} 0L0 ${height}" fill="none" stroke="#999" stroke-width="0.2"/></svg>`;

export interface Wanted {
  /** A language, or several side by side such as `ar+fr`. */
  readonly lang?: string;
  readonly edition?: Edition;
  readonly paper?: Paper;
  readonly size?: string;
  readonly files?: LocaleFiles;
  readonly onAsk?: (key: string) => void;
}

/** What the pages need for the rack. */
export function rackInput({ lang = 'en', edition = 'words', paper = 'a4', size = 'standard', files = localesOnDisk(), onAsk }: Wanted = {}): BookletInput {
  const variants = rack.sizes.map(({ name }) => modelOf(rack, name));
  const model = variants.find((variant) => variant.size === size);
  if (!model) throw new Error(`no size ${size}`);
  const [words = loadWords(files, 'en', onAsk), ...alongside] = lang.split('+').map((each) => loadWords(files, each, onAsk));
  return {
    model,
    plan: rackPlan,
    report: reportOf(rack, size),
    variants,
    pictures: standInPictures(rackPlan),
    partScale: PART_SCALE,
    edition,
    paper,
    revision: rack.revision,
    contentMark: '3f9c1a7e',
    words,
    alongside,
    languages: ['English', 'Français', 'العربية'],
    glyphs: glyphsFrom(drawn),
    placePicture: standInPlace,
  };
}
