import type { Mesh, Pose, Vec2 } from '../model/index.ts';
import type { PictureOf } from './picture-of.ts';

/** A body to draw: its mesh in own coordinates and its pose in the scene (mm). */
export interface Body {
  readonly id: string;
  readonly mesh: Mesh;
  readonly pose: Pose;
}

/** A visible line on the view plane, in mm of the scene, x to the right and y upwards. */
export interface Stroke {
  /** `outline` where depth or body changes beside the line, `edge` inside one body. */
  readonly weight: 'outline' | 'edge';
  readonly points: readonly Vec2[];
  readonly closed: boolean;
  /** The body whose line it is, where that body's lines were asked for apart. */
  readonly body?: string;
}

/** The visible part of one body, as even-odd rings on the view plane. */
export interface Region {
  readonly body: string;
  readonly rings: readonly (readonly Vec2[])[];
}

export interface LineDrawing {
  readonly strokes: readonly Stroke[];
  readonly regions: readonly Region[];
  /** Visible area over own outline area (both mm² on the view plane) of a body, by its id, 0…1; 0 of one that is not there. */
  readonly visibleShare: (body: string) => number;
  /** Least and greatest x and y of everything drawn. */
  readonly bounds: { readonly min: Vec2; readonly max: Vec2 };
}

/** A rectangle on the picture in mm of paper, from the upper left corner, y downwards. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A picture as it is drawn: a whole `<svg>` element with a viewBox in mm of paper. */
export interface DrawnPicture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** Where every text and ringed numeral stands, for the tests: none may overlap or leave the picture. */
  readonly labels: readonly Box[];
  /** mm of paper for one mm of the scene, of a picture in space. */
  readonly scale?: number;
  /** Visible share of each new part. */
  readonly newPartShares: Readonly<Record<string, number>>;
  /** The same of what is drawn again, enlarged, beside the drawing. */
  readonly enlargedShares?: Readonly<Record<string, number>>;
}

/** A finished picture, which says of what it is. */
export interface Picture extends DrawnPicture {
  readonly of: PictureOf;
  /** Its name in files and PDFs, made from `of` by `pictureId`. */
  readonly id: string;
}
