import { FrameError } from './errors.ts';

/** An upright post; x and y of its axis and the heights of its ends, mm. */
export interface SwayPost {
  readonly x: number;
  readonly y: number;
  readonly foot: number;
  readonly top: number;
}

/** A deck or a frame of bare tubes. Posts are told by their index. */
export interface SwayLevel {
  /** Of the tubes' axes, mm. */
  readonly height: number;
  /** The sides that have a tube: pairs of posts. */
  readonly tubes: readonly (readonly [number, number])[];
  /** Whether a wrapped panel keeps it stiff in its own plane. */
  readonly stiffened: boolean;
}

/** From one post to another, at heights in mm. */
export interface SwayCable {
  readonly from: { readonly post: number; readonly height: number };
  readonly to: { readonly post: number; readonly height: number };
}

/** A flat panel pinned upright to the tubes between two posts, one low and one high. */
export interface SwayPlate {
  readonly posts: readonly [number, number];
  readonly low: number;
  readonly high: number;
  /** Distances of its outermost pins from the first post, mm. */
  readonly from: number;
  readonly to: number;
  /** E A of each of its two crossed struts and of each of its two upright edges, N. */
  readonly strutStiffness: number;
  readonly edgeStiffness: number;
}

/** What sways, in plain numbers: N, mm, N/mm². */
export interface SwayInput {
  readonly posts: readonly SwayPost[];
  readonly levels: readonly SwayLevel[];
  readonly cables: readonly SwayCable[];
  readonly plates?: readonly SwayPlate[];
  readonly tube: {
    readonly modulus: number;
    /** Area of the wall across, mm². */
    readonly area: number;
    /** Second moment of area, mm⁴. */
    readonly second: number;
    /** Share of the modulus left in used stock, 0 to 1. */
    readonly usedStockFactor: number;
  };
  /** E A of a cable, N: the force that would stretch it to double its length. */
  readonly cableStiffness: number;
  /** Sideways push on the top level, N. */
  readonly force: number;
}

/** Errors: FrameError, saying what was found and what would be right. */
export function refuseUnsoundSway(input: SwayInput): void {
  const { posts, levels, cables, plates = [], tube, cableStiffness, force } = input;
  const refuseUnless = (sound: boolean, message: string): void => { if (!sound) throw new FrameError(message); };
  refuseUnless(levels.some((level) => level.tubes.length > 0), 'no level has a tube; give at least one that joins two posts');
  posts.forEach(({ foot, top }, index) => {
    refuseUnless(top > foot, `post ${index} ends at ${top} mm, not over its foot at ${foot} mm`);
  });
  const refuseOff = (what: string, post: number, height: number): void => {
    const found = posts[post];
    if (!found) throw new FrameError(`${what} names post ${post}; there are ${posts.length}, counted from 0`);
    refuseUnless(height >= found.foot && height <= found.top, `${what} is at ${height} mm, off post ${post} (${found.foot} to ${found.top} mm)`);
  };
  levels.forEach((level, index) => { level.tubes.flat().forEach((post) => { refuseOff(`level ${index}`, post, level.height); }); });
  cables.forEach(({ from, to }, index) => { [from, to].forEach((end) => { refuseOff(`cable ${index}`, end.post, end.height); }); });
  plates.forEach((plate, index) => {
    const onLevels = [plate.low, plate.high].every((height) => levels.some((level) => isOn(level, plate.posts, height)));
    refuseUnless(onLevels, `plate ${index} is at ${plate.low} and ${plate.high} mm between posts ${plate.posts.join(' and ')}, where there are not two tubes`);
    refuseUnless(plate.to > plate.from && plate.high > plate.low, `plate ${index} has no size; give it pins apart in both directions`);
  });
  const positive = { modulus: tube.modulus, area: tube.area, second: tube.second, usedStockFactor: tube.usedStockFactor, cableStiffness, force };
  Object.entries(positive).forEach(([name, value]) => {
    refuseUnless(value > 0 && Number.isFinite(value), `${name} is ${value}; it must be more than 0`);
  });
}

/** Heights nearer than this are one joint, mm. */
export const SAME = 1;

/** Whether a level has a tube between these posts at this height. */
export const isOn = (level: SwayLevel, [a, b]: readonly [number, number], height: number): boolean =>
  Math.abs(level.height - height) < SAME && level.tubes.some((ends) => ends.includes(a) && ends.includes(b));
