import type { PackedSolids, PackedStand } from '../../data.ts';
import { between, chained, type Pose } from './pose.ts';

/** A body at some moment: number of its mesh, where it stands, and whether the step brings it. */
export interface Standing {
  readonly mesh: number;
  readonly pose: Pose;
  readonly fresh: boolean;
}

/** How long the way from one moment to the next is shown, and a motion at the least, ms. */
const MOMENT = 300;
const LEAST = 1400;
/** A motion is shown so often, from the second time on slower: who has missed it sees it again. Then the phone rests. */
const TIMES = 3;
const SLOWER = 1.6;
/** So long what is done stands still before it is shown again, ms. */
const PAUSE = 900;

/** Where a motion is that is being shown. */
export interface Played {
  /** 0 as the step begins to 1 when it is done. */
  readonly share: number;
  /** It has been shown often enough. */
  readonly isOver: boolean;
}

/** Where a step's motion is so long after it was begun to be shown, ms. */
export function playedAt({ before }: Pick<PackedStand, 'before'>, elapsed: number): Played {
  const once = Math.max(LEAST, MOMENT * before.length);
  let left = elapsed;
  for (let time = 0; time < TIMES; time += 1) {
    const takes = time === 0 ? once : SLOWER * once;
    if (left < takes) return { share: left / takes, isOver: false };
    left -= takes + PAUSE;
    if (left < 0) return { share: 1, isOver: time === TIMES - 1 };
  }
  return { share: 1, isOver: true };
}

/** All bodies at a share of the way, 0 as the step begins to 1 when it is done. */
export function standingAt({ poses }: PackedSolids, stand: PackedStand, share: number): readonly Standing[] {
  const poseOf = (number: number): Pose => poses[number] || [];
  const end = stand.bodies.map(([mesh, pose, fresh]): Standing => ({ mesh, pose: poseOf(pose), fresh: fresh === 1 }));
  const moment = (index: number): readonly Standing[] => {
    const packed = stand.before[index];
    if (packed === undefined) return end;
    const { whole, bodies = [] } = packed;
    if (whole !== undefined) return end.map((body) => ({ mesh: body.mesh, pose: chained(poseOf(whole), body.pose), fresh: body.fresh }));
    const standing = end.slice();
    bodies.forEach(([number, mesh, pose]) => {
      const last = standing[number];
      if (last !== undefined) standing[number] = { mesh, pose: poseOf(pose), fresh: last.fresh };
    });
    return standing;
  };
  const place = Math.min(1, Math.max(0, share)) * stand.before.length;
  const index = Math.floor(place);
  const [from, to] = [moment(index), moment(index + 1)];
  return from.map((body, number): Standing => {
    const next = to[number];
    return next === undefined ? body : { mesh: place - index < 0.5 ? body.mesh : next.mesh, pose: between(body.pose, next.pose, place - index), fresh: body.fresh };
  });
}
