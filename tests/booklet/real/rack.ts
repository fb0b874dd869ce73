import type { BookletEdition, Paper, PrintDocument, Words } from '../../../src/booklet/index.ts';
import { copiesOfEditions, languagesIn, loadWords } from '../../../src/booklet/index.ts';
import { sizeToPublish } from '../../../src/cli/size-batches.ts';
import { languageSetsAsked } from '../../../src/cli/language-sets.ts';
import type { Variant } from '../../../src/cli/record.ts';
import { localesOnDisk } from '../pages/rack-booklet.ts';
import { rack, rackModel, sizes } from '../../support/rack.ts';
import { variantOf } from '../../support/variants.ts';

export interface RealRack {
  readonly variant: Variant;
  readonly words: readonly Words[];
  readonly document: (lang: string, edition: BookletEdition, paper?: Paper) => PrintDocument;
}

/** The standard rack with its real pictures, worked through as the command does it; takes some 15 s. */
export async function realRack(): Promise<RealRack> {
  const variant = await variantOf(rack, 'standard');
  const variants = sizes.map(rackModel);
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
