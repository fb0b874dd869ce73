import type { ReactNode } from 'react';
import type { Use } from '../../cut/index.ts';
import { packPages } from '../pages/pack.ts';
import { bandRoom, headingLine, headingWhite, sheets } from '../pages/sheet.ts';
import { lineScale } from '../pages/setting.ts';
import { Spoken } from '../pages/spoken.tsx';
import { isolate } from '../words/index.ts';
import { panelSides, partOf, sidesOf, tubeSides } from './said.ts';
import type { CutPagesInput } from './types.ts';

/** Height of a table's head and of each line in it, mm; a row has a line for each use. */
const pieceHead = 8;
const pieceLine = 6;
const pieceGap = 2.4;

export interface LetteredPiece {
  readonly letter: string;
  readonly sides: readonly number[];
  readonly count: number;
  readonly uses: readonly Use[];
}

export const letteredPieces = ({ order }: CutPagesInput): readonly LetteredPiece[] => [
  ...order.tubePieces.map((piece) => ({ ...piece, sides: tubeSides(piece) })),
  ...order.panelPieces.map((piece) => ({ ...piece, sides: panelSides(piece) })),
];

const pieceRowHeight = ({ uses }: LetteredPiece): number => uses.length * pieceLine + pieceGap;

/** The chapter's title with the white under it, mm. */
const headingHeight = ({ words }: CutPagesInput): number => headingLine * lineScale(words) + headingWhite;

/** Every piece by its letter, with its size, its count and what it becomes. */
export function piecesPages(input: CutPagesInput): readonly ReactNode[] {
  const room = bandRoom(sheets[input.paper]) - pieceHead - 4;
  const rows = letteredPieces(input).map((piece) => ({ piece, height: pieceRowHeight(piece) }));
  return packPages(rows, room, room - headingHeight(input)).map((page, index) => (
    <div className="main" key={`pieces ${index}`}>
      {index === 0 && <div className="heading" style={{ height: `${headingHeight(input)}mm` }}><h1 className="chapter">{input.words.t('cutting.pieces.title')}</h1></div>}
      <PieceTable input={input} pieces={page.map(({ piece }) => ({ piece, count: piece.count }))} each />
    </div>
  ));
}

interface PieceTableProps {
  readonly input: CutPagesInput;
  readonly pieces: readonly { readonly piece: LetteredPiece; readonly count: number }[];
  /** Whether each use tells its own count. */
  readonly each?: boolean;
}

export function PieceTable({ input, pieces, each = false }: PieceTableProps): ReactNode {
  const { words } = input;
  return (
    <table className="cut-table pieces-by-letter">
      <thead><tr style={{ height: `${pieceHead}mm` }}>
        <th scope="col">{words.t('cutting.pieces.letter')}</th><th scope="col">{words.t('cutting.pieces.size')}</th>
        <th scope="col" className="number">{words.t('booklet.quantity')}</th><th scope="col">{words.t('cutting.pieces.becomes')}</th>
      </tr></thead>
      <tbody>
        {pieces.map(({ piece, count }) => (
          <tr key={piece.letter} style={{ height: `${pieceRowHeight(piece)}mm` }}>
            <th scope="row" className="letter"><Spoken text={isolate(piece.letter)} /></th>
            <td><Spoken text={sidesOf(input, piece.sides)} /></td>
            <td className="number"><b>{words.number(count)}</b></td>
            <td>{piece.uses.map((use, index) => (
              <div className="use" key={index}>{partOf(input, use)}{each && piece.uses.length > 1 && <> <Spoken text={words.times(use.count)} /></>}</div>
            ))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
