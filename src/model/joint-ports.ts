import type { Port } from '../read/index.ts';
import type { Shape } from './types.ts';

type JointShape = Extract<Shape, { form: 'joint' | 'ported-joint' }>;

/** A joint's openings and studs in its own axes, and the width of its openings, mm, whichever way it is told. */
export interface JointPorts {
  readonly ports: readonly Port[];
  readonly bore: number;
  readonly outside: number;
}

/** The ports of a joint; null for what is none. */
export function jointPorts(shape: Shape): JointPorts | null {
  if (shape.form === 'ported-joint') return { ports: shape.joint.ports, bore: shape.joint.bore, outside: shape.joint.sleeveDiameter };
  return shape.form === 'joint' ? cornerPorts(shape) : null;
}

function cornerPorts({ joint }: Extract<JointShape, { form: 'joint' }>): JointPorts {
  const socket = { is: 'socket', depth: joint.socketDepth, stop: joint.stop } as const;
  const stud = { is: 'stud', reach: joint.studReach, diameter: joint.studDiameter, head: joint.studHead, headDiameter: joint.studHeadDiameter } as const;
  return {
    ports: [
      { is: 'sleeve', axis: [0, 0, 1], above: joint.sleeveAbove, below: joint.sleeveBelow, pin: joint.pinHeight },
      { ...socket, axis: [1, 0, 0] }, { ...socket, axis: [0, 1, 0] }, { ...stud, axis: [-1, 0, 0] }, { ...stud, axis: [0, -1, 0] },
    ],
    bore: joint.bore, outside: joint.sleeveDiameter,
  };
}
