import { tidy, type Connection, type Vec3 } from '../../model/index.ts';
import { isBox } from './box-pieces.ts';
import { against, axisOf } from './vectors.ts';
import type { Unit, Units } from './units.ts';

/** Two units that touch and hold each other. */
export interface Link {
  readonly a: number;
  readonly b: number;
  readonly is: Connection['is'] | 'crease' | 'inside';
  /** Ways in which `a` may leave `b`; `b` leaves the other way. Empty: they go together until what binds them is undone. */
  readonly free: readonly Vec3[];
  /** What the model says of it; a crease is no connection of the model's, nor is a box that stands inside its bars. */
  readonly connection: Connection | null;
  /** Holds by itself: a tube pushed home, a pin, a hook. A sleeve or a panel that just lies there does not. */
  readonly firm: boolean;
}

/** All links of an item's units. */
export function linksOf(units: Units, connections: readonly Connection[]): readonly Link[] {
  return [...connections.flatMap((connection) => linksFrom(units, connection)), ...units.all.flatMap((unit) => heldToPanel(units, unit))];
}

function linksFrom(units: Units, connection: Connection): readonly Link[] {
  const at = (id: string): number => indexOf(units, id);
  const link = (a: number, b: number, free: readonly Vec3[], firm: boolean): Link => ({ a, b, is: connection.is, free, connection, firm });
  switch (connection.is) {
    case 'socket': return [link(at(connection.bar), at(connection.joint), [connection.out], true)];
    case 'sleeve': return [link(at(connection.bar), at(connection.joint), [connection.along, against(connection.along)], false)];
    case 'pin': return connection.holds.map((held) => link(at(connection.pin), at(held), [], true));
    case 'lay': return [link(at(connection.panel), at(connection.bar), [connection.out], false)];
    case 'wrap': return [
      ...flapUnits(units, connection.panel, connection.flap).filter(({ is }) => is === 'folded').map((flap) => link(flap.index, at(connection.bar), alongBar(units, connection.bar), false)),
      ...insideBar(units, at(connection.panel), connection.panel, at(connection.bar)),
    ];
    case 'hook': return [link(at(connection.cable), at(connection.joint), [connection.out], true)];
    case 'cap': return [link(at(connection.cap), at(connection.bar), [connection.out], true)];
    case 'foot': return [link(at(connection.foot), at(connection.bar), [connection.out], true)];
    case 'bracket': return [link(at(connection.bracket), at(connection.bar), [connection.out], true)];
    // The clip comes off its bar outwards, and off its panel the other way: the barbs of its leaf go out into that.
    case 'hinge': {
      const [panel, bar] = connection.leaves;
      return [link(at(connection.hinge), at(panel), [against(connection.out)], true), link(at(connection.hinge), at(bar), [connection.out], true)];
    }
    case 'panel-pin': return [];
  }
}

/** A box stands inside its bars before its rims go round them; it leaves downwards, where its floor is. */
function insideBar(units: Units, box: number, panel: string, bar: number): readonly Link[] {
  const part = units.parts.get(panel);
  if (part === undefined || !isBox(part.shape)) return [];
  return [{ a: box, b: bar, is: 'inside', free: [against(tidy(axisOf(part.pose, 2)))], connection: null, firm: false }];
}

function indexOf(units: Units, id: string): number {
  const unit = units.of.get(id);
  if (unit === undefined) throw new RangeError(`a connection names a part that is not there: ${id}`);
  return unit.index;
}

const flapUnits = (units: Units, panel: string, flap: string): readonly Unit[] =>
  units.all.filter((unit) => (unit.is === 'folded' || unit.is === 'flat') && unit.panel === panel && unit.flap.name === flap);

function alongBar(units: Units, bar: string): readonly Vec3[] {
  const pose = units.parts.get(bar)?.pose ?? [];
  const along = tidy([pose[0] ?? 0, pose[1] ?? 0, pose[2] ?? 0]);
  return [along, against(along)];
}

/** A flap hangs on its panel by its creases; a row of pins sticks in both. */
function heldToPanel(units: Units, unit: Unit): readonly Link[] {
  if (unit.is === 'row') {
    const folded = flapUnits(units, unit.panel, unit.flap).filter(({ is }) => is === 'folded').map(({ index }) => index);
    return [indexOf(units, unit.panel), ...folded].map((other) => ({ a: unit.index, b: other, is: 'panel-pin', free: [], connection: null, firm: true }));
  }
  if (unit.is !== 'folded' && unit.is !== 'flat') return [];
  return [{ a: unit.index, b: indexOf(units, unit.panel), is: 'crease', free: [], connection: null, firm: true }];
}
