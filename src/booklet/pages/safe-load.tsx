import type { ReactNode } from 'react';
import type { Caution } from '../../plan/index.ts';
import type { Use } from '../../read/index.ts';
import { cautionPages, type Sentences } from './caution-list.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { Load, loadHeight } from './load-figures.tsx';
import { OnlyFor, onlyForHeight } from './only-for.tsx';
import { safePad, toldHeight, toldWidth } from './told.ts';
import { Said, type Say } from './tongues.tsx';
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
export const useCautions: Readonly<Record<Use, UseCautions>> = {
  storage: { cautions: ['climbing', 'children'], sentences: {} },
  table: { cautions: ['climbing', 'children'], sentences: {} },
  seat: { cautions: ['climbing'], sentences: { climbing: 'seat' } },
  bed: { cautions: ['climbing', 'children'], sentences: { climbing: 'bed', children: 'bed' } },
};

/** What the item may carry and for whom it is, fixing to the wall, and the cautions for use. */
export function safeLoad(input: BookletInput): readonly ReactNode[] {
  const { model, report: { advice } } = input;
  const { cautions, sentences } = useCautions[model.use];
  return cautionPages(input, {
    name: 'load',
    className: 'load',
    over: [
      { height: safeHeight(input), node: <Safe key="safe" input={input} /> },
      ...(model.use === 'bed' ? [{ height: onlyForHeight(input), node: <OnlyFor key="only-for" input={input} /> }] : []),
    ],
    cautions: [...cautions, ...(advice.fixToWall ? ['tipping' as const] : []), 'manual'],
    sentences,
  });
}

const fixing: Say = ({ words }) => words.t('booklet.fix-to-wall');

function Safe({ input }: { readonly input: BookletInput }): ReactNode {
  const { glyphs, edition, report: { advice } } = input;
  return (
    <div className="safe">
      <Load input={input} />
      {advice.fixToWall && (
        <div className="told">
          <GlyphMark glyph={glyphs.plain('wall-fix')} label={fixing(input)} height={wallPictureHeight(input)} />
          {edition === 'words' && <p><Said input={input} say={fixing} /></p>}
        </div>
      )}
    </div>
  );
}

function wallPictureHeight({ model }: BookletInput): number {
  return model.use === 'bed' ? lowWallHeight : wallHeight;
}

/** Height of what is told of loads and wall, with the white round it, mm. */
function safeHeight(input: BookletInput): number {
  const wall = input.report.advice.fixToWall ? toldHeight(input, fixing, wallPictureHeight(input), toldWidth(input)) : 0;
  return 2 * safePad + Math.max(loadHeight(input), wall);
}
