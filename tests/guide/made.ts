import { fileURLToPath } from 'node:url';
import { languagesIn, loadWords, type Words } from '../../src/booklet/index.ts';
import { localeFiles } from '../../src/cli/files.ts';
import { contentMark, type Variant } from '../../src/cli/record.ts';
import { variantGuide } from '../../src/cli/variant-guide.ts';
import type { GuideData } from '../../src/guide/data.ts';
import { rack, rackModel, sizes, solids } from '../support/rack.ts';
import { remembered } from '../support/remembered.ts';
import { variantOf } from '../support/variants.ts';

const locales = localeFiles(fileURLToPath(new URL('../../locales', import.meta.url)));
export const languages: readonly Words[] = languagesIn(locales).map((lang) => loadWords(locales, lang));

/** A size of the rack, worked through. */
export const rackVariant = (size: string): Promise<Variant> => variantOf(rack, size);

export const guideOf = (variant: Variant, words: readonly Words[] = languages): Promise<string> =>
  variantGuide({ ...variant, contentMark: contentMark(variant), variants: sizes.map(rackModel) }, words, solids);

/** The guide of a rack in every language, made once. */
export const rackGuide = remembered((of: typeof rack, size: string): Promise<string> => variantOf(of, size).then((variant) => guideOf(variant)));

/** What a guide hands its script. */
export function dataOf(html: string): GuideData {
  const [, text = ''] = /<script type="application\/json" id="data">(.*?)<\/script>/s.exec(html) ?? [];
  return JSON.parse(text) as GuideData;
}
