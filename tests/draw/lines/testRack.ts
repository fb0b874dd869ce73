import type { Body } from '../../../src/draw/types.ts';
import { Solid, at, body, meshOf, tube, tubeSolid } from './solids.ts';

const [width, depth, pitch] = [900, 400, 420] as const;
const [outside, inside, bore] = [28, 24, 28.5] as const;

/**
 * A rack of decks on four posts: tubes in sockets, a tray panel under each deck that touches its
 * tubes, pins through the panel's rims. Dimensions in mm. `sides` sets how many triangles there are.
 */
export function testRack(decks: number, sides = 24): readonly Body[] {
  const [longTube, shortTube] = [tube(width - 60, outside, inside, sides), tube(depth - 60, outside, inside, sides)];
  const post = tube(decks * pitch, outside, inside, sides);
  const [sleeve, panel, pin] = [meshOf(sleeveSolid(sides)), meshOf(panelSolid(sides)), meshOf(pinSolid(sides))];
  const corners = [[-1, -1], [1, -1], [1, 1], [-1, 1]] as const;
  const posts = corners.map(([x, y], k) => body(`post-${k}`, post, at((x * width) / 2, (y * depth) / 2, (decks * pitch) / 2, [0, 1, 0], Math.PI / 2)));
  const levels = Array.from({ length: decks }, (_, d): readonly Body[] => {
    const z = 120 + d * pitch;
    return [
      ...corners.map(([x, y], k) => body(`sleeve-${d}-${k}`, sleeve, at((x * width) / 2, (y * depth) / 2, z, [0, 0, 1], (k * Math.PI) / 2))),
      ...[-1, 1].map((y) => body(`long-${d}-${y}`, longTube, at(0, (y * depth) / 2, z))),
      ...[-1, 1].map((x) => body(`short-${d}-${x}`, shortTube, at((x * width) / 2, 0, z, [0, 0, 1], Math.PI / 2))),
      body(`panel-${d}`, panel, at(0, 0, z - outside / 2 - 9)),
      ...[-1, 1].flatMap((y) => pinPlaces.map((x) => body(`pin-${d}-${y}-${x}`, pin, at(x, y * (depth / 2 - 60), z - outside / 2)))),
    ];
  });
  return [...posts, ...levels.flat()];
}

const pinPlaces = [-300, -180, -60, 60, 180, 300] as const;

/** Sleeve round the post with sockets along +x and +y. */
function sleeveSolid(sides: number): Solid {
  const wall = Solid.cylinder(70, 18, 18, sides, true);
  const socket = tubeSolid(70, 36, 0, sides).translate([35, 0, 0]);
  const hollow = tubeSolid(70, bore, 0, sides).translate([53, 0, 0]);
  const turned = (solid: Solid): Solid => solid.rotate([0, 0, 90]);
  return wall.add(socket).add(turned(socket))
    .subtract(Solid.cylinder(200, bore / 2, bore / 2, sides, true))
    .subtract(hollow).subtract(turned(hollow));
}


/** A tray with slanting sides and pin holes that is drilled as the pins stand. */
function panelSolid(sides: number): Solid {
  const base = Solid.cube([width - 60, depth - 60, 9], true).translate([0, 0, 4.5]);
  const flap = Solid.cube([width - 100, 60, 9], true).translate([0, 30, 4.5]).rotate([45, 0, 0]);
  const side = flap.translate([0, (depth - 60) / 2 - 3, 0]);
  const holes = [-1, 1].flatMap((y) => pinPlaces.map((x) => Solid.cylinder(60, 4, 4, sides, true).translate([x, y * (depth / 2 - 60), 0])));
  return Solid.union([base, side, side.rotate([0, 0, 180])]).subtract(Solid.union(holes));
}

/** A pin with a head whose shank fills its hole. */
function pinSolid(sides: number): Solid {
  return Solid.cylinder(14, 4, 4, sides).translate([0, 0, -12]).add(Solid.cylinder(3, 7, 7, sides));
}
