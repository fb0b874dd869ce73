import type { Shape, Vec3 } from '../model/types.ts';
import type { Stock } from '../read/index.ts';

export type Form = Shape['form'];
export type ShapeOf<Of extends Form> = Extract<Shape, { readonly form: Of }>;

/** A count of a stock. */
export type CountedAs = Extract<keyof Stock, 'joints' | 'panelPins' | 'jointPins' | 'wingNuts'>;

/** All that is known of a kind of part but for where it sits. What is left out does not hold of it. */
export interface PartFacts {
  /** kg; `density` is that of what it is cut from, kg/mm³, and says nothing of other parts. */
  readonly mass: (shape: Shape, density: number) => number;
  /** What its pages tell of its size, rounded as it is printed, mm: a length, or two sides; nothing of parts that come in one size. */
  readonly size: (shape: Shape) => readonly number[];
  /** The first of its sizes is a diameter. */
  readonly isRound?: true;
  /** What tells it from other parts of its kind but for its size: a name in the kit, an outline. */
  readonly variety: (shape: Shape) => string;
  /** What it is called, where that hangs on its shape: a name under `parts` in the locale files; null where the kind's own name serves. */
  readonly named: (shape: Shape) => string | null;
  /** Before holes are drilled in it. */
  readonly undrilled: (shape: Shape) => Shape;
  /** As it comes to hand, undrilled. */
  readonly delivered: (shape: Shape) => Shape;
  /** What it comes from in a stock and in a kit: cut from it, one of these, counted without a size, or told by neither. */
  readonly stock: { readonly cutFrom: 'tubes' | 'panels' } | { readonly oneOf: 'cables' } | { readonly untold: true } | { readonly counted: CountedAs };
  /** mm of paper for one mm of part: on a page of parts, on such a small page, and at the head of a step. */
  readonly scale: { readonly page: number; readonly small: number; readonly head: number };
  /** It is limp: alone it is shown in a coil, whatever its length. */
  readonly isLimp?: true;
  /** It is shown whole, however long: a break would leave out what matters. */
  readonly isWhole?: true;
  /** It is shown as it lies while it is worked on, not as its own axes lie. */
  readonly isShownAtWork?: true;
  /** It can be put on the wrong way up: it is shown as it lies in the step that it is for. */
  readonly hasWayUp?: true;
  /** Direction from the part to the eye, and which way is up on paper; as in the steps when left out. */
  readonly view?: { readonly towardsEye: Vec3; readonly up: Vec3 };
}

/** What is told of a kind of part, its shape being of one of some forms. */
export type PartTold<Of extends Form> =
  & Omit<PartFacts, 'mass' | 'size' | 'variety' | 'named' | 'undrilled' | 'delivered'>
  & {
    readonly mass: (shape: ShapeOf<Of>, density: number) => number;
    readonly size?: (shape: ShapeOf<Of>) => readonly number[];
    readonly variety?: (shape: ShapeOf<Of>) => string;
    readonly named?: (shape: ShapeOf<Of>) => string;
    readonly undrilled?: (shape: ShapeOf<Of>) => Shape;
    readonly delivered?: (shape: ShapeOf<Of>) => Shape;
  };
