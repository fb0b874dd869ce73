import type { Face, Kit } from '../read/index.ts';
import { faceTurn, type FaceTurn } from './faces.ts';
import { makePart } from './make-part.ts';
import { facing } from './pose.ts';
import { jointPin, wingNut } from './posts.ts';
import type { Connection, FlatPanel, Joining, Part, Shape, Vec2 } from './types.ts';

/** How far a plate stands over the middle of its tubes, and its pins from its ends, mm. Common practice, no source. */
const OVER_TUBE = 32;
const PIN_FROM_END = 40;
/** White between a plate and the tubes it lies on: touching faces, kept from sharing a plane. */
const HAIR = 0.05;

/** A flat panel on one side, with its pins and nuts, and the holes it needs in the tubes. */
export interface Plate {
  readonly panel: FlatPanel;
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
  /** Places of the pins along either tube, from its middle, mm. */
  readonly along: readonly number[];
}

/**
 * A flat panel from the tube at height `low` to the one at `high` of a side (mm over the floor), on their inner
 * side, as wide as the room between the corner joints' sockets.
 */
export function buildPlate(kit: Kit, axes: Vec2, face: Face, name: string, low: number, high: number, tubeIds: readonly [string, string]): Plate {
  const turn = faceTurn(face, axes);
  const width = 2 * (turn.halfSpan - kit.joint.stop - kit.joint.socketDepth - kit.practice.notchGap);
  const height = high - low + 2 * OVER_TUBE;
  const along = pinsAlong(width, kit.practice.pinPitch);
  const places = along.flatMap((x) => [-1, 1].map((end): Vec2 => [x, (end * (high - low)) / 2]));
  const diameter = kit.jointPin.diameter;
  const inner = kit.tube.outsideDiameter / 2 + HAIR;
  const id = `${name}-${face}`;
  const shape: Shape = { form: 'plate', width, height, thickness: kit.panel.thickness, holes: places.map((at) => ({ at, diameter })) };
  const middle = onFace(turn, -inner, 0, (low + high) / 2);
  const plate = makePart(kit, id, 'flat-panel', { at: 'side', side: face }, shape, facing(middle, [-turn.across[0], -turn.across[1], 0], [0, 0, 1], turn.inwards));
  const tubes = { low: tubeIds[0], high: tubeIds[1] };
  const fasteners = places.map(([x, z], index) => fastener(kit, turn, id, index, x, (low + high) / 2 + z, inner));
  return {
    panel: { width, height, holes: places.map(([x, z]) => ({ at: [x + width / 2, z + height / 2] as const, diameter })), partIds: [id] },
    parts: [plate, ...fasteners.flatMap(({ pin, nut }) => [pin, nut])],
    joinings: fasteners.map(({ pin, nut, tube }) => ({ by: 'plate-pin', pin: pin.id, nut: nut.id, plate: id, tube: tubes[tube] })),
    connections: [
      ...tubeIds.map((bar): Connection => ({ is: 'lay', panel: id, bar, out: turn.inwards })),
      ...fasteners.map(({ pin, nut, tube }): Connection => ({ is: 'pin', pin: pin.id, nut: nut.id, holds: [id, tubes[tube]], out: turn.inwards })),
    ],
    along,
  };
}

function pinsAlong(width: number, pitch: number): readonly number[] {
  const end = width / 2 - PIN_FROM_END;
  const bays = Math.max(1, Math.ceil((2 * end) / pitch - 1e-9));
  return Array.from({ length: bays + 1 }, (_, index) => -end + (index * 2 * end) / bays);
}

/** A point `outwards` from the tubes' axes, `across` to the face's own right, at a height. */
const onFace = ({ across, inwards, out }: FaceTurn, outwards: number, x: number, z: number) => [
  across[0] * x - inwards[0] * (out + outwards),
  across[1] * x - inwards[1] * (out + outwards),
  z,
] as const;

interface Fastener {
  readonly tube: 'low' | 'high';
  readonly pin: Part;
  readonly nut: Part;
}

/** The pin's head lies on the plate, its wing nut on the outside of the tube. */
function fastener(kit: Kit, turn: FaceTurn, plate: string, index: number, x: number, z: number, inner: number): Fastener {
  const tube = index % 2 === 0 ? 'low' : 'high';
  const place = { at: 'plate', plate, tube, index: Math.floor(index / 2) + 1 } as const;
  const name = `${plate}-${place.index}-${tube}`;
  const { across, inwards } = turn;
  const [ox, oy] = [-inwards[0], -inwards[1]];
  const head = onFace(turn, -inner - kit.panel.thickness, x, z);
  const outside = onFace(turn, kit.tube.outsideDiameter / 2, x, z);
  return {
    tube,
    pin: jointPin(kit, `joint-pin-${name}`, place, facing(head, across, cross(inwards, across), inwards)),
    nut: wingNut(kit, `wing-nut-${name}`, place, facing(outside, across, cross([ox, oy, 0], across), [ox, oy, 0])),
  };
}

const cross = (a: readonly [number, number, number], b: readonly [number, number, number]) =>
  [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]] as const;
