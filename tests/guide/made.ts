import { fileURLToPath } from 'node:url';
import { languagesIn, loadWords, type Words } from '../../src/booklet/index.ts';
import { checkModel } from '../../src/check/index.ts';
import { declaredFor } from '../../src/read/index.ts';
import { localeFiles } from '../../src/cli/files.ts';
import { contentMark, type Variant } from '../../src/cli/record.ts';
import { variantGuide } from '../../src/cli/variant-guide.ts';
import { planTubes } from '../../src/cut/index.ts';
import { itemPictures } from '../../src/draw/index.ts';
import type { GuideData } from '../../src/guide/data.ts';
import { planItem } from '../../src/plan/index.ts';
import { rack, rackModel, sizes, solids } from '../support/rack.ts';

const locales = localeFiles(fileURLToPath(new URL('../../locales', import.meta.url)));
export const languages: readonly Words[] = languagesIn(locales).map((lang) => loadWords(locales, lang));

/** A size of the rack, worked through. */
export async function rackVariant(size: string): Promise<Variant> {
  const model = rackModel(size);
  const plan = planItem(model, rack.order, solids, 'masonry');
  const cuts = await planTubes(model);
  return { item: rack, model, plan, report: checkModel(model, declaredFor(rack, size)), cuts, pictures: itemPictures(model, plan, cuts, solids) };
}

export const guideOf = (variant: Variant, words: readonly Words[] = languages): Promise<string> =>
  variantGuide({ ...variant, contentMark: contentMark(variant), variants: sizes.map(rackModel) }, words, solids);

/** What a guide hands its script. */
export function dataOf(html: string): GuideData {
  const [, text = ''] = /<script type="application\/json" id="data">(.*?)<\/script>/s.exec(html) ?? [];
  return JSON.parse(text) as GuideData;
}
