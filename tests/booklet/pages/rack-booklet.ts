import { readFileSync, readdirSync } from 'node:fs';
import { checkModel } from '../../../src/check/index.ts';
import * as drawn from '../../../src/draw/pictograms/index.ts';
import { PART_SCALE } from '../../../src/draw/index.ts';
import { buildModel } from '../../../src/model/index.ts';
import type { Plan } from '../../../src/plan/index.ts';
import { declaredFor, filesOnDisk, readItem } from '../../../src/read/index.ts';
import { glyphsFrom, type BookletInput, type Edition, type Paper, type PictureSize, type PlacePicture } from '../../../src/booklet/pages/index.ts';
import { loadWords, type LocaleFiles } from '../../../src/booklet/words/index.ts';

const root = new URL('../../../', import.meta.url).pathname;

/** The project's own locale files. */
export function localesOnDisk(): LocaleFiles {
  const folder = `${root}locales/`;
  return Object.fromEntries(readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => readdirSync(folder + name).map((file) => [`${name}/${file}`, readFileSync(`${folder}${name}/${file}`, 'utf8')])));
}

/** Steps of the standard rack as the room `plan` gave them; shape and standing of the parts left out, the pages need none. */
const stored = JSON.parse(readFileSync(new URL('rack-standard-plan.json', import.meta.url), 'utf8')) as Plan;
export const rackPlan: Plan = { ...stored, steps: stored.steps.map((step) => ({ ...step, drilled: [], drillsFor: [] })) };

/** Stand-in pictures: sizes in mm as the drawings have them. */
export function standInPictures(plan: Plan): Readonly<Record<string, PictureSize>> {
  const size = (width: number, height: number): PictureSize => ({ width, height });
  const steps = plan.steps.map((step) => [`step:${step.number}`, size(165, step.number % 4 === 3 ? 75 : 100)] as const);
  return {
    finished: size(150, 175),
    lettered: size(124, 170),
    'cut-bars': size(165, 90),
    pattern: size(165, 190),
    'crease-section': size(165, 120),
    'part:panel': size(62, 36), 'part:long-tube': size(120, 6), 'part:short-tube': size(70, 6), 'part:post': size(150, 6), 'part:joint': size(22, 24),
    'part:panel-pin': size(8, 8), 'part:joint-pin': size(12, 6), 'part:wing-nut': size(8, 6), 'part:cable': size(140, 6),
    'small:panel': size(22, 14), 'small:long-tube': size(24, 6), 'small:short-tube': size(20, 6), 'small:post': size(24, 6), 'small:joint': size(16, 16),
    'small:panel-pin': size(8, 12), 'small:joint-pin': size(14, 10), 'small:wing-nut': size(12, 10), 'small:cable': size(24, 8),
    'part:flat-panel': size(40, 24), 'small:flat-panel': size(20, 12), 'small:flat-panel:2': size(12, 12), 'small:flat-panel:3': size(12, 8), 'plate:3': size(165, 80), 'plate:1': size(165, 105), 'plate:2': size(165, 105),
    'run:deck': size(50, 18),
    ...Object.fromEntries(steps),
  };
}

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
  const item = readItem(filesOnDisk(root), 'steps/rack/item.yaml');
  const variants = item.sizes.map(({ name }) => buildModel(item, name));
  const model = variants.find((variant) => variant.size === size);
  if (!model) throw new Error(`no size ${size}`);
  const [words = loadWords(files, 'en', onAsk), ...alongside] = lang.split('+').map((each) => loadWords(files, each, onAsk));
  return {
    model,
    plan: rackPlan,
    report: checkModel(model, declaredFor(item, model.size)),
    variants,
    pictures: standInPictures(rackPlan),
    partScale: PART_SCALE,
    edition,
    paper,
    revision: item.revision,
    contentMark: '3f9c1a7e',
    words,
    alongside,
    languages: ['English', 'Français', 'العربية'],
    glyphs: glyphsFrom(drawn),
    placePicture: standInPlace,
  };
}
