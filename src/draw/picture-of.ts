import type { PartKind } from '../model/index.ts';
import type { SupplyName } from '../plan/index.ts';

/** What a picture is of. Numbers that tell a place in a list count from 0; a step goes by its number. */
export type PictureOf =
  /** The finished item, for the pages of a booklet, and on a thumbnail. */
  | { readonly what: 'finished' }
  /** The finished item as the last step leaves it, where it lies another way round then. */
  | { readonly what: 'ready' }
  | { readonly what: 'finished-thumb' }
  /** The finished item with its lettered lengths. */
  | { readonly what: 'lettered' }
  /** One of the items of an order, finished. */
  | { readonly what: 'ordered'; readonly place: number }
  /** A kind of part at a stated scale, each variety of it; and small, of flat panels by the place in the model's list. */
  | { readonly what: 'part'; readonly kind: PartKind; readonly variety?: number }
  | { readonly what: 'small-part'; readonly kind: PartKind; readonly plate: number }
  /** A thing that is taken beside the parts, at the scale of the page of parts; and small. */
  | { readonly what: 'supply'; readonly name: SupplyName }
  | { readonly what: 'small-supply'; readonly name: SupplyName }
  /** A part that a step brings, small, as it lies there, where that matters. */
  | { readonly what: 'step-part'; readonly step: number; readonly kind: PartKind }
  /** The blocks that a step puts under, small, with how many and how high. */
  | { readonly what: 'step-blocks'; readonly step: number }
  /** All the blocks to fetch, and what will do for one. */
  | { readonly what: 'blocks' }
  /** The whole tubes, panels and cables to fetch. */
  | { readonly what: 'stock' }
  /** The stock tubes to saw, in one piece or several. */
  | { readonly what: 'cut-bars'; readonly piece: number }
  /** A pattern that is folded, and how a flap of it is, by its place in the model's list. */
  | { readonly what: 'pattern'; readonly pattern: number }
  | { readonly what: 'crease-section'; readonly pattern: number }
  /** A flat panel as it is cut, by its place in the model's list. */
  | { readonly what: 'plate'; readonly plate: number }
  /** What a run of steps makes. */
  | { readonly what: 'run'; readonly run: string }
  /** A step: its main picture is piece 0, further ones follow. */
  | { readonly what: 'step'; readonly step: number; readonly piece: number }
  | { readonly what: 'step-thumb'; readonly step: number }
  /** Sheets of an order's cut plan and of marking templates, in their own order. */
  | { readonly what: 'tube-sheet'; readonly place: number }
  | { readonly what: 'panel-sheet'; readonly place: number }
  | { readonly what: 'marking-sheet'; readonly place: number };

/** Anything that stands for a picture: the picture itself, its size, its form in a book. */
export interface OfPicture {
  readonly of: PictureOf;
}

/** What may need several pictures. */
export type InPieces = { readonly what: 'cut-bars' } | { readonly what: 'step'; readonly step: number };

/** A picture's name where it leaves the program: in files, pages and PDFs. It is made here and never taken apart. */
export function pictureId(of: PictureOf): string {
  switch (of.what) {
    case 'finished-thumb': return 'thumb:finished';
    case 'ordered': return `finished:${of.place + 1}`;
    case 'part': return numbered(`part:${of.kind}`, of.variety ?? 0);
    case 'small-part': return numbered(`small:${of.kind}`, of.plate);
    case 'supply': return `supply:${of.name}`;
    case 'small-supply': return `small:${of.name}`;
    case 'step-part': return `small:${of.kind}:step:${of.step}`;
    case 'step-blocks': return `small:blocks:step:${of.step}`;
    case 'cut-bars': return lettered('cut-bars', of.piece);
    case 'pattern': return numbered('pattern', of.pattern);
    case 'crease-section': return numbered('crease-section', of.pattern);
    case 'plate': return `plate:${of.plate + 1}`;
    case 'run': return `run:${of.run}`;
    case 'step': return lettered(`step:${of.step}`, of.piece);
    case 'step-thumb': return `thumb:${of.step}`;
    case 'tube-sheet': return `tube:${of.place + 1}`;
    case 'panel-sheet': return `panel:${of.place + 1}`;
    case 'marking-sheet': return `sheet:${of.place + 1}`;
    default: return of.what;
  }
}

const numbered = (name: string, place: number): string => (place === 0 ? name : `${name}:${place + 1}`);

/** Pieces after the first have letters, as far as there are any. */
const lettered = (name: string, piece: number): string => (piece === 0 ? name : `${name}:${'abcdefghijklmnopqrstuvwxyz'[piece - 1] ?? piece}`);

/** A drawing as the picture of something. */
export const pictureAs = <Drawn extends object>(of: PictureOf, drawn: Drawn): Drawn & { readonly of: PictureOf; readonly id: string } => ({ ...drawn, of, id: pictureId(of) });

const isOf = (one: PictureOf, other: PictureOf): boolean => one.what === other.what && pictureId(one) === pictureId(other);

/** The entry for a picture, undefined where there is none. */
export const findPicture = <Entry extends OfPicture>(pictures: readonly Entry[], of: PictureOf): Entry | undefined =>
  pictures.find((entry) => isOf(entry.of, of));

/** The entry for a picture that must be there. Throws a RangeError that names all that are, `where` first. */
export function pictureOf<Entry extends OfPicture>(pictures: readonly Entry[], of: PictureOf, where: string): Entry {
  const found = findPicture(pictures, of);
  if (found === undefined) throw new RangeError(`${where}: no picture "${pictureId(of)}"; there are ${pictures.map((entry) => pictureId(entry.of)).sort().join(', ') || 'none'}`);
  return found;
}

/** All pictures of a thing that may need several, in order. */
export function piecesOf<Entry extends OfPicture>(pictures: readonly Entry[], thing: InPieces): readonly Entry[] {
  const found = pictures.flatMap((entry) => (isPieceOf(entry.of, thing) ? [{ entry, piece: entry.of.piece }] : []));
  return found.sort((one, other) => one.piece - other.piece).map(({ entry }) => entry);
}

function isPieceOf(of: PictureOf, thing: InPieces): of is Extract<PictureOf, { readonly piece: number }> {
  if (of.what === 'step') return thing.what === 'step' && of.step === thing.step;
  return of.what === 'cut-bars' && thing.what === 'cut-bars';
}
