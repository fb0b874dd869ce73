import Module from 'manifold-3d';
import type { Manifold } from 'manifold-3d';
import type { Mesh, Pose, Vec3 } from '../../../src/model/index.ts';
import { tell, type Look, type Mark, type Scene, type SceneBody, type View } from '../../../src/scene/index.ts';
import { movedTo } from './stand-in.ts';

const wasm = await Module();
wasm.setup();
const { Manifold: Solid } = wasm;

export const isometric: View = { towardsEye: [1, -1.2, 0.9], up: [0, 0, 1] };
const sides = 24;
const quarter = Math.SQRT1_2;

export function meshOf(solid: Manifold): Mesh {
  const mesh = solid.getMesh();
  const positions: number[] = [];
  for (let i = 0; i < mesh.numVert; i++) for (let k = 0; k < 3; k++) positions.push(mesh.vertProperties[i * mesh.numProp + k] ?? 0);
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(mesh.triVerts) };
}

const rod = (length: number, outside: number): Manifold => Solid.cylinder(length, outside / 2, outside / 2, sides, true);
const pipe = (length: number, outside: number, inside: number): Manifold => rod(length, outside).subtract(rod(length + 2, inside));
const alongX = (solid: Manifold): Manifold => solid.rotate([0, 90, 0]);
const alongY = (solid: Manifold): Manifold => solid.rotate([90, 0, 0]);

export const tube = (length: number): Mesh => meshOf(alongX(pipe(length, 28, 23)));
const crossTube = (length: number): Mesh => meshOf(alongY(pipe(length, 28, 23)));
const post = (length: number): Mesh => meshOf(pipe(length, 28, 23));

/** A joint like the kit's: a sleeve and two sockets. */
function joint(turn: number): Mesh {
  const sleeve = pipe(74, 38, 28.6).translate([0, 0, -15]);
  const sockets = alongX(pipe(52, 38, 28.2)).translate([44, 0, 0]).add(alongY(pipe(52, 38, 28.2)).translate([0, 44, 0]));
  return meshOf(sleeve.add(sockets.subtract(rod(100, 37))).rotate([0, 0, turn]));
}

const pin = (): Mesh => meshOf(rod(17, 5).translate([0, 0, -8.5]).add(rod(3, 16).translate([0, 0, 1.5])));

function body(id: string, kind: SceneBody['kind'], mesh: Mesh, at: Vec3, look: Look): SceneBody {
  return { id, partId: id, kind, mesh, pose: movedTo(at), look };
}

const [wide, deep] = [500, 250];
const jointAt: readonly (readonly [Vec3, number])[] = [
  [[-wide, -deep, 0], 0],
  [[wide, -deep, 0], 90],
  [[wide, deep, 0], 180],
  [[-wide, deep, 0], 270],
];

function frame(z: number, fresh: readonly string[]): SceneBody[] {
  const look = (id: string): Look => (fresh.includes(id) ? 'new' : 'present');
  const part = (id: string, kind: SceneBody['kind'], mesh: Mesh, at: Vec3): SceneBody => body(id, kind, mesh, [at[0], at[1], at[2] + z], look(id));
  return [
    part(`front@${z}`, 'long-tube', tube(2 * wide - 40), [0, -deep, 0]),
    part(`back@${z}`, 'long-tube', tube(2 * wide - 40), [0, deep, 0]),
    part(`left@${z}`, 'short-tube', crossTube(2 * deep - 40), [-wide, 0, 0]),
    part(`right@${z}`, 'short-tube', crossTube(2 * deep - 40), [wide, 0, 0]),
    ...jointAt.map(([at, turn], i) => part(`joint-${i}@${z}`, 'joint', joint(turn), at)),
  ];
}

/** Closing a frame: one side comes from the right. */
export function closeFrame(): Scene {
  const gone = 180;
  const moving = ['right@0', 'joint-1@0', 'joint-2@0'];
  const bodies = frame(0, moving).map((one) =>
    moving.includes(one.id) ? { ...one, pose: shifted(one.pose, [gone, 0, 0]) } : one,
  );
  const arrow = (y: number): Mark => ({ mark: 'arrow', path: [[wide + gone - 60, y, 0], [wide - 10, y, 0]] });
  return {
    id: 'close-frame',
    bodies,
    marks: [
      arrow(-deep),
      arrow(deep),
      { mark: 'label', at: [wide + gone, 0, 14], told: tell.times(1) },
      { mark: 'label', at: [wide + gone, -deep, 22], told: tell.times(2) },
      { mark: 'length', from: [-wide, -deep, 0], to: [wide, -deep, 0], away: [0, -120, 0], told: tell.measure(1000) },
      { mark: 'detail', at: [-wide + 40, -deep, 0], radius: 75 },
    ],
    view: isometric,
  };
}

/** Pins along a side: many small parts, their order, the detail of one. */
export function pinSide(): Scene {
  const panel = body('panel', 'panel', meshOf(Solid.cube([2 * wide, 2 * deep, 9], true)), [0, 0, -20], 'present');
  const places = [-450, 450, -225, 0, 225].map((x): Vec3 => [x, -deep + 50, -15.5]);
  const pins = places.map((at, i) => body(`pin-${i}`, 'panel-pin', pin(), [at[0], at[1], at[2] + 60], 'new'));
  return {
    id: 'pin-side',
    bodies: [...frame(10, []), panel, ...pins],
    marks: [
      ...places.map(([x, y, z]): Mark => ({ mark: 'arrow', path: [[x, y, z + 40], [x, y, z]] })),
      ...places.map(([x, y, z], i): Mark => ({ mark: 'order', at: [x, y, z + 63], told: tell.number(i + 1) })),
      { mark: 'label', at: [450, -deep + 50, 44], told: tell.times(5) },
      { mark: 'detail', at: [-450, -deep + 50, 20], radius: 50 },
    ],
    view: isometric,
  };
}

