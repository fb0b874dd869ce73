import type { Mesh, PartKind, Pose, Vec3 } from '../model/index.ts';
import type { Told } from './told.ts';

/** How a body is shown: as it stands, tinted as new in this step, pale as a reminder, black as it is drawn on a part, or by its edges alone where others hide it. */
export type Look = 'present' | 'new' | 'pale' | 'drawn';

export interface SceneBody {
  readonly id: string;
  /** The part that it is, or is drawn on, or stands for; null for a tool. */
  readonly partId: string | null;
  readonly kind: PartKind | 'floor' | 'tool';
  readonly mesh: Mesh;
  readonly pose: Pose;
  readonly look: Look;
  /** It closes an opening that ends blind: dark on paper. */
  readonly closesBlind?: true;
}

/** What lies over the drawing. Positions in the scene, in mm; marks are never hidden by parts. */
export type Mark =
  /** A motion: a path of at least two points, the head at the last. Straight for a slide, many points for a turn. */
  | { readonly mark: 'arrow'; readonly path: readonly Vec3[] }
  /** A count such as `×4` or a letter, beside the place with a leader line. */
  | { readonly mark: 'label'; readonly at: Vec3; readonly told: Told }
  /** A ringed numeral that tells the order of places, as close to the place as it fits. */
  | { readonly mark: 'order'; readonly at: Vec3; readonly told: Told }
  /** A dimension line between two places, moved off by `away` (mm); `dots` on places that lie on no edge. */
  | { readonly mark: 'length'; readonly from: Vec3; readonly to: Vec3; readonly away: Vec3; readonly told: Told; readonly dots?: true }
  /** The thread of a shank so thick, mm, from one place of its axis to another. */
  | { readonly mark: 'thread'; readonly from: Vec3; readonly to: Vec3; readonly diameter: number }
  /** Turned on by hand: a way round an axis, the head at its end. */
  | { readonly mark: 'turned-on'; readonly path: readonly Vec3[] }
  /** The line that work is turned over about. */
  | { readonly mark: 'axis'; readonly from: Vec3; readonly to: Vec3 }
  /** A hand of the person who works (1), or of the second one who holds (2), at a place of the work; the direction in which its fingers reach over it. */
  | { readonly mark: 'hand'; readonly at: Vec3; readonly onto: Vec3; readonly person: 1 | 2 }
  /** A ring of `radius` mm round a place, shown enlarged in a bigger ring joined by a leader. */
  | { readonly mark: 'detail'; readonly at: Vec3; readonly radius: number };

/** A parallel view: the direction from the work to the eye, and which way is up on paper. */
export interface View {
  readonly towardsEye: Vec3;
  readonly up: Vec3;
}

export interface Scene {
  readonly id: string;
  /** Its number in a corner of its picture, where the step's picture points to it by that. */
  readonly number?: number;
  readonly bodies: readonly SceneBody[];
  readonly marks: readonly Mark[];
  readonly view: View;
  /** Where the worker goes, where the scene before is seen from another side, or that he still stands there. Left out where he stands before the work as ever. */
  readonly walk?: Walk;
}

/** Where the worker stands: before the work, a little to the right as in most pictures, or at its left, or behind it. */
export type Stand = 'front' | 'left' | 'behind';

export interface Walk {
  readonly was: Stand;
  readonly is: Stand;
}
