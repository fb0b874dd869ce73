import type { BookletInput } from '../booklet/index.ts';
import type { Picture } from '../draw/index.ts';
import type { Solids } from '../model/index.ts';

/** What a booklet of one language would tell; nothing of paper. */
export type Telling = Pick<BookletInput, 'model' | 'plan' | 'report' | 'variants' | 'words' | 'glyphs' | 'revision' | 'contentMark' | 'despiteFindings'>;

/** One size of an item, worked through, in all languages of its guide. */
export interface GuideInput {
  /** The first language names the controls until another is picked. */
  readonly tellings: readonly [Telling, ...Telling[]];
  readonly pictures: readonly Picture[];
  readonly solids: Solids;
  /** The page's own script, see `guideScript`. */
  readonly script: string;
}