/** A rack standing on the floor, its top frame new, an arc for a turn. */
export function standRack(): Scene {
  const decks = [150, 590, 1030, 1470];
  const posts = jointAt.map(([at], i) => body(`post-${i}`, 'post', post(1500), [at[0], at[1], 750], 'present'));
  const top = frame(1470, frame(1470, []).map((one) => one.id));
  const floor = body('floor', 'floor', meshOf(Solid.cube([1500, 900, 2], true)), [0, 0, -1.5], 'present');
  const arc = Array.from({ length: 13 }, (_, i): Vec3 => {
    const angle = ((-95 + i * 8) * Math.PI) / 180;
    return [300 * Math.cos(angle) + wide, 300 * Math.sin(angle) - deep, 1700];
  });
  return {
    id: 'stand-rack',
    bodies: [floor, ...decks.slice(0, 3).flatMap((z) => frame(z, [])), ...top, ...posts],
    marks: [
      { mark: 'arrow', path: arc },
      { mark: 'label', at: [0, -deep, 1484], told: tell.times(1) },
      { mark: 'length', from: [wide, deep, 0], to: [wide, deep, 1500], away: [170, 0, 0], told: tell.measure(1500) },
      { mark: 'length', from: [-wide, -deep, 0], to: [wide, -deep, 0], away: [0, -170, 0], told: tell.measure(1000) },
      { mark: 'length', from: [-wide, -deep, 590], to: [-wide, -deep, 1030], away: [-170, 0, 0], told: tell.letters('A') },
    ],
    view: isometric,
  };
}

/** The lettered drawing of a whole rack, with its panels. */
export function letteredRack(): Scene {
  const rack = standRack();
  const panels = [150, 590, 1030].map((z) => body(`panel@${z}`, 'panel', meshOf(Solid.cube([2 * wide - 40, 2 * deep - 40, 9], true)), [0, 0, z - 20], 'present'));
  const fresh = body('panel@1470', 'panel', meshOf(Solid.cube([2 * wide - 40, 2 * deep - 40, 9], true)), [0, 0, 1450], 'new');
  const left = (from: number, to: number, letter: string): Mark => ({ mark: 'length', from: [-wide, -deep, from], to: [-wide, -deep, to], away: [-150, 0, 0], told: tell.letters(letter) });
  return {
    id: 'lettered-rack',
    bodies: [...rack.bodies.map((one): SceneBody => ({ ...one, look: 'present' })), ...panels, fresh],
    marks: [
      { mark: 'length', from: [-wide, -deep, 0], to: [wide, -deep, 0], away: [0, -150, 0], told: tell.letters('A') },
      { mark: 'length', from: [wide, -deep, 0], to: [wide, deep, 0], away: [150, 0, 0], told: tell.letters('B') },
      { mark: 'length', from: [wide, deep, 0], to: [wide, deep, 1500], away: [170, 0, 0], told: tell.letters('C') },
      left(0, 150, 'D'),
      left(150, 590, 'E'),
      left(590, 1030, 'E'),
      left(1030, 1470, 'E'),
      { mark: 'label', at: [0, 0, 1455], told: tell.times(1) },
      { mark: 'label', at: [0, -deep, 1030], told: tell.times(12) },
      { mark: 'detail', at: [wide, -deep, 1030], radius: 70 },
      { mark: 'detail', at: [-wide, -deep, 1470], radius: 70 },
    ],
    view: isometric,
  };
}

/** The next frame comes down on posts that are there; the one below is pale; a motion towards the reader. */
export function paleReminder(): Scene {
  const below = frame(0, []).map((one): SceneBody => ({ ...one, look: 'pale' }));
  const above = frame(220, ['front@220']);
  return {
    id: 'pale-reminder',
    bodies: [...below, ...above],
    marks: [
      { mark: 'arrow', path: [[0, -deep - 260, 220], [0, -deep - 20, 220]] },
      { mark: 'arrow', path: [[wide, deep, 220], [wide + 100, deep - 120, 310]] },
      { mark: 'label', at: [-200, -deep, 234], told: tell.times(1) },
      { mark: 'label', at: [-wide, -deep, 0], told: tell.letters('B') },
    ],
    view: isometric,
  };
}

function shifted(pose: Pose, by: Vec3): Pose {
  return pose.map((value, i) => value + (i >= 12 && i < 15 ? (by[i - 12] ?? 0) : 0));
}

export const allScenes: readonly (() => Scene)[] = [closeFrame, pinSide, standRack, letteredRack, paleReminder];

/** A tube that lies across the view, for the parts page. */
export const longTube = { id: 'long-tube', mesh: tube(2000), pose: [quarter, quarter, 0, 0, -quarter, quarter, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1] };
export const smallPin = { id: 'panel-pin', mesh: pin(), pose: movedTo([0, 0, 0]) };
