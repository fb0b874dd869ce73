import type { Kit } from '../read/index.ts';
import type { Corner } from './frame.ts';
import type { Hold } from './levels.ts';
import { makePart } from './make-part.ts';
import { facing } from './pose.ts';
import { tubeShape } from './tube.ts';
import type { Connection, CornerPlace, Joining, Part, PartPlace, Shape, Vec2, Vec3 } from './types.ts';

/** Posts, and the pins with wing nuts that hold the joints to them, in the finished item. */
export interface Posts {
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
}

/**
 * The post of one corner, `length` mm, through its joints. Each joint is drilled along y; the pin's head is
 * outside, the wing nut inside.
 */
export function buildPost(kit: Kit, corner: Corner, axes: Vec2, length: number, holds: readonly Hold[]): Posts {
  const { name, x: across, y: along, sx, sy } = corner;
  const at = { x: across, y: along };
  const [x, y] = [sx * axes[0], sy * axes[1]];
  const heights = holds.map((hold) => hold.level - kit.joint.pinHeight);
  const fasteners = holds.map(({ jointId }, index) => {
    const pin = `joint-pin-${name}-${index + 1}`;
    const nut = `wing-nut-${name}-${index + 1}`;
    const parts = pinAndNut(kit, pin, nut, { at: 'sleeve', corner: at, index: index + 1 }, [x, y, heights[index] ?? 0], sy);
    const bar = `post-${name}`;
    const connections: readonly Connection[] = [
      { is: 'sleeve', bar, joint: jointId, along: [0, 0, 1] },
      { is: 'pin', pin, nut, holds: [bar, jointId], out: [0, sy, 0] },
    ];
    return { parts, joining: { by: 'post-pin' as const, pin, nut, post: bar, joint: jointId }, connections };
  });
  return {
    parts: [post(kit, `post-${name}`, at, [x, y, length / 2], length, heights), ...fasteners.flatMap((each) => each.parts)],
    joinings: fasteners.map((each) => each.joining),
    connections: fasteners.flatMap((each) => each.connections),
  };
}

/** The tube's own x stands up, its own y keeps the item's y, so that its holes run along y. */
function post(kit: Kit, id: string, corner: CornerPlace, middle: Vec3, length: number, heights: readonly number[]): Part {
  const holes = heights.map((height) => ({ at: height - length / 2, diameter: kit.jointPin.diameter }));
  const shape: Shape = { ...tubeShape(kit, length), holes };
  return makePart(kit, id, 'post', { at: 'corner', corner }, shape, facing(middle, [0, 0, 1], [0, 1, 0], [-1, 0, 0]));
}

/** The pin through a sleeve whose middle is given; sy is −1 on the front posts, 1 on the back ones. */
function pinAndNut(kit: Kit, pinId: string, nutId: string, place: PartPlace, middle: Vec3, sy: number): Part[] {
  const sleeve = kit.joint.sleeveDiameter / 2;
  const [x, y, z] = middle;
  return [
    jointPin(kit, pinId, place, facing([x, y + sy * sleeve, z], [sy, 0, 0], [0, 0, -1], [0, sy, 0])),
    wingNut(kit, nutId, place, facing([x, y - sy * sleeve, z], [sy, 0, 0], [0, 0, 1], [0, -sy, 0])),
  ];
}

export function jointPin(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, length, headDiameter, headHeight } = kit.jointPin;
  return makePart(kit, id, 'joint-pin', place, { form: 'pin', diameter, length, headDiameter, headHeight }, pose);
}

export function wingNut(kit: Kit, id: string, place: PartPlace, pose: Part['pose']): Part {
  const { diameter, wingSpan, nutHeight } = kit.jointPin;
  return makePart(kit, id, 'wing-nut', place, { form: 'wing-nut', bore: diameter, span: wingSpan, height: nutHeight }, pose);
}
