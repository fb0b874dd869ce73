import type { Connection, Joining, Part } from './types.ts';

/** What holds what, told by parts alone, from the connections of an item. */
export function joiningsFrom(connections: readonly Connection[], parts: readonly Part[]): readonly Joining[] {
  const isJoint = new Set(parts.filter(({ kind }) => kind === 'joint').map(({ id }) => id));
  const hooked = new Map<string, string[]>();
  return connections.flatMap((connection): readonly Joining[] => {
    switch (connection.is) {
      case 'socket': return [{ by: 'socket', joint: connection.joint, tube: connection.bar }];
      case 'panel-pin': return [{ by: 'tab-pin', pin: connection.pin, panel: connection.panel }];
      case 'pin': {
        const { pin, nut, holds: [one = '', other = ''] } = connection;
        return isJoint.has(other) ? [{ by: 'post-pin', pin, nut, post: one, joint: other }] : [{ by: 'plate-pin', pin, nut, plate: one, tube: other }];
      }
      case 'hook': {
        const joints = [...(hooked.get(connection.cable) ?? []), connection.joint];
        hooked.set(connection.cable, joints);
        const [low, high] = joints;
        return low === undefined || high === undefined ? [] : [{ by: 'cable', cable: connection.cable, joints: [low, high] }];
      }
      default: return [];
    }
  });
}
