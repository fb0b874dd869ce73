import type { Advice, Finding, Remedy } from '../../../check/index.ts';
import type { Box3, NamedLength, PartKind, Pose, TubeNeed } from '../../../model/index.ts';
import type { Step } from '../../../plan/index.ts';
import type { BookletEdition, Paper } from '../../../booklet/index.ts';
import type { Use } from '../../../read/index.ts';
import type { Look, Mark } from '../../../scene/index.ts';

/** Which item, size and values a worker is to work on. */
export interface Subject {
  /** Counts up with every change: an answer to an older run may be dropped. */
  readonly run: number;
  /** Item and kit files by path. */
  readonly files: Readonly<Record<string, string>>;
  readonly path: string;
  readonly size: string;
  /** Values that differ from the file's, as they would stand there. */
  readonly values: Readonly<Record<string, string>>;
}

/** A mesh for the screen: corners x y z, triangles by corners, and the ends of its sharp edges. */
export interface Geometry {
  readonly key: string;
  readonly positions: Float32Array;
  readonly triangles: Uint32Array;
  readonly edges: Float32Array;
}

export interface ShownBody {
  readonly id: string;
  /** The part that it is, or is drawn on, or stands for; null for a tool. */
  readonly partId: string | null;
  readonly kind: PartKind | 'floor' | 'tool';
  readonly look: Look;
  readonly geometry: string;
  readonly pose: Pose;
}

/** Bodies for the screen. Meshes that were in an earlier packet of the same series are not sent again. */
export interface Packet {
  /** All packets with the same shapes; keys of meshes begin with it. */
  readonly series: string;
  readonly bodies: readonly ShownBody[];
  readonly fresh: readonly Geometry[];
  /** The box to be seen, mm. */
  readonly reach: Box3;
}

/** A drawing as SVG with its size on paper, mm. */
export interface Drawing {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

export interface Shaped {
  readonly answer: 'shaped';
  readonly run: number;
  readonly packet: Packet;
  /** The lettered lengths as lines round the item. */
  readonly marks: readonly Mark[];
  readonly use: Use;
  readonly dimensions: readonly NamedLength[];
  /** With the letter that is written on each of a length. */
  readonly tubes: readonly (TubeNeed & { readonly letter: string })[];
  /** Stock tubes that the pieces are sawn from. */
  readonly stockTubes: { readonly used: number; readonly length: number };
  readonly blank: readonly [number, number];
  readonly pattern: Drawing;
  readonly bars: Drawing;
  readonly plates: readonly Drawing[];
}

export interface Checked {
  readonly answer: 'checked';
  readonly run: number;
  readonly findings: readonly Finding[];
  readonly advice: Advice;
}

/** Values that give no item: a line a fault, as the command would tell it. */
export interface Faulty {
  readonly answer: 'faulty';
  readonly run: number;
  readonly told: string;
}

/** Which measure sets a lettered length of the finished item; `slope` is how far the length moves with it. */
export interface Driver {
  readonly letter: string;
  readonly parameter: string;
  readonly slope: number;
}

export interface Driven {
  readonly answer: 'driven';
  readonly run: number;
  readonly drivers: readonly Driver[];
}

export type ShaperAnswer = Shaped | Checked | Driven | Faulty;

export interface MenderOrder {
  readonly subject: Subject;
  readonly finding: Finding['name'];
}

export type MenderAnswer =
  | { readonly answer: 'remedy'; readonly remedy: Remedy }
  /** Every parameter is tried. */
  | { readonly answer: 'tried' }
  | Faulty;

/** One reason for a step's place, and the numbers of the steps it has to do with. */
export interface Why {
  /** `needed`: their parts are. `in-the-way`: of what they leave behind, the parts named. `designer`: a wish. `practice`: a rule of the work. */
  readonly why: 'needed' | 'in-the-way' | 'designer' | 'practice';
  readonly steps: readonly number[];
  /** Kinds of the parts in the way. */
  readonly parts: readonly PartKind[];
  /** The rule's own reason, in English; null for the others. */
  readonly rule: string | null;
}

/** A step with its sentence in the page's language. */
export interface PlannedStep {
  readonly step: Step;
  readonly caption: string;
  readonly alt: string;
  /** Why it comes where it does. */
  readonly why: readonly Why[];
}

export type PlannerOrder =
  | { readonly order: 'plan'; readonly subject: Subject; readonly lang: string; readonly locales: Readonly<Record<string, string>> }
  | { readonly order: 'words'; readonly lang: string }
  | { readonly order: 'moment'; readonly number: number; readonly done: number }
  | { readonly order: 'picture'; readonly number: number };

export type PlannerAnswer =
  | { readonly answer: 'planned'; readonly run: number; readonly steps: readonly PlannedStep[] }
  | { readonly answer: 'moment'; readonly run: number; readonly number: number; readonly done: number; readonly packet: Packet; readonly marks: readonly Mark[] }
  | { readonly answer: 'picture'; readonly run: number; readonly number: number; readonly drawings: readonly Drawing[] }
  | Faulty;

export type PrinterOrder =
  | { readonly order: 'draw'; readonly subject: Subject; readonly locales: Readonly<Record<string, string>> }
  | { readonly order: 'pages'; readonly lang: string; readonly edition: BookletEdition; readonly paper: Paper };

export type PrinterAnswer =
  | { readonly answer: 'drawn'; readonly run: number; readonly drawn: number; readonly expected: number }
  | { readonly answer: 'pages'; readonly run: number; readonly lang: string; readonly edition: BookletEdition; readonly paper: Paper; readonly html: string; readonly css: string; readonly dir: 'ltr' | 'rtl' }
  | Faulty;
