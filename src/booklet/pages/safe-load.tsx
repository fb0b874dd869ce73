import type { Caution } from '../../plan/index.ts';
import type { Use } from '../../read/index.ts';
import { cautionPages, type Block, type Sentences } from './caution-list.tsx';
import { signForWhom } from './for-whom.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { loadTold } from './load-figures.tsx';
import { onlyFor } from './only-for.tsx';
import { sheets } from './sheet.ts';
import { toldBlocks, type Told } from './told-pair.tsx';
import { safePad, toldWidth } from './told.ts';
import type { Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Height of the wall fixing's picture, mm; over the pictures of a bed there is less room. */
const wallHeight = 72;
const lowWallHeight = 44;
/** Height of the pictograms' grid, units. */
const gridHeight = 48;

/** Cautions for the use of the finished item, and where one says something else than at work. */
interface UseCautions {
  readonly cautions: readonly Caution[];
  readonly sentences: Sentences;
}

/** A seat is there to be sat on, and a child's bed for a child: their cautions say what is not to be done there. */
const cautionsOf: Readonly<Record<Use, UseCautions>> = {
  storage: { cautions: ['climbing', 'sitting', 'children'], sentences: {} },
  table: { cautions: ['climbing', 'sitting', 'children'], sentences: {} },
  seat: { cautions: ['climbing'], sentences: { climbing: 'seat' } },
  bed: { cautions: ['climbing', 'children'], sentences: { climbing: 'bed', children: 'bed' } },
};

/** Cautions for the use of an item; where children may use it, none keeps them away: that one is for the work. */
export function useCautions({ model, report: { advice: { people } } }: Pick<BookletInput, 'model' | 'report'>): UseCautions {
  const { cautions, sentences } = cautionsOf[model.use];
  const areWelcome = people === 'anyone' || people === 'pupils';
  return { cautions: cautions.filter((caution) => caution !== 'children' || !areWelcome), sentences };
}

/** What the item may carry and for whom it is, fixing to the wall, and the cautions for use; `taken`, mm, of the first page is something else. */
export function safeLoad(input: BookletInput, taken = 0): readonly Block[] {
  const { model, report: { advice } } = input;
  const { cautions, sentences } = useCautions(input);
  return cautionPages(input, {
    name: 'load',
    className: 'load',
    over: [...safe(input), ...whoAndJoint(input), ...(model.use === 'bed' ? onlyFor(input) : [])],
    cautions: [...cautions, ...(advice.wall !== null ? ['tipping' as const] : []), 'manual'],
    sentences, taken,
  });
}

const fixing: Say = ({ words }) => words.t('booklet.fix-to-wall');

/** What it may carry, and the wall it is to be fixed to. */
function safe(input: BookletInput): readonly Block[] {
  return toldBlocks(input, 'safe', 2 * safePad, [loadTold(input), ...(input.report.advice.wall !== null ? [wallTold(input)] : [])]);
}

/** Height of the signs for whom it is and of joints that nobody tested, mm. */
const whoHeight = { wide: 24, narrow: 16 } as const;

/** For whom it is and for whom not, and that its joints are untested: a bed tells its child by itself. */
function whoAndJoint(input: BookletInput): readonly Block[] {
  const { people, untestedJoint } = input.report.advice;
  const who = signForWhom(people);
  const signs = [...(who === null ? [] : [who]), ...(untestedJoint ? ['untested-joint' as const] : [])];
  return signs.length === 0 ? [] : toldBlocks(input, 'safe', 2 * safePad, signs.map((sign) => signTold(input, sign)));
}

function signTold(input: BookletInput, sign: NonNullable<ReturnType<typeof signForWhom>> | 'untested-joint'): Told {
  const height = whoHeight[sheets[input.paper].narrow ? 'narrow' : 'wide'];
  const say: Say = ({ words }) => words.t(`booklet.${sign}`);
  return { name: sign, say, height, width: toldWidth(input), picture: <GlyphMark glyph={input.glyphs.plain(sign)} label={say(input)} height={height} /> };
}

/** The wall that it is fixed to, no wider than its column. */
function wallTold(input: BookletInput): Told {
  const [glyph, width] = [input.glyphs.plain('wall-fix'), toldWidth(input)];
  const height = Math.min(input.model.use === 'bed' ? lowWallHeight : wallHeight, (width * gridHeight) / glyph.width);
  return { name: 'wall', say: fixing, height, width, picture: <GlyphMark glyph={glyph} label={fixing(input)} height={height} /> };
}
