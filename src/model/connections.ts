import { pointed } from './pose.ts';
import type { Connection, Pose } from './types.ts';

/** The connections of a sub-assembly in its own coordinates, with the names and the place it has in the item. */
export function connectionsInPlace(connections: readonly Connection[], own: (id: string) => string, pose: Pose): readonly Connection[] {
  return connections.map((connection) => inPlace(connection, own, pose));
}

function inPlace(connection: Connection, own: (id: string) => string, pose: Pose): Connection {
  switch (connection.is) {
    case 'socket': return { ...connection, bar: own(connection.bar), joint: own(connection.joint), out: pointed(pose, connection.out) };
    case 'sleeve': return { ...connection, bar: own(connection.bar), joint: own(connection.joint), along: pointed(pose, connection.along) };
    case 'pin': return { ...connection, pin: own(connection.pin), nut: own(connection.nut), holds: connection.holds.map(own), out: pointed(pose, connection.out) };
    case 'panel-pin': return { ...connection, pin: own(connection.pin), panel: own(connection.panel), out: pointed(pose, connection.out) };
    case 'lay': return { ...connection, panel: own(connection.panel), bar: own(connection.bar), out: pointed(pose, connection.out) };
    case 'wrap': return { ...connection, panel: own(connection.panel), bar: own(connection.bar) };
    case 'hook': return { ...connection, cable: own(connection.cable), joint: own(connection.joint), out: pointed(pose, connection.out) };
    default: throw new RangeError(`no ${connection.is} in a sub-assembly of decks and frames`);
  }
}

/** The ids of all parts that a connection joins, the one that leaves first. */
export function joinedBy(connection: Connection): readonly string[] {
  switch (connection.is) {
    case 'socket':
    case 'sleeve': return [connection.bar, connection.joint];
    case 'pin': return [connection.pin, connection.nut, ...connection.holds];
    case 'panel-pin': return [connection.pin, connection.panel];
    case 'lay':
    case 'wrap': return [connection.panel, connection.bar];
    case 'hook': return [connection.cable, connection.joint];
    case 'cap': return [connection.cap, connection.bar];
    case 'foot': return [connection.foot, connection.bar];
    case 'hinge': return [connection.hinge, ...connection.leaves];
    case 'bracket': return [connection.bracket, connection.bar];
  }
}
