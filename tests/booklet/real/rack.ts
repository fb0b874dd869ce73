import type { BookletEdition, Paper, PrintDocument, Words } from '../../../src/booklet/index.ts';
import { copiesOfEditions, languagesIn, loadWords } from '../../../src/booklet/index.ts';
import { sizeToPublish } from '../../../src/cli/size-batches.ts';
import { languageSetsAsked } from '../../../src/cli/language-sets.ts';
import type { Variant } from '../../../src/cli/record.ts';
import { itemPictures } from '../../../src/draw/index.ts';
import { buildModel } from '../../../src/model/index.ts';
import { filesOnDisk, readItem } from '../../../src/read/index.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';
import { reportOf } from '../../support/items.ts';
import { sharedSolids } from '../../support/kernel.ts';
import { cutsOnce, planOnce } from '../../support/plans.ts';

const root = new URL('../../../', import.meta.url).pathname;

export interface RealRack {
  readonly variant: Variant;
  readonly words: readonly Words[];
  readonly document: (lang: string, edition: BookletEdition, paper?: Paper) => PrintDocument;
}

/** The standard rack with its real pictures, worked through as the command does it; takes some 15 s. */
export async function realRack(): Promise<RealRack> {
  const item = readItem(filesOnDisk(root), 'steps/rack/item.yaml');
  const model = buildModel(item, 'standard');
  const solids = await sharedSolids();
  const plan = planOnce(model, item.order, reportOf(item, model.size).advice.wall);
  const cuts = await cutsOnce(model);
  const variant = { item, model, plan, report: reportOf(item, model.size), cuts, pictures: itemPictures(model, plan, cuts, solids) };
  const variants = item.sizes.map(({ name }) => buildModel(item, name));
  const locales = localesOnDisk();
  const words = languagesIn(locales).map((lang) => loadWords(locales, lang));
  return {
    variant,
    words,
    document: (lang, edition, paper = 'a4') => {
      const source = words.find(({ about }) => about.source);
      if (!source) throw new Error('no source language');
      const [copy] = copiesOfEditions([edition], { papers: [paper], languageSets: languageSetsAsked(words, [lang]), source });
      if (!copy) throw new Error(`no language ${lang}`);
      // The pictures of A4, whatever the paper.
      const { pictures } = variant;
      return copy.of(sizeToPublish(variant, variants, { pictures: { page: pictures, small: pictures, thumb: [] }, languages: words }), null).document();
    },
  };
}
