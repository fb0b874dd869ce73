import fc from 'fast-check';
import type { Vec3 } from '../../../src/model/index.ts';
import { tell, type Look, type Mark, type Scene } from '../../../src/scene/index.ts';
import { boxMesh, movedTo } from './stand-in.ts';

const place = fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: -400, max: 400 }), fc.integer({ min: 0, max: 600 }));
const side = fc.integer({ min: 15, max: 400 });
const told = fc.constantFrom(tell.times(1), tell.times(4), tell.times(12), tell.letters('A'), tell.letters('B'), tell.times(100));
const figure = fc.constantFrom(tell.measure(35), tell.measure(1000), tell.letters('C'), tell.measure(7));
const moved = ([x, y, z]: Vec3, by: Vec3): Vec3 => [x + by[0], y + by[1], z + by[2]];

const label = fc.record({ at: place, told }).map((mark): Mark => ({ mark: 'label', ...mark }));
const order = fc.record({ at: place, told: fc.constantFrom(tell.number(1), tell.number(2), tell.number(10)) }).map((mark): Mark => ({ mark: 'order', ...mark }));
const length = fc.record({ from: place, to: place, told: figure }).map((mark): Mark => ({ mark: 'length', ...mark, away: [0, -60, 0] }));
const arrow = fc.tuple(place, place).map(([from, by]): Mark => ({ mark: 'arrow', path: [from, moved(from, [by[0] / 2, by[1] / 2, by[2] / 2])] }));
const detail = fc.record({ at: place }).map((mark): Mark => ({ mark: 'detail', ...mark, radius: 40 }));

/** Boxes anywhere and marks of every kind, as many as a full step has. */
export const anyScene: fc.Arbitrary<Scene> = fc
  .record({
    boxes: fc.array(fc.tuple(place, side, side, side, fc.constantFrom<Look>('present', 'new', 'pale')), { minLength: 1, maxLength: 6 }),
    labels: fc.array(label, { maxLength: 6 }),
    orders: fc.array(order, { maxLength: 4 }),
    lengths: fc.array(length, { maxLength: 2 }),
    arrows: fc.array(arrow, { maxLength: 2 }),
    details: fc.array(detail, { maxLength: 1 }),
  })
  .map(({ boxes, labels, orders, lengths, arrows, details }) => ({
    id: 'any',
    bodies: boxes.map(([at, x, y, z, look], i) => ({ id: `box-${i}`, partId: `box-${i}`, kind: 'panel', mesh: boxMesh(x, y, z), pose: movedTo(at), look })),
    marks: [...labels, ...orders, ...lengths, ...arrows, ...details],
    view: { towardsEye: [1, -1.2, 0.9], up: [0, 0, 1] },
  }));

export const anyPaper = fc.record({ width: fc.integer({ min: 110, max: 180 }), height: fc.integer({ min: 85, max: 130 }) });
