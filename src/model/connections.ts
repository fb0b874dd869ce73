import type { Connection } from './types.ts';

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
