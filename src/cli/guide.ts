import { PUBLICATIONS, type Words } from '../booklet/index.ts';
import { itemPictures } from '../draw/index.ts';
import { buildModel, loadSolids } from '../model/index.ts';
import type { Item } from '../read/index.ts';
import { languagesAsked } from './asked.ts';
import { makeFolder } from './files.ts';
import { workThrough } from './make.ts';
import { plainProgress } from './progress.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { publish, type Batch } from './publish.ts';
import { guideCopy } from './variant-guide.ts';

export interface GuideOptions {
  readonly size?: readonly string[];
  readonly lang?: readonly string[];
  readonly out: string;
  readonly despiteFindings?: boolean;
}

/** Writes the phone guide of each size asked for. What can be refused is refused before the first file is written. */
export async function guideCommand(name: string, options: GuideOptions): Promise<void> {
  const languages = languagesAsked(options.lang);
  for (const item of itemsNamed(name)) await publish([PUBLICATIONS['phone-guide']], await guides(item, languages, options), plainProgress);
}

/** The guides of an item, each drawn when it is its turn; all are worked through before. */
async function guides(item: Item, languages: readonly Words[], options: GuideOptions): Promise<AsyncIterable<Batch>> {
  const drafts: Awaited<ReturnType<typeof workThrough>>[] = [];
  for (const size of chosen(sizesOf(item), options.size, 'size')) drafts.push(await workThrough(item, size, options));
  const models = sizesOf(item).map((size) => buildModel(item, size));
  return (async function* () {
    for (const { folder, variant } of drafts) {
      const { model, plan, cuts } = variant;
      const pictures = itemPictures(model, plan, cuts, await loadSolids());
      makeFolder(folder);
      yield { folder, copies: [guideCopy({ ...variant, pictures }, models, languages)] };
    }
  })();
}
