import { messages } from '../messages.ts';
import type { Fault, Kit } from '../types.ts';
import type { YamlSource } from '../yaml-source.ts';
import type { GivenJoint, GivenPort } from './schema.ts';
import type { Axis, JointKind, PanelKind, Port, TubeKind } from './types.ts';

/** The name of the joint that decks and frames are made with. */
export const CORNER = 'corner';
/** The name of the tube and of the panel that a kit file tells on their own. */
export const USUAL = 'usual';

const unit = ([x, y, z]: Axis): Axis => {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
};

function axisOf({ axis, tilt, towards }: GivenPort): Axis {
  const straight = unit(axis);
  if (tilt === undefined || towards === undefined) return straight;
  const lean = unit(towards);
  return unit([0, 1, 2].map((place) => Math.cos(tilt) * (straight[place] ?? 0) + Math.sin(tilt) * (lean[place] ?? 0)) as unknown as Axis);
}

function portOf(given: GivenPort): Port {
  const axis = axisOf(given);
  switch (given.is) {
    case 'socket': return { is: 'socket', axis, depth: given.depth, stop: given.stop };
    case 'sleeve': return { is: 'sleeve', axis, above: given.above, below: given.below, pin: given.pin };
    case 'stud': return { is: 'stud', axis, reach: given.reach, diameter: given.diameter, head: given.head, headDiameter: given['head-diameter'] };
  }
}

export const jointOf = (name: string, given: GivenJoint): JointKind => ({
  name,
  profile: given.profile,
  bore: given.bore,
  sleeveDiameter: given['sleeve-diameter'],
  socketDiameter: given['socket-diameter'],
  endPlay: given['end-play'],
  up: unit(given.up),
  ports: given.ports.map(portOf),
  mass: given.mass,
});

/** All joints of a kit, the corner joint first: a sleeve, two sockets and a stud opposite each. */
export function jointKinds(kit: Kit): readonly JointKind[] {
  const { sleeveDiameter, sleeveAbove, sleeveBelow, bore, socketDiameter, socketDepth, stop, endPlay, pinHeight, mass } = kit.joint;
  const { studReach: reach, studDiameter: diameter, studHead: head, studHeadDiameter: headDiameter } = kit.joint;
  const socket = (axis: Axis): Port => ({ is: 'socket', axis, depth: socketDepth, stop });
  const stud = (axis: Axis): Port => ({ is: 'stud', axis, reach, diameter, head, headDiameter });
  const corner: JointKind = {
    name: CORNER, profile: 'round', bore, sleeveDiameter, socketDiameter, endPlay, up: [0, 0, 1], mass,
    ports: [
      { is: 'sleeve', axis: [0, 0, 1], above: sleeveAbove, below: sleeveBelow, pin: pinHeight },
      socket([1, 0, 0]), socket([0, 1, 0]), stud([-1, 0, 0]), stud([0, -1, 0]),
    ],
  };
  return [corner, ...kit.catalogue.joints];
}

/** The tubes of a kit, the usual one first. */
export function tubeKinds({ tube, catalogue }: Kit): readonly TubeKind[] {
  const { outsideDiameter: outside, ...rest } = tube;
  return [{ name: USUAL, profile: 'round', outside, ...rest }, ...catalogue.tubes];
}

/** The panels of a kit, the usual one first. */
export const panelKinds = ({ panel, catalogue }: Kit): readonly PanelKind[] => [{ name: USUAL, ...panel }, ...catalogue.panels];

/** What one joint of the file must keep to: names, leaning ports, room for its tubes. */
export function jointFaults(source: YamlSource, name: string, given: GivenJoint): Fault[] {
  const say = messages.catalogue;
  const faults: Fault[] = name === CORNER ? [source.faultAtName(['joints', name], say.cornerTaken)] : [];
  const at = (...field: readonly PropertyKey[]): readonly PropertyKey[] => ['joints', name, ...field];
  if (given['sleeve-diameter'] <= given.bore) faults.push(source.fault(at('sleeve-diameter'), messages.kitRule.sleeve));
  if (given['socket-diameter'] <= given.bore) faults.push(source.fault(at('socket-diameter'), messages.kitRule.socket));
  given.ports.forEach((port, place) => {
    if ((port.tilt === undefined) !== (port.towards === undefined)) faults.push(source.fault(at('ports', place, port.tilt === undefined ? 'tilt' : 'towards'), say.tiltTowards));
    else if (port.towards !== undefined && !isSquare(unit(port.axis), unit(port.towards))) faults.push(source.fault(at('ports', place, 'towards'), say.square));
    if (port.is === 'sleeve' && port.pin >= port.below) faults.push(source.fault(at('ports', place, 'pin'), say.pinInSleeve));
    if (port.is === 'stud' && port['head-diameter'] <= port.diameter) faults.push(source.fault(at('ports', place, 'head-diameter'), messages.kitRule.studHead));
    if (port.is === 'socket' && given['end-play'] >= port.depth) faults.push(source.fault(at('end-play'), messages.kitRule.endPlay));
  });
  return faults;
}

const isSquare = (a: Axis, b: Axis): boolean => Math.abs(a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) < 1e-6;
