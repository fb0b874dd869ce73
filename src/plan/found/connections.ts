import { directionOf } from '../jobs.ts';
import { placed, type JoiningBy, type Model, type Part, type Vec3 } from '../../model/index.ts';

/** Two or more parts that hold each other, told as the freedom they leave. Directions are unit vectors in the finished item's coordinates. */
export type Connection =
  /** The bar leaves the socket along `out`. */
  | { readonly is: 'socket'; readonly bar: string; readonly joint: string; readonly out: Vec3; readonly depth: number }
  /** Free both ways until pinned. */
  | { readonly is: 'sleeve'; readonly bar: string; readonly joint: string; readonly along: Vec3 }
  /** The pin leaves along `out`, its nut the other way. */
  | { readonly is: 'pin'; readonly pin: string; readonly nut: string; readonly holds: readonly string[]; readonly out: Vec3 }
  | { readonly is: 'panel-pin'; readonly pin: string; readonly panel: string; readonly flap: string; readonly out: Vec3 }
  /** The panel leaves the bar along `out`. */
  | { readonly is: 'lay'; readonly panel: string; readonly bar: string; readonly out: Vec3 }
  | { readonly is: 'wrap'; readonly panel: string; readonly flap: string; readonly bar: string }
  | { readonly is: 'hook'; readonly cable: string; readonly joint: string; readonly out: Vec3 }
  | { readonly is: 'cap'; readonly cap: string; readonly bar: string; readonly out: Vec3 }
  | { readonly is: 'foot'; readonly foot: string; readonly bar: string; readonly out: Vec3 }
  | { readonly is: 'hinge'; readonly hinge: string; readonly leaves: readonly [string, string]; readonly axis: Vec3; readonly at: Vec3; readonly out: Vec3 }
  | { readonly is: 'bracket'; readonly bracket: string; readonly bar: string; readonly out: Vec3 };

/** What today's joinings say, as freedoms. Goes away when the model tells its connections itself. */
export function connectionsToday(model: Model): readonly Connection[] {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const axis = (id: string, own: Vec3): Vec3 => roundedUnit(directionOf(partOf(parts, id).pose, own));
  return [
    ...model.joinings.flatMap((joining): Connection[] => {
      switch (joining.by) {
        case 'socket': return [socketOf(parts, joining)];
        case 'tab-pin': {
          const { place } = partOf(parts, joining.pin);
          return place.at === 'tab' ? [{ is: 'panel-pin', pin: joining.pin, panel: joining.panel, flap: place.side, out: axis(joining.pin, [0, 0, 1]) }] : [];
        }
        case 'post-pin': return [
          { is: 'sleeve', bar: joining.post, joint: joining.joint, along: axis(joining.joint, [0, 0, 1]) },
          { is: 'pin', pin: joining.pin, nut: joining.nut, holds: [joining.post, joining.joint], out: axis(joining.pin, [0, 0, 1]) },
        ];
        case 'plate-pin': return [{ is: 'pin', pin: joining.pin, nut: joining.nut, holds: [joining.plate, joining.tube], out: axis(joining.pin, [0, 0, 1]) }];
        case 'cable': return joining.joints.map((joint) => ({ is: 'hook', cable: joining.cable, joint, out: axis(joining.cable, [0, 0, 1]) }));
      }
    }),
    ...platesOnBars(model).map(([panel, bar]): Connection => ({ is: 'lay', panel, bar, out: axis(panel, [0, 0, 1]) })),
    ...wrappedBars(model).flatMap(([panel, bar, flap]): Connection[] => [
      { is: 'lay', panel, bar, out: axis(panel, [0, 0, -1]) }, { is: 'wrap', panel, bar, flap },
    ]),
  ];
}

function socketOf(parts: ReadonlyMap<string, Part>, { joint, tube }: JoiningBy<'socket'>): Connection {
  const [holder, bar] = [partOf(parts, joint), partOf(parts, tube)];
  const [jx, jy, jz] = placed(holder.pose, [0, 0, 0]);
  const [bx, by, bz] = placed(bar.pose, [0, 0, 0]);
  const depth = holder.shape.form === 'joint' ? holder.shape.joint.socketDepth : 0;
  return { is: 'socket', bar: tube, joint, out: roundedUnit([bx - jx, by - jy, bz - jz]), depth };
}

/** Each flat panel with each bar that a pin holds it to, once. */
function platesOnBars(model: Model): readonly (readonly [string, string])[] {
  const pairs = model.joinings.flatMap((each) => (each.by === 'plate-pin' ? [[each.plate, each.tube] as const] : []));
  return pairs.filter(([plate, tube], index) => pairs.findIndex((other) => other[0] === plate && other[1] === tube) === index);
}

/** Each wrapped panel with each bar and the flap that goes round it. */
const wrappedBars = (model: Model): readonly (readonly [string, string, string])[] =>
  model.parts.filter(({ kind }) => kind === 'panel').flatMap((panel) => model.parts.flatMap(({ id, group, place, shape }) =>
    (group === panel.group && place.at === 'side' && shape.form === 'tube' ? [[panel.id, id, place.side] as const] : [])));

function partOf(parts: ReadonlyMap<string, Part>, id: string): Part {
  const part = parts.get(id);
  if (part === undefined) throw new RangeError(`a connection names a part that is not there: ${id}`);
  return part;
}

/** A quarter turn leaves dust in the sixteenth figure; no direction means it. */
function roundedUnit([x, y, z]: Vec3): Vec3 {
  const length = Math.hypot(x, y, z);
  const rounded = (value: number): number => Math.round((value / length) * 1e12) / 1e12 + 0;
  return [rounded(x), rounded(y), rounded(z)];
}
