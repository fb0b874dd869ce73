import { kitSections } from './kit-schema.ts';
import { messages } from './messages.ts';
import type { Fault } from './types.ts';
import { goodEntries, sectionEntries } from './validate.ts';
import type { YamlSource } from './yaml-source.ts';

/** One thing that must hold between several fields of a kit; the first field is blamed. */
interface KitRule {
  readonly fields: readonly string[];
  readonly holds: (values: readonly number[]) => boolean;
  readonly remedy: string;
}

const say = messages.kitRule;

/** Plain geometry of the parts: what would not go together, whatever the item. Lengths in mm. */
const kitRules: readonly KitRule[] = [
  rule(['panel.skin', 'panel.thickness'], (skin, thickness) => 2 * skin < thickness, say.skins),
  rule(['tube.wall', 'tube.outside-diameter'], (wall, diameter) => 2 * wall < diameter, say.wall),
  rule(['joint.bore', 'tube.outside-diameter'], (bore, tube) => bore > tube, say.bore),
  rule(['joint.sleeve-diameter', 'joint.bore'], (sleeve, bore) => sleeve > bore, say.sleeve),
  rule(['joint.socket-diameter', 'tube.outside-diameter'], (socket, tube) => socket > tube, say.socket),
  rule(['joint.stop', 'joint.bore'], (stop, bore) => stop >= bore / 2, say.stop),
  rule(['joint.end-play', 'joint.socket-depth'], (play, depth) => play < depth, say.endPlay),
  rule(['joint.stud-reach', 'joint.sleeve-diameter', 'joint.stud-head'], (reach, sleeve, head) => reach > sleeve / 2 + head, say.studReach),
  rule(['joint.stud-head-diameter', 'joint.stud-diameter'], (head, stud) => head > stud, say.studHead),
  rule(['joint.pin-height', 'joint.socket-diameter', 'joint-pin.diameter'], (height, socket, pin) => height >= (socket + pin) / 2, say.pinHeightLow),
  rule(['joint.pin-height', 'joint.sleeve-below', 'joint-pin.diameter'], (height, below, pin) => height + pin / 2 < below, say.pinHeightHigh),
  rule(['panel-pin.head-diameter', 'panel-pin.diameter'], (head, pin) => head > pin, say.panelPinHead),
  rule(['panel-pin.length', 'panel.thickness'], (length, thickness) => length > thickness, say.panelPinShort),
  rule(['panel-pin.length', 'panel.thickness'], (length, thickness) => length <= 2 * thickness, say.panelPinLong),
  rule(['joint-pin.head-diameter', 'joint-pin.diameter'], (head, pin) => head > pin, say.jointPinHead),
  rule(['joint-pin.diameter', 'tube.outside-diameter', 'tube.wall'], (pin, tube, wall) => pin < tube - 2 * wall, say.jointPinThick),
  rule(['joint-pin.length', 'joint.sleeve-diameter', 'joint-pin.nut-height'], (length, sleeve, nut) => length > sleeve + nut, say.jointPinLong),
  rule(['practice.tab', 'practice.pin-edge', 'panel-pin.diameter'], (tab, edge, pin) => tab > edge + pin / 2, say.tab),
  rule(['practice.tab-corner', 'practice.tab'], (corner, tab) => corner < tab, say.tabCorner),
  rule(['practice.pin-end', 'panel-pin.head-diameter'], (end, head) => end >= head / 2, say.pinEnd),
  rule(['practice.pin-pitch', 'panel-pin.head-diameter'], (pitch, head) => pitch > head, say.pinPitch),
];

function rule(fields: readonly string[], holds: (...values: number[]) => boolean, remedy: string): KitRule {
  return { fields, holds: (values) => holds(...values), remedy };
}

/** Faults between fields, as far as the fields themselves can be read. */
export function kitRuleFaults(source: YamlSource): Fault[] {
  const values = goodValues(source);
  return kitRules.flatMap(({ fields, holds, remedy }) => {
    const known = fields.flatMap((field) => values.get(field) ?? []);
    const path = (fields[0] ?? '').split('.');
    return known.length < fields.length || holds(known) ? [] : [source.fault(path, remedy)];
  });
}

function goodValues(source: YamlSource): ReadonlyMap<string, number> {
  const raw = new Map(sectionEntries(source.raw));
  const values = new Map<string, number>();
  for (const [name, schema] of Object.entries(kitSections)) {
    for (const [field, fieldSchema] of Object.entries(schema.shape)) {
      const value = goodEntries({ [field]: new Map(sectionEntries(raw.get(name))).get(field) }, fieldSchema).get(field);
      if (value !== undefined) values.set(`${name}.${field}`, value);
    }
  }
  return values;
}
