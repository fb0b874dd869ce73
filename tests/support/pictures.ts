import type { Box, Picture } from '../../src/draw/index.ts';
import { placed, type Vec2, type Vec3 } from '../../src/model/index.ts';
import type { Step } from '../../src/plan/index.ts';
import type { Scene, SceneBody } from '../../src/scene/index.ts';
import { readPaths } from '../draw/kit/read-paths.ts';

/** Least share of a new part's own outline that a picture must show, our default: no source gives one. */
const LEAST_SHARE = 0.15;
/** A part that the main picture hides is shown nearly whole in a further one. */
const CLOSE_UP_SHARE = 0.5;

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width - 1e-6 && b.x < a.x + a.width - 1e-6 && a.y < b.y + b.height - 1e-6 && b.y < a.y + a.height - 1e-6;

/** Labels that overlap or leave their picture. */
export function labelFaults({ labels, width, height, id }: Picture): readonly string[] {
  const outside = labels.filter((box) => box.x < 0 || box.y < 0 || box.x + box.width > width || box.y + box.height > height);
  const clashes = labels.flatMap((a, index) => labels.slice(index + 1).filter((b) => overlap(a, b)).map(() => `${id}: two labels overlap`));
  return [...outside.map(() => `${id}: a label leaves the picture`), ...clashes];
}

/** What a step's pictures show once more: in further ones, or enlarged beside the first. */
const shownAgain = (pictures: readonly Picture[]): readonly Picture['newPartShares'][] =>
  [...pictures.slice(1).map(({ newPartShares }) => newPartShares), ...pictures.map(({ enlargedShares = {} }) => enlargedShares)];

/** New parts that no picture of the step shows well enough. */
export function hiddenParts(step: Step, pictures: readonly Picture[]): readonly string[] {
  const best = (id: string): number => Math.max(0, ...pictures.map((picture) => picture.newPartShares[id] ?? 0));
  return step.newParts.flatMap(({ kind, ids }) => {
    const shownElsewhere = ids.some((id) => shownAgain(pictures).some((shares) => (shares[id] ?? 0) >= CLOSE_UP_SHARE));
    return ids.filter((id) => best(id) < LEAST_SHARE && !shownElsewhere).map((id) => `${step.number} ${step.key}: ${kind} ${id} shows ${best(id).toFixed(2)}`);
  });
}

/** What a step is about is this large on paper, or ringed and drawn again larger, mm; by the issue's own rule, no source. */
const LEAST_FEATURE = 4;

/** Kinds of parts that a step brings and that come smaller than 4 mm in its picture, with no ring round one of them and no close-up. */
export function smallFaults(step: Step, scene: Scene, pictures: readonly Picture[]): readonly string[] {
  const scale = pictures[0]?.scale ?? 0;
  const isRinged = (body: SceneBody): boolean => scene.marks.some((mark) => mark.mark === 'detail' && Math.min(...cornersOf(body).map((corner) => apart(corner, mark.at))) < mark.radius);
  return step.newParts.flatMap(({ kind, ids }) => {
    const bodies = scene.bodies.filter(({ id }) => ids.includes(id));
    const high = Math.max(0, ...bodies.map((body) => sizeOf(body) * scale));
    const isShownAgain = shownAgain(pictures).some((shares) => ids.some((id) => (shares[id] ?? 0) > 0));
    return high >= LEAST_FEATURE || bodies.some(isRinged) || isShownAgain ? [] : [`${step.number} ${step.key}: ${kind} is ${high.toFixed(1)} mm high and not ringed`];
  });
}

const apart = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The points of a body's mesh, in the scene. */
const cornersOf = ({ mesh: { positions }, pose }: SceneBody): readonly Vec3[] =>
  Array.from({ length: positions.length / 3 }, (_, index) => placed(pose, [positions[3 * index] ?? 0, positions[3 * index + 1] ?? 0, positions[3 * index + 2] ?? 0]));

/** The greatest of a body's three measures along the axes, mm. */
function sizeOf(body: SceneBody): number {
  const corners = cornersOf(body);
  return Math.max(...[0, 1, 2].map((axis) => Math.max(...corners.map((each) => each[axis] ?? 0)) - Math.min(...corners.map((each) => each[axis] ?? 0))));
}

/** Of a font's size its numerals are so high: the cap height of Noto Sans, from its OS/2 table. */
const CAP_SHARE = 0.714;
/** Pictures are set at this share of their size at the least; figures that decide are 3 mm high then. */
const LEAST_SET = 0.8;
const LEAST_FIGURE = 3;

/** Figures of a picture that are lower than 3 mm where it is set smallest, or stand neither level nor upright. */
export function figureFaults({ svg, id }: Picture): readonly string[] {
  return [...svg.matchAll(/<text ([^>]*)>([^<]*)</g)].flatMap(([, attributes = '', said = '']) => {
    const high = Number(/font-size="([\d.]+)"/.exec(attributes)?.[1]) * CAP_SHARE * LEAST_SET;
    const turn = Math.abs(Number(/rotate\((-?[\d.]+)/.exec(attributes)?.[1] ?? 0));
    return [
      ...(high >= LEAST_FIGURE - 0.01 ? [] : [`${id}: ${said} is ${high.toFixed(2)} mm high`]),
      ...(turn === 0 || turn === 90 ? [] : [`${id}: ${said} leans by ${turn}°`]),
    ];
  });
}

/** A drawing reaches over this share of its picture at least, in one direction. */
const LEAST_FILL = 0.6;

/** A picture whose drawing is small in its field. */
export function fillFaults({ svg, id, width, height }: Picture): readonly string[] {
  const { least, most } = inkOf(svg);
  const fill = Math.max((most[0] - least[0]) / width, (most[1] - least[1]) / height);
  return fill >= LEAST_FILL ? [] : [`${id}: the drawing fills ${(100 * fill).toFixed(0)} % of its field`];
}

/** Least and greatest place of all lines, read from the file; the white ground is none. */
function inkOf(svg: string): { readonly least: Vec2; readonly most: Vec2 } {
  const places: Vec2[] = [];
  const shifts: Vec2[] = [[0, 0]];
  for (const [element, name = ''] of svg.matchAll(/<(\/?g|path|circle)\b[^>]*>/g)) {
    const [x = 0, y = 0] = shifts.at(-1) ?? [];
    if (name === '/g') shifts.pop();
    else if (name === 'g') {
      const [, dx, dy] = /translate\((-?[\d.]+) (-?[\d.]+)\)/.exec(element) ?? [];
      shifts.push([x + Number(dx ?? 0), y + Number(dy ?? 0)]);
    } else if (element.includes('stroke=')) places.push(...placesOf(element).map(([px, py]): Vec2 => [px + x, py + y]));
  }
  if (places.length === 0) return { least: [0, 0], most: [0, 0] };
  const all = (pick: (...values: number[]) => number, axis: 0 | 1): number => places.reduce((best, place) => pick(best, place[axis]), places[0]?.[axis] ?? 0);
  return { least: [all(Math.min, 0), all(Math.min, 1)], most: [all(Math.max, 0), all(Math.max, 1)] };
}

function placesOf(element: string): readonly Vec2[] {
  const [, cx, cy, r] = /cx="(-?[\d.]+)" cy="(-?[\d.]+)" r="([\d.]+)"/.exec(element) ?? [];
  if (r !== undefined) return [[Number(cx) - Number(r), Number(cy) - Number(r)], [Number(cx) + Number(r), Number(cy) + Number(r)]];
  return readPaths(element).flatMap(({ points }) => points);
}
