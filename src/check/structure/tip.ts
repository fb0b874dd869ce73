import { lengthOf, minus, placed, type Vec3 } from '../../model/index.ts';
import { tippingAngle, tippingForce } from '../formulas/tipping.ts';
import { judge } from '../judge.ts';
import { heapOf, partHeap, type Heap } from '../middle-of.ts';
import { markHeights } from '../children/size-mark.ts';
import type { Finding } from '../types.ts';
import { backsOf } from './backrest.ts';
import { middleOf, type Bearing } from './bearings.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import { insideEdge, type Edge } from './ground.ts';
import { standingIds } from './skeleton.ts';
import { isScreen } from './standing.ts';
import { ownWeight } from './weights.ts';

/** The empty item. */
export const emptyHeap = ({ model }: StructureCase): Heap => heapOf(model.parts.map(partHeap));

/** Top of the highest bar over the floor, mm. */
export const topOf = ({ skeleton: { bars }, contacts }: StructureCase): number =>
  Math.max(...bars.flatMap(({ from, to }) => [from[2], to[2]])) - Math.min(...contacts.map(({ low }) => low));

/** The load of a panel in use, standing towards an edge (see `topLadenBody`). */
function loadTowards(given: StructureCase, bearing: Bearing, { out }: Edge): Heap {
  const [x, y, z] = middleOf(bearing);
  const places = bearing.pairs.flatMap(({ bars }) => bars.flatMap(({ from, to }) => [from, to])).map((at) => at[0] * out[0] + at[1] * out[1]);
  const off = given.limits.loadForward.value * (places.length === 0 ? 0 : Math.max(...places) - Math.min(...places));
  return { mass: bearing.load / given.limits.gravity.value, at: [x + off * out[0], y + off * out[1], z] };
}

/** Each panel laden alone, and all of them at once: the item with what stands on it, towards an edge. */
const ladenHeaps = (given: StructureCase, edge: Edge): readonly Heap[] =>
  [...given.bearings.map((one) => [one]), given.bearings].map((some) => heapOf([emptyHeap(given), ...some.map((bearing) => loadTowards(given, bearing, edge))]));

/** How far the contacts stand apart across and back, mm. */
export function extentsOf({ contacts }: StructureCase): readonly [number, number] {
  const spread = (axis: 0 | 1): number => Math.max(...contacts.map(({ place }) => place[axis])) - Math.min(...contacts.map(({ place }) => place[axis]));
  return [spread(0), spread(1)];
}

const ground = ({ contacts }: StructureCase): number => Math.min(...contacts.map(({ low }) => low));

/** The least push at the top that tips any heap over the edge it tips over most easily, N. */
const pushToTip = (given: StructureCase, heaps: (edge: Edge) => readonly Heap[]): number => Math.min(...given.edges.flatMap((edge) =>
  heaps(edge).map(({ mass, at }) => tippingForce(mass * given.limits.gravity.value, insideEdge(edge, at), topOf(given)))));

export const pushToTipEmpty = (given: StructureCase): number => (given.edges.length === 0 ? 0 : pushToTip(given, () => [emptyHeap(given)]));

const isStorage = (given: StructureCase): boolean => given.model.use === 'storage' && !isScreen(given);

const pushes = (given: StructureCase, name: 'tip-empty' | 'tip-loaded', figure: number): Finding => {
  const { tippingForce: pull, touchShare } = given.limits;
  const limit = isStorage(given) ? pull : { ...touchShare, value: touchShare.value * ownWeight(given) };
  return judge({
    name, figure, limit: limit.value, bound: 'least', unit: 'N', source: `m g b / h about what it stands on, the worst edge (C); ${limit.source}`,
    parts: standingIds(given.skeleton), otherwise: 'caution',
  });
};

/** What it stands on lies in one line: it falls over by itself. */
export const tipEmpties: StructureCheck = (given) => [pushes(given, 'tip-empty', pushToTipEmpty(given))];

export const tipLadens: StructureCheck = (given) => (given.bearings.length === 0 || given.edges.length === 0 ? [] : [pushes(given, 'tip-loaded', pushToTip(given, (edge) => ladenHeaps(given, edge)))]);

/** The slope on which it falls by itself, rad, in the worst direction. */
export const tipAngles: StructureCheck = (given) => {
  if (given.edges.length === 0) return [];
  const angles = given.edges.flatMap((edge) => ladenHeaps(given, edge).map(({ at }) => tippingAngle(insideEdge(edge, at), at[2] - ground(given))));
  return [judge({
    name: 'tip-angle', figure: Math.min(...angles), limit: given.limits.tippingAngle.value, bound: 'least', unit: 'rad',
    source: `atan of arm over height of the centre of gravity (C); ${given.limits.tippingAngle.source}`, parts: standingIds(given.skeleton), otherwise: 'caution',
  })];
};

/** Height over the shorter side of what it stands on. A partition is judged by a push alone. */
export const slenders: StructureCheck = (given) => (isScreen(given) ? [] : [judge({
  name: 'slenderness', figure: topOf(given) / Math.max(1, Math.min(...extentsOf(given))), limit: given.limits.slenderness.value, bound: 'most', unit: '1',
  source: given.limits.slenderness.source, parts: standingIds(given.skeleton), otherwise: 'caution',
})]);

