import { hasWallBrackets, wallBracket, wallPlaces, type Model } from '../../model/index.ts';
import { pair, work } from '../rules.ts';

import type { Supply, WallKind } from '../types.ts';
import { postOutside, SCREWS_EACH, tieLength, WALLS } from './walls.ts';

/** The brackets screwed to a wall, and each pulled at; the posts in their jaws, tied and pulled at. */
export const facts = work({
  tools: ['tape', 'pencil', 'finder', 'drill', 'screwdriver', 'scale', 'sticky-tape', 'knife'],
  people: 2,
  cautions: ['eyes', 'dust', 'sharp', 'lines', 'tipping'],
  check: pair('wall-holds'),
  minutes: 35,
  waits: 0,
  sizes: (_, detail) => (detail.on === 'wall' ? { drill: [WALLS[detail.wall]?.hole.diameter ?? []].flat() } : {}),
  supplies: (model, detail) => (detail.on === 'wall' ? fixingsFor(model, detail.wall) : []),
  captionOf: (detail) => (detail.on === 'wall' ? detail.wall : 'masonry'),
});

/** Brackets that are no parts of the item, what goes into the wall, and a cord for each post; nothing where the wall holds nothing. */
function fixingsFor(model: Model, wall: WallKind): readonly Supply[] {
  const fixing = WALLS[wall];
  if (fixing === null) return [];
  const { hole, screw, plug } = fixing;
  const places = wallPlaces(model);
  const screws = SCREWS_EACH * places.length;
  const tie = { diameter: model.kit.cable.diameter, length: tieLength(model) };
  return [
    ...(hasWallBrackets(model) ? [] : [{ name: 'wall-bracket', shape: wallBracket(model.kit, postOutside(model)), count: places.length, size: [] } as const]),
    { name: 'wall-screw', shape: { form: 'pin', diameter: screw.diameter, length: screw.length, headDiameter: 2 * screw.diameter, headHeight: screw.diameter / 2 }, count: screws, size: [screw.diameter, screw.length], isThreaded: true },
    ...(plug === null ? [] : [{ name: 'wall-plug', shape: { form: 'tube', outside: hole.diameter, inside: hole.diameter / 2, length: plug, holes: [] }, count: screws, size: [hole.diameter, plug] } as const]),
    { name: 'wall-cord', shape: { form: 'cable', ...tie, loopInside: 0 }, count: places.length, size: [tie.diameter, tie.length] },
  ];
}
