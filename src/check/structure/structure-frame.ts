import { lengthOf, minus, placed, type Vec3 } from '../../model/index.ts';
import { tubeKinds } from '../../read/index.ts';
import type { Cable, EndTurn, Frame, FrameNode, Member, NodeLoad, Section, Support } from '../frame/index.ts';
import type { Limits } from '../limits.ts';
import { barsUnder, panelsOf } from './bearings.ts';
import { contactsOf, type Contact } from './ground.ts';
import { lengthOfBar, onBar, type BarLine, type Skeleton } from './skeleton.ts';
import { alongLine } from './vectors.ts';

/** How a socket is counted on: as a hinge, or holding its tube against bending, as it does where its pocket is deep. */
export type Sockets = 'hinged' | 'stiff';

/** A place of a bar where something joins it. */
interface Stop {
  readonly at: number;
  readonly node: string;
  readonly place: Vec3;
  readonly by: 'socket' | 'sleeve' | 'pin' | 'ground' | 'end';
}

/** Nearer places on one bar are one node, mm. */
const SAME = 0.5;
/** How much stiffer than a tube a panel's ties are: far enough for a stiff plate, near enough for arithmetic. */
const STIFF = 100;
const PIN: readonly EndTurn[] = ['rx', 'ry', 'rz'];

/**
 * The model as a frame: bars stiff through sleeves, by their sockets as told; cables that only pull; wrapped panels tie
 * the corners of their loops, flat ones brace between their outermost pins; feet and braked castors stay where they are.
 */
export function structureFrame(skeleton: Skeleton, limits: Limits, sockets: Sockets, loads: readonly NodeLoad[]): Frame {
  const contacts = contactsOf(skeleton);
  const bars = skeleton.bars.map((bar) => ({ bar, stops: stopsOf(skeleton, bar, contacts) }));
  const nodes = new Map(bars.flatMap(({ stops }) => stops.map(({ node, place }) => [node, place] as const)));
  return {
    nodes: [...nodes].map(([name, at]): FrameNode => ({ name, at })),
    members: [...bars.flatMap(({ bar, stops }) => barMembers(skeleton, limits, bar, stops, sockets)), ...ties(skeleton, limits), ...plateMembers(skeleton, bars, limits)],
    cables: cablesOf(skeleton),
    supports: supportsOf(bars, contacts),
    nodeLoads: loads, lineLoads: [],
  };
}

type Stopped = readonly { readonly bar: BarLine; readonly stops: readonly Stop[] }[];

/** Joints first, then pins of flat panels, ground and free ends, each place of the bar once. */
function stopsOf(skeleton: Skeleton, bar: BarLine, contacts: readonly Contact[]): readonly Stop[] {
  const joints = bar.holds.map(({ joint, by, at }): Stop => ({ at, by, node: joint, place: skeleton.joints.get(joint) ?? onBar(bar, at) }));
  const more = [
    ...pinsOn(skeleton, bar).map((at): Stop => ({ at, by: 'pin', node: `${bar.id} pin ${at.toFixed(1)}`, place: onBar(bar, at) })),
    ...contacts.filter((each) => each.bar === bar.id).map(({ at }): Stop => ({ at, by: 'ground', node: `${bar.id} ground ${at.toFixed(1)}`, place: onBar(bar, at) })),
    ...[0, lengthOfBar(bar)].filter(() => bar.holds.every(({ by }) => by === 'sleeve')).map((at): Stop => ({ at, by: 'end', node: `${bar.id} end ${at.toFixed(1)}`, place: onBar(bar, at) })),
  ];
  const kept = more.reduce<readonly Stop[]>((list, stop) => (list.some(({ at }) => Math.abs(at - stop.at) < SAME) ? list : [...list, stop]), joints);
  return kept.toSorted((a, b) => a.at - b.at);
}

/** Places of the pins of flat panels on a bar, mm from its beginning. */
function pinsOn({ model }: Skeleton, bar: BarLine): readonly number[] {
  return model.connections.flatMap((held) => {
    if (held.is !== 'pin' || held.holds[1] !== bar.id) return [];
    const pin = model.parts.find(({ id }) => id === held.pin);
    return pin ? [alongLine(bar.from, bar.along, placed(pin.pose, [0, 0, 0]))] : [];
  });
}

function sectionOf({ model: { kit } }: Skeleton, { tubeShear }: Limits, { outside, inside, part }: BarLine): Section {
  const kind = tubeKinds(kit).find((tube) => Math.abs(tube.outside - outside) < SAME) ?? tubeKinds(kit)[0];
  const modulus = (kind?.modulus ?? 0) * (kind?.usedStockFactor ?? 1);
  const { area, second } = solidOf(outside, inside, part.shape.form === 'tube' && part.shape.profile === 'square');
  return { EA: modulus * area, EIy: modulus * second, EIz: modulus * second, GJ: modulus * tubeShear.value * 2 * second };
}

/** Area and second moment of a round or square tube, mm² and mm⁴ (any handbook). */
export const solidOf = (outside: number, inside: number, isSquare: boolean): { readonly area: number; readonly second: number } => (isSquare
  ? { area: outside ** 2 - inside ** 2, second: (outside ** 4 - inside ** 4) / 12 }
  : { area: (Math.PI / 4) * (outside ** 2 - inside ** 2), second: (Math.PI / 64) * (outside ** 4 - inside ** 4) });