/** What is written of storage furniture (see `wall-height`, `tip-test`, `tip-scope`). */
export const storageTips: StructureCheck = (given) => {
  if (!isStorage(given)) return [];
  const { wallHeight, tipTestHeight, tipTestMoment, storageHeight, storageMass, storageVolume } = given.limits;
  const [heap, top, [across, deep]] = [emptyHeap(given), topOf(given), extentsOf(given)];
  const common = { bound: 'most', parts: standingIds(given.skeleton), otherwise: 'caution' } as const;
  const tests = [{ figure: top, limit: tipTestHeight.value, unit: 'mm' }, { figure: ((heap.at[2] - ground(given)) / 1000) * heap.mass, limit: tipTestMoment.value, unit: 'kg·m' }];
  const scopes = [{ figure: top, limit: storageHeight.value, unit: 'mm' }, { figure: heap.mass, limit: storageMass.value, unit: 'kg' }, { figure: (across * deep * top) / 1e6, limit: storageVolume.value, unit: 'dm³' }];
  return [
    judge({ name: 'wall-height', figure: top, limit: wallHeight.value, unit: 'mm', source: wallHeight.source, ...common }),
    ...letOff(tests).map((each) => judge({ name: 'tip-test', ...each, source: tipTestMoment.source, ...common })),
    ...letOff(scopes).map((each) => judge({ name: 'tip-scope', ...each, source: storageHeight.source, ...common })),
  ];
};

/** The figure that lets it off most clearly. */
const letOff = <Told extends { readonly figure: number; readonly limit: number }>(all: readonly Told[]): readonly Told[] =>
  all.toSorted((a, b) => a.figure / a.limit - b.figure / b.limit).slice(0, 1);

/** Balance about an edge, N·m: a load near the edge of a seat, table or bed and a push outwards (see `tip-edge`). */
export const edgeTips: StructureCheck = (given) => {
  const { limits: { edgeLoad, edgeInset, edgePush } } = given;
  const own = given.model.use === 'seat' ? '' : '; made for seats, our default here: no printed value found';
  const used = given.bearings.filter(({ place: { use } }) => use === 'seat' || use === 'table' || use === 'bed');
  return worst(used.flatMap((bearing) => given.edges.filter((edge) => !isBehind(given, bearing, edge)).map((edge) => {
    const inside = insideEdge(edge, outermost(bearing, edge)) - bearing.overhang + edgeInset.value;
    const heap = emptyHeap(given);
    const holds = ownWeight(given) * insideEdge(edge, heap.at) + edgeLoad.value * Math.max(0, inside);
    const tips = edgePush.value * (middleOf(bearing)[2] - ground(given)) + edgeLoad.value * Math.max(0, -inside);
    return judge({
      name: 'tip-edge', figure: holds / 1000, limit: tips / 1000, bound: 'least', unit: 'N·m',
      source: `${edgeLoad.value} N down ${edgeInset.value} mm inside the edge, ${edgePush.value} N outwards, ${edgeLoad.source}${own}`,
      parts: standingIds(given.skeleton), otherwise: given.model.use === 'seat' ? 'fail' : 'caution',
    });
  })));
};

/** Where the axis of the outermost bar under a panel lies towards an edge. */
function outermost({ pairs, panel }: Bearing, edge: Edge): Vec3 {
  const places = pairs.flatMap(({ bars }) => bars.flatMap(({ from, to }) => [from, to]));
  const far = (at: Vec3): number => -insideEdge(edge, at);
  return places.toSorted((a, b) => far(b) - far(a))[0] ?? placed(panel.pose, [0, 0, 0]);
}

/** Nobody sits on the edge that a backrest stands over. */
const isBehind = (given: StructureCase, bearing: Bearing, { out }: Edge): boolean => backsOf(given).some(({ part }) => {
  const away = minus(placed(part.pose, [0, 0, 0]), middleOf(bearing));
  return (away[0] * out[0] + away[1] * out[1]) / lengthOf([away[0], away[1], 0]) > 0.9;
});

/** Balance about the edge behind, N·m: a person in the seat leans back (see `tip-back`); never more than a caution. */
export const backTips: StructureCheck = (given) => {
  const { limits } = given;
  return worst(backsOf(given).flatMap(({ part }) => given.bearings.filter(({ place: { use } }) => use === 'seat').flatMap((bearing) => given.edges.filter((edge) => isBehind(given, bearing, edge)).map((edge) => {
    const seat = middleOf(bearing)[2] - ground(given);
    const reach = part.shape.form === 'plate' ? part.shape.height / 2 : 0;
    const height = Math.min(seat + limits.backPushReach.value, placed(part.pose, [0, reach, 0])[2] - ground(given));
    const push = seat >= limits.backPushSeat.value ? limits.backPushHigh.value : limits.backPushSlope.value * (limits.backPushZero.value - seat);
    const share = pupilShare(given);
    const holds = ownWeight(given) * insideEdge(edge, emptyHeap(given).at) + share * limits.edgeLoad.value * insideEdge(edge, middleOf(bearing));
    return judge({
      name: 'tip-back', figure: holds / 1000, limit: (share * push * height) / 1000, bound: 'least', unit: 'N·m',
      source: `${push.toFixed(0)} N back at the top of the backrest, ${limits.edgeLoad.value} N in the middle of the seat, ${limits.backPushHigh.source}`,
      parts: standingIds(given.skeleton), otherwise: 'caution',
    });
  }))));
};

function pupilShare({ declared: { mark }, limits: { adultSeat } }: StructureCase): number {
  const seat = mark === null ? undefined : markHeights.seat[mark];
  return seat === undefined ? 1 : Math.min(1, (seat / adultSeat.value) ** 2.5);
}
