import type { Body, LineDrawing } from './types.ts';
import type { LineDrawer } from './picture/index.ts';

type Asked = Parameters<LineDrawer>;

/** How many drawings are kept: one step has a scene, a close-up and their details. */
const kept = 12;

/**
 * A drawer that gives the last few drawings again when it is asked for the same: a scene set on several papers is
 * drawn once. Two askings are the same when they show the same meshes in the same poses and view.
 */
export function remembered(draw: LineDrawer): LineDrawer {
  const past: { readonly asked: Asked; readonly drawing: LineDrawing }[] = [];
  return (...asked) => {
    const found = past.find((one) => same(one.asked, asked));
    if (found) return found.drawing;
    const drawing = draw(...asked);
    past.unshift({ asked, drawing });
    past.length = Math.min(past.length, kept);
    return drawing;
  };
}

function same([bodies, view, apart = new Set()]: Asked, [others, otherView, otherApart = new Set()]: Asked): boolean {
  return bodies.length === others.length
    && JSON.stringify(view) === JSON.stringify(otherView)
    && apart.size === otherApart.size && [...apart].every((id) => otherApart.has(id))
    && bodies.every((body, index) => sameBody(body, others[index]));
}

function sameBody(one: Body, other: Body | undefined): boolean {
  return other !== undefined && one.id === other.id && one.mesh === other.mesh && one.pose.every((value, index) => value === other.pose[index]);
}
