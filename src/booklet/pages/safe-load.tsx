import type { ReactNode } from 'react';
import type { Caution } from '../../plan/index.ts';
import type { Use } from '../../read/index.ts';
import { CautionList, type Sentences } from './caution-list.tsx';
import { ChapterHeading } from './chapter.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { Load } from './load-figures.tsx';
import { OnlyFor } from './only-for.tsx';
import { sheets } from './sheet.ts';
import type { BookletInput } from './types.ts';

/** Height of the wall fixing's picture, mm; over the pictures of a bed there is less room. */
const wallHeight = 72;
const lowWallHeight = 44;

/** Cautions for the use of the finished item, and where one says something else than at work. */
interface UseCautions {
  readonly cautions: readonly Caution[];
  readonly sentences: Sentences;
}

/** A seat is there to be sat on, and a child's bed for a child: their cautions say what is not to be done there. */
const useCautions: Readonly<Record<Use, UseCautions>> = {
  storage: { cautions: ['climbing', 'children'], sentences: {} },
  table: { cautions: ['climbing', 'children'], sentences: {} },
  seat: { cautions: ['climbing'], sentences: { climbing: 'seat' } },
  bed: { cautions: ['climbing', 'children'], sentences: { climbing: 'bed', children: 'bed' } },
};

/** What the item may carry and for whom it is, fixing to the wall, and the cautions for use. */
export function safeLoad(input: BookletInput): readonly ReactNode[] {
  const { words, glyphs, edition, model, report: { advice } } = input;
  const fixing = words.t('booklet.fix-to-wall');
  const { cautions, sentences } = useCautions[model.use];
  const signs = <CautionList input={input} cautions={[...cautions, ...(advice.fixToWall ? ['tipping' as const] : []), 'manual']} sentences={sentences} />;
  const { narrow } = sheets[input.paper];
  const load = (
    <div className="load main" key="load">
      <ChapterHeading input={input} name="load" />
      <div className="safe">
        <Load input={input} />
        {advice.fixToWall && (
          <div className="told">
            <GlyphMark glyph={glyphs.plain('wall-fix')} label={fixing} height={model.use === 'bed' ? lowWallHeight : wallHeight} />
            {edition === 'words' && <p>{fixing}</p>}
          </div>
        )}
        {model.use === 'bed' && <OnlyFor input={input} />}
      </div>
      {!narrow && signs}
    </div>
  );
  return narrow ? [load, <div className="load main" key="signs">{signs}</div>] : [load];
}
