import type { Model, PartKind } from '../../model/index.ts';
import type { Kit, StockDefect } from '../../read/index.ts';
import type { CutPart, Rectangle } from '../sheets/index.ts';

/** So many of one size of an item. */
export interface OrderLine {
  readonly model: Model;
  readonly count: number;
}

/** What a cut piece becomes. */
export interface Use {
  readonly item: string;
  readonly size: string;
  readonly kind: PartKind;
  readonly count: number;
}

/** Pieces of one length, whatever they become: they are marked with one letter. mm. */
export interface TubePiece {
  readonly letter: string;
  readonly length: number;
  readonly count: number;
  readonly uses: readonly Use[];
}

/** Pieces of one size, cut as rectangles: blanks of wrapped panels, and flat panels. mm. */
export interface PanelPiece {
  readonly letter: string;
  readonly width: number;
  readonly height: number;
  readonly count: number;
  readonly uses: readonly Use[];
}

/** Where a stock piece comes from: the pile under a name, or a whole kit. */
export interface Source {
  readonly from: 'stock' | 'kit';
  readonly name: string;
}

/** A part of a known item that an off-cut is large enough for. */
export interface Serves {
  readonly item: string;
  readonly size: string;
  readonly kind: PartKind;
  /** mm; one figure for a tube, two for a panel. */
  readonly sides: readonly number[];
}

/** Tubes sawn alike. All in mm from the sound end. */
export interface TubeSheet {
  readonly source: Source;
  readonly times: number;
  readonly length: number;
  /** The rest of the tube beyond is damaged. */
  readonly usable: number;
  /** Letters of the pieces from the sound end. */
  readonly pieces: readonly string[];
  /** Where each piece ends: where the saw begins. */
  readonly ends: readonly number[];
  /** How much shorter than its name each piece comes out, because the cuts are shared. */
  readonly shorter: number;
  /** What is left beyond the last cut, without the damaged end. */
  readonly offCut: number;
  readonly serves: readonly Serves[];
}

export interface OffCut {
  /** What is cut off. */
  readonly region: Rectangle;
  /** The largest part of it without a defect; null where there is none. */
  readonly clear: Rectangle | null;
  readonly serves: readonly Serves[];
}

/** Panels cut alike. All in mm from the lower left corner, the longer side from left to right. */
export interface PanelSheet {
  readonly source: Source;
  readonly times: number;
  readonly length: number;
  readonly width: number;
  readonly grain: 'length' | 'width' | null;
  readonly defects: readonly StockDefect[];
  readonly cuts: CutPart;
  /** The first piece of a letter of which there are several is the pattern that the others are traced from. */
  readonly pieces: readonly (Rectangle & { readonly letter: string; readonly turned: boolean; readonly isPattern: boolean })[];
  readonly offCuts: readonly OffCut[];
}

/** How well the stock is used. Tubes in mm, panels in mm². */
export interface Thrift {
  /** Stock pieces used. */
  readonly used: number;
  /** Of them from whole kits. */
  readonly fromKits: number;
  /** No plan needs fewer from kits. */
  readonly fewestFromKits: number;
  /** What the stock pieces used measure, damage left out. */
  readonly stock: number;
  /** What the wanted pieces measure. */
  readonly pieces: number;
  /** What off-cuts measure that are large enough for a part of a known item. */
  readonly useful: number;
  /** No plan that takes as few from kits uses less stock than this. */
  readonly leastStock: number;
  /** Whether nothing better is possible, in pieces from kits and in stock used. */
  readonly proven: boolean;
}

/** A part that is only counted. */
export interface Counted {
  readonly kind: PartKind;
  readonly needed: number;
  /** What was counted; null where whole kits are taken. */
  readonly there: number | null;
  readonly short: number;
}

/** Whole kits to fetch. */
export interface KitsNeeded {
  /** Null where the kit file does not tell what a kit holds. */
  readonly kits: number | null;
  /** How many of each part come out of kits, and how many kits that takes. */
  readonly parts: readonly { readonly kind: 'panel' | 'tube' | Counted['kind']; readonly needed: number; readonly kits: number | null }[];
}

/** A planned order. */
export interface CutOrder {
  readonly kit: Kit;
  readonly lines: readonly OrderLine[];
  /** Name of the stock it is cut from; null where whole kits are taken. */
  readonly stock: string | null;
  readonly tubePieces: readonly TubePiece[];
  readonly tubes: readonly TubeSheet[];
  readonly tubeThrift: Thrift;
  readonly panelPieces: readonly PanelPiece[];
  readonly panels: readonly PanelSheet[];
  readonly panelThrift: Thrift;
  readonly counted: readonly Counted[];
  readonly kits: KitsNeeded;
}
