import type { ReactNode } from 'react';
import { pictureId, piecesOf, type PictureOf } from '../../draw/index.ts';
import { tubeLetter } from '../../cut/index.ts';
import type { TubeNeed } from '../../model/index.ts';
import { isolate } from '../words/index.ts';
import { leastScale } from './break-pages.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { packPages } from './pack.ts';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { sheets, textSize } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import { Said, saidHeight, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Rows of the table, its head, and the white under the drawing, mm. */
const pieceHeight = 14;
/** Columns of the pieces on a wide page, and of their figures; on a narrow page the pieces have the rest. */
export const pieceWidth = 84;
export const pieceFigures = { wide: 36, narrow: 32 } as const;
export const pieceGap = 5;
export const piecesHead = 8;
export const barsGap = 8;

/**
 * How the stock tubes are cut, and every piece with its length and count: on one page, the drawing set smaller
 * if need be, or where that would be too small on two. A drawing in several pieces goes on as many as it needs.
 */
export function cutLengths(input: BookletInput): readonly ReactNode[] {
  const heading = <ChapterHeading input={input} name="lengths" />;
  const pieces = piecesOf(input.pictures, { what: 'cut-bars' }).map(({ of }) => of);
  if (sheets[input.paper].narrow || pieces.length > 1) return inPieces(input, pieces, heading);
  const room = pageRoom(input) - headingHeight(input, 'lengths') - barsGap;
  const { height } = pictureSize(input, whole);
  const besideTable = Math.min(1, (room - tableHeight(input)) / height);
  const bars = (scale: number): ReactNode => <PlacedPicture input={input} of={whole} alt={barsAlt(input)} scale={scale} />;
  const table = <LengthTable input={input} />;
  return besideTable >= leastScale
    ? [<div className="lengths main" key={0}>{heading}{bars(besideTable)}{table}</div>]
    : [<div className="lengths main" key={0}>{heading}{bars(Math.min(1, room / height))}</div>, <div className="lengths main" key={1}>{table}</div>];
}

/** The drawing in one piece. */
const whole: PictureOf = { what: 'cut-bars', piece: 0 };

/** The drawing in several pieces; the table stands under the last where there is room. */
function inPieces(input: BookletInput, pieces: readonly PictureOf[], heading: ReactNode): readonly ReactNode[] {
  const room = pageRoom(input) - barsGap;
  const drawings = pieces.map((of) => ({ height: pictureSize(input, of).height + barsGap, piece: <PlacedPicture key={pictureId(of)} input={input} of={of} alt={barsAlt(input)} /> }));
  const table = { height: tableHeight(input), piece: <LengthTable key="table" input={input} /> };
  return packPages([...drawings, table], room + barsGap, room + barsGap - headingHeight(input, 'lengths')).map((page, index) => (
    <div className="lengths main" key={index}>{index === 0 && heading}{page.map(({ piece }) => piece)}</div>
  ));
}

function barsAlt({ words, model }: BookletInput): string {
  const pieces = words.list(model.tubes.map((tube) => words.t('booklet.alt.piece', {
    piece: words.t(`parts.${tube.kind}.counted`, { count: tube.count }),
    length: words.measure(tube.length, 'mm', 1),
  })));
  return words.t('booklet.alt.cut-bars', { pieces });
}

const smallTube = ({ kind }: TubeNeed): PictureOf => ({ what: 'small-part', kind, plate: 0 });

const pieceName = ({ kind }: TubeNeed): Say => ({ words }) => words.t(`parts.${kind}.name`);

/** Height of the table, mm. */
function tableHeight(input: BookletInput): number {
  return piecesHead + input.model.tubes.reduce((sum, tube) => sum + rowHeight(input, tube), 0) + 1;
}

/** Height of a piece's row, its name beside its small picture, mm. */
function rowHeight(input: BookletInput, tube: TubeNeed): number {
  const { main, narrow } = sheets[input.paper];
  const width = (narrow ? main - 2 * pieceFigures.narrow : pieceWidth) - pieceGap - pictureSize(input, smallTube(tube)).width;
  return Math.max(pieceHeight, Math.ceil(saidHeight(input, pieceName(tube), width, { size: textSize })) + 1);
}

function LengthTable({ input }: { readonly input: BookletInput }): ReactNode {
  return (
    <table className="pieces">
      <thead>
        <tr>
          <td />
          <th scope="col"><Spoken text={isolate('mm')} /></th>
          <th scope="col"><Spoken text={isolate('×')} /></th>
        </tr>
      </thead>
      <tbody>
        {input.model.tubes.map((tube) => <LengthRow key={`${tube.kind} ${tube.length}`} input={input} tube={tube} />)}
      </tbody>
    </table>
  );
}

function LengthRow({ input, tube }: { readonly input: BookletInput; readonly tube: TubeNeed }): ReactNode {
  const { words, model } = input;
  const letter = tubeLetter(model, tube.length);
  return (
    <tr style={{ height: `${rowHeight(input, tube)}mm` }}>
      <th scope="row" className="piece">
        <div>
          <PlacedPicture input={input} of={smallTube(tube)} alt={pieceName(tube)(input)} />
          <span><Said input={input} say={pieceName(tube)} /></span>
        </div>
      </th>
      <td className="figure">{letter !== null && <><b><Spoken text={isolate(letter)} /></b> </>}<Spoken text={isolate(words.number(tube.length, 1))} /></td>
      <td className="figure"><Spoken text={words.times(tube.count)} /></td>
    </tr>
  );
}
