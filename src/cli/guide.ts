import { join } from 'node:path';
import { languagesIn, loadWords } from '../booklet/index.ts';
import * as drawing from '../draw/index.ts';
import { buildModel, loadSolids } from '../model/index.ts';
import { localeFiles, makeFolder } from './files.ts';
import { workThrough } from './make.ts';
import { writeTold } from './printed.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { variantGuide } from './variant-guide.ts';

export interface GuideOptions {
  readonly size?: readonly string[];
  readonly lang?: readonly string[];
  readonly out: string;
  readonly despiteFindings?: boolean;
}

/** Writes the phone guide of each size asked for. What can be refused is refused before the first file is written. */
export async function guideCommand(name: string, options: GuideOptions): Promise<void> {
  const locales = localeFiles('locales');
  const languages = chosen(languagesIn(locales), options.lang, 'lang').map((lang) => loadWords(locales, lang));
  for (const item of itemsNamed(name)) {
    const drafts = [];
    for (const size of chosen(sizesOf(item), options.size, 'size')) drafts.push(await workThrough(item, size, options));
    const models = sizesOf(item).map((size) => buildModel(item, size));
    for (const { folder, variant } of drafts) {
      const { model, plan, cuts } = variant;
      const pictures = drawing.itemPictures(model, plan, cuts, await loadSolids());
      const file = join(folder, `${item.name}-${model.size}.html`);
      makeFolder(folder);
      writeTold(file, await variantGuide({ ...variant, pictures }, models, languages));
    }
  }
}