function barMembers(skeleton: Skeleton, limits: Limits, bar: BarLine, stops: readonly Stop[], sockets: Sockets): readonly Member[] {
  const section = sectionOf(skeleton, limits, bar);
  const released = (stop: Stop | undefined): readonly EndTurn[] => (stop?.by === 'socket' ? (sockets === 'hinged' ? PIN : []) : []);
  return stops.slice(1).map((to, index): Member => {
    const from = stops[index];
    return { name: `${bar.id} stretch ${index}`, from: from?.node ?? '', to: to.node, section, released: { from: released(from), to: released(to) } };
  });
}

/** Ids of the members of one bar. */
export const isStretchOf = (member: string, bar: string): boolean => member.startsWith(`${bar} stretch `);

/** Wrapped panels and trays: every two corners of the loop are tied. */
function ties(skeleton: Skeleton, limits: Limits): readonly Member[] {
  const { model, joints } = skeleton;
  return model.patterns.filter(({ form }) => form !== 'flat').flatMap(({ partIds }) => partIds).flatMap((panel) => {
    const under = barsUnder(skeleton, panel);
    const [bar] = under;
    if (bar === undefined) return [];
    const section = { EA: STIFF * sectionOf(skeleton, limits, bar).EA, EIy: 0, EIz: 0, GJ: 0 };
    const corners = [...new Set(under.flatMap(({ holds }) => holds.map(({ joint }) => joint)))].filter((joint) => joints.has(joint));
    return corners.flatMap((a, index) => corners.slice(index + 1).map((b): Member => ({ name: `${panel} tie ${a} ${b}`, from: a, to: b, section })));
  });
}

/** Flat panels between the outermost pins of two bars, as two crossed struts and two edges hinged at their ends (see `stand-input`). */
function plateMembers(skeleton: Skeleton, bars: Stopped, limits: Limits): readonly Member[] {
  const { model: { kit: { panel: { skin, skinModulus, usedStockFactor } }, patterns, connections } } = skeleton;
  const modulus = skinModulus * usedStockFactor;
  const shear = modulus / (2 * (1 + limits.skinPoisson.value));
  return patterns.filter(({ form }) => form === 'flat').flatMap(({ partIds }) => partIds).flatMap((plate) => {
    const on = bars.filter(({ bar }) => connections.some((held) => held.is === 'pin' && held.holds[0] === plate && held.holds[1] === bar.id));
    const [low, high] = on.map(({ bar, stops }) => endPins(skeleton, bar, stops));
    if (!low || !high) return [];
    const [width, height] = [lengthOf(minus(low[1].place, low[0].place)), lengthOf(minus(high[0].place, low[0].place))];
    const strut = (shear * 2 * skin * Math.hypot(width, height) ** 3) / (2 * width * height);
    const edge = (modulus * 2 * skin * width) / 2;
    const bar = (from: Stop, to: Stop, EA: number): Member => ({ name: `${plate} ${from.node} ${to.node}`, from: from.node, to: to.node, section: { EA, EIy: 0, EIz: 0, GJ: 0 } });
    return [bar(low[0], high[1], strut), bar(low[1], high[0], strut), bar(low[0], high[0], edge), bar(low[1], high[1], edge)];
  });
}

function endPins(skeleton: Skeleton, bar: BarLine, stops: readonly Stop[]): readonly [Stop, Stop] | null {
  const pins = pinsOn(skeleton, bar);
  const on = stops.filter(({ at }) => pins.some((pin) => Math.abs(pin - at) < SAME));
  const [first, last] = [on[0], on.at(-1)];
  return first && last && first !== last ? [first, last] : null;
}

function cablesOf({ model }: Skeleton): readonly Cable[] {
  return model.joinings.flatMap((joining): readonly Cable[] => (joining.by === 'cable'
    ? [{ name: joining.cable, from: joining.joints[0], to: joining.joints[1], EA: model.kit.cable.stiffness }] : []));
}

/** A castor without a brake rolls; everything else stays where it stands. */
function supportsOf(bars: Stopped, contacts: readonly Contact[]): readonly Support[] {
  const all = contacts.flatMap(({ bar, at, rolls }): readonly Support[] => {
    const stop = bars.find((each) => each.bar.id === bar)?.stops.toSorted((a, b) => Math.abs(a.at - at) - Math.abs(b.at - at))[0];
    return stop ? [{ node: stop.node, held: rolls === 'free' ? ['uz'] : ['ux', 'uy', 'uz'] }] : [];
  });
  return all.filter(({ node }, index) => all.findIndex((each) => each.node === node) === index);
}

/** Nodes of a flat panel's bars where a push on it comes in: its pins, each with its share. */
export function pushOnPanels(skeleton: Skeleton, use: 'backrest' | 'screen', way: (panel: string) => Vec3): readonly NodeLoad[] {
  const contacts = contactsOf(skeleton);
  const panels = skeleton.model.places.filter((place) => place.use === use).flatMap((place) => panelsOf(skeleton, place));
  return panels.flatMap(({ part }) => {
    const nodes = skeleton.model.connections.flatMap((held) => {
      if (held.is !== 'pin' || held.holds[0] !== part.id) return [];
      const bar = skeleton.bars.find(({ id }) => id === held.holds[1]);
      const pin = skeleton.model.parts.find(({ id }) => id === held.pin);
      if (!bar || !pin) return [];
      const at = alongLine(bar.from, bar.along, placed(pin.pose, [0, 0, 0]));
      return stopsOf(skeleton, bar, contacts).filter((stop) => Math.abs(stop.at - at) < SAME).map(({ node }) => node);
    });
    const [x, y, z] = way(part.id);
    return nodes.map((node): NodeLoad => ({ node, force: [x / nodes.length, y / nodes.length, z / nodes.length] }));
  });
}
