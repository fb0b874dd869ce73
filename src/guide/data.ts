/**
 * What the page hands its own script, as JSON: the words of all languages and the models of the steps.
 * This file holds types alone, for the builder and for the script in the browser.
 */
export interface GuideData {
  /** Names this guide in the phone's memory: item, size and the mark of what it was made from. */
  readonly memory: string;
  readonly languages: readonly GuideLanguage[];
  /** For each language, in the same order, its texts by number. */
  readonly texts: readonly (readonly string[])[];
  readonly solids: PackedSolids;
}

export interface GuideLanguage {
  /** BCP 47. */
  readonly tag: string;
  /** In the language itself. */
  readonly name: string;
  readonly direction: 'ltr' | 'rtl';
  /** Size of running text against Latin. */
  readonly textScale: number;
}

/** The solid models of the steps. Lengths in mm; numbers in base64 are 16 bit, low byte first. */
export interface PackedSolids {
  readonly meshes: readonly PackedMesh[];
  /** Poses as the first three rows of their matrix, row by row: 12 numbers. */
  readonly poses: readonly (readonly number[])[];
  /** By the id of the step's page. */
  readonly stands: Readonly<Record<string, PackedStand>>;
}

export interface PackedMesh {
  /** A corner is `least + count × step` along each axis. */
  readonly least: readonly number[];
  readonly step: number;
  /** Base64 of three counts a corner. */
  readonly corners: string;
  /** Base64 of three corners' numbers a triangle, anticlockwise from outside. */
  readonly triangles: string;
}

/** What stands when a step is done, and how it came there. */
export interface PackedStand {
  /** Direction from the work to the eye. */
  readonly towardsEye: readonly number[];
  /** Number of the mesh, number of the pose, and 1 for a body that is new, else 0. */
  readonly bodies: readonly PackedBody[];
  /** Moments before the end, in order, evenly apart; none where nothing moves. */
  readonly before: readonly PackedMoment[];
}

export type PackedBody = readonly [mesh: number, pose: number, fresh: 0 | 1];

/** Where a moment differs from the end. */
export interface PackedMoment {
  /** The whole work's pose against its pose at the end, where it is turned as a whole: number of a pose. */
  readonly whole?: number;
  /** Other bodies in the place of some: number of the body, its mesh and its pose. */
  readonly bodies?: readonly (readonly [body: number, mesh: number, pose: number])[];
}
