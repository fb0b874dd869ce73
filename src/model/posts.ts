import type { Kit } from '../read/index.ts';
import { CORNERS, tubeMass, tubeShape } from './deck.ts';
import { facing } from './pose.ts';
import type { Joining, Part, Shape, Vec2, Vec3 } from './types.ts';

/** Posts, and the pins with wing nuts that hold each deck's joints to them, in the finished item. */
export interface Posts {
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
}

/**
 * Four posts of `length` through the corner joints of decks whose tube axes lie at `levels` (mm over the
 * floor). Each joint is drilled along y; the pin's head is outside, the wing nut inside.
 */
export function buildPosts(kit: Kit, axes: Vec2, length: number, levels: readonly number[], deckNames: readonly string[]): Posts {
  const parts: Part[] = [];
  const joinings: Joining[] = [];
  for (const { name, sx, sy } of CORNERS) {
    const x = sx * axes[0];
    const y = sy * axes[1];
    const heights = levels.map((level) => level - kit.joint.pinHeight);
    parts.push(post(kit, `post-${name}`, [x, y, length / 2], length, heights));
    heights.forEach((height, index) => {
      const deck = deckNames[index] ?? '';
      const pin = `joint-pin-${name}-${index + 1}`;
      const nut = `wing-nut-${name}-${index + 1}`;
      parts.push(...pinAndNut(kit, pin, nut, [x, y, height], sy));
      joinings.push({ by: pin, parts: [`post-${name}`, `${deck}/joint-${jointCorner(name)}`, nut] });
    });
  }
  return { parts, joinings };
}

/** A deck is built upside down and turned over about its long side, so front and back change places. */
const jointCorner = (corner: string): string =>
  corner.endsWith('front') ? corner.replace('front', 'back') : corner.replace('back', 'front');

/** The tube's own x stands up, its own y keeps the item's y, so that its holes run along y. */
function post(kit: Kit, id: string, middle: Vec3, length: number, heights: readonly number[]): Part {
  const holes = heights.map((height) => ({ at: height - length / 2, diameter: kit.jointPin.diameter }));
  const shape: Shape = { ...tubeShape(kit, length), holes };
  return { id, kind: 'post', shape, pose: facing(middle, [0, 0, 1], [0, 1, 0], [-1, 0, 0]), group: null, mass: tubeMass(kit, length) };
}

function pinAndNut(kit: Kit, pinId: string, nutId: string, middle: Vec3, sy: number): Part[] {
  const sleeve = kit.joint.sleeveDiameter / 2;
  const { jointPin } = kit;
  const shank: Shape = { form: 'pin', diameter: jointPin.diameter, length: jointPin.length, headDiameter: jointPin.headDiameter, headHeight: jointPin.headHeight };
  const nut: Shape = { form: 'wing-nut', bore: jointPin.diameter, span: jointPin.wingSpan, height: jointPin.nutHeight };
  const out: Vec3 = [0, sy, 0];
  const inwards: Vec3 = [0, -sy, 0];
  const [x, y, z] = middle;
  return [
    { id: pinId, kind: 'joint-pin', shape: shank, pose: facing([x, y + sy * sleeve, z], [sy, 0, 0], [0, 0, -1], out), group: null, mass: 0.012 },
    { id: nutId, kind: 'wing-nut', shape: nut, pose: facing([x, y - sy * sleeve, z], [sy, 0, 0], [0, 0, 1], inwards), group: null, mass: 0.008 },
  ];
}
