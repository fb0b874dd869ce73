import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildModel, type Model, type Part } from '../../src/model/index.ts';
import type { Item } from '../../src/read/index.ts';
import { hangingTogether } from '../support/connected.ts';
import { faultsOf } from '../support/faults.ts';
import { partOf, solids } from '../support/rack.ts';
import { changedText, structureFrom, structureText } from '../support/structures.ts';

const kitFile = 'steps/kits/stall-kit.yaml';
const kitText = readFileSync(kitFile, 'utf8');

const standard = (item: Item): Model => buildModel(item, 'standard');

const kindAt = (model: Model, id: string): string => {
  const { shape } = partOf(model, id);
  return shape.form === 'ported-joint' ? shape.joint.name : shape.form === 'joint' ? 'corner' : '';
};

/** Pairs of parts that share more than 1 mm³. */
const sharing = ({ parts }: Model): readonly string[] => parts.flatMap((one, index) => parts.slice(index + 1).flatMap((other) => (solids.overlap(one, other) > 1 ? [`${one.id} and ${other.id}`] : [])));

describe('where no joint of the kit fits', () => {
  const start = kitText.indexOf('  cross: ');
  const without = kitText.slice(0, start) + kitText.slice(kitText.indexOf('  tee: '));

  it('tells the point, the nearest joint and what it lacks, at the bar that lacks it', () => {
    const text = structureText('bench');
    const faults = faultsOf(() => standard(structureFrom('bench', text, { [kitFile]: without })));
    expect(faults.map(({ field, found }) => [field, found])).toEqual([['bars.long', 'no joint that fits joint c.1.0'], ['bars.long', 'no joint that fits joint c.1.1'], ['bars.rail', 'no joint that fits joint r.1.1']]);
    expect(faults[0]?.remedy).toBe('a kit with such a joint, or other bars here; the nearest is corner, which lacks a socket towards right for long.1.0');
    const line = text.split('\n').findIndex((each) => each.startsWith('  long: {')) + 1;
    expect(faults[0]?.position).toMatchObject({ file: 'steps/bench/item.yaml', line });
  });
});

describe('the choice between joints that fit', () => {
  const bench = standard(structureFrom('bench', structureText('bench')));

  it('leaves no more ports idle than it must: a tee where one bar meets a post, a corner where two do', () => {
    expect([kindAt(bench, 'joint r.1.0'), kindAt(bench, 'joint c.0.0'), kindAt(bench, 'joint c.1.0')]).toEqual(['tee', 'corner', 'cross']);
  });

  it('takes a joint with a stud where a cable hooks, and studs look outwards', () => {
    const hooks = bench.connections.filter((each) => each.is === 'hook');
    for (const { joint, out } of hooks) {
      const { pose } = partOf(bench, joint);
      expect([joint, Math.sign(pose[12] ?? 0)]).toEqual([joint, Math.sign(out[0])]);
    }
  });

  it('does not hang on the order of the file', () => {
    const text = structureText('bench');
    const bars = text.slice(text.indexOf('bars:\n'), text.indexOf('\npanels:')).split('\n');
    const turned = text.replace(bars.join('\n'), ['bars:', ...bars.slice(1).filter((line) => line !== '').reverse(), ''].join('\n'));
    const other = standard(structureFrom('bench', turned));
    const posed = (model: Model): unknown => model.parts.filter(({ kind }) => kind === 'joint').map(({ id, shape, pose }) => ({ id, shape, pose })).sort((a, b) => (a.id < b.id ? -1 : 1));
    expect(posed(other)).toEqual(posed(bench));
  });
});

const places = { a: '0, 0', g: 'width - wing, 0', b: 'width, 0', c: 'width, depth', d: '0, depth', e: 'width - wing, -1 * far', h: 'width, -1 * far' } as const;
const between = ['a g', 'g b', 'b c', 'd c', 'a d', 'e g', 'h b', 'e h'].map((pair) => pair.split(' '));

/** An L: a main panel with a joint midway on its front edge, and a wing that shares a tube with it. */
const lShaped = `kind: item
name: corner-desk
kit: stall-kit
use: table
place: indoors
for: adults
revision: 1
parameters:
  width:
    range: 600 mm to 1400 mm
    purpose: From post to post along the back.
expressions:
  depth: 500 mm
  wing: 480 mm
  far: 560 mm
  level: 700 mm
sizes:
  standard:
    width: 1300 mm
points:
${Object.entries(places).map(([name, at]) => `  ${name}: { at: [${at}, level] }\n  ${name}0: { at: [${at}, 0] }\n  ${name}1: { at: [${at}, level + 26 mm] }`).join('\n')}
bars:
${between.map(([from = '', to = '']) => `  ${from}${to}: { from: ${from}, to: ${to} }`).join('\n')}
${Object.keys(places).map((name) => `  p${name}: { from: ${name}0, to: ${name}1, through: ${name} }`).join('\n')}
panels:
  main: { is: wrapped, loop: [ag, gb, bc, dc, ad], wrap: [ag, bc, dc, ad] }
  wing: { is: wrapped, loop: [eh, hb, gb, eg], wrap: [eh, hb, eg] }
places:
  top: { panel: [main, wing], use: table }
`;

describe('a panel with a joint midway on an edge', () => {
  const model = standard(structureFrom('corner-desk', lShaped));
  const main = model.patterns.find(({ partIds }) => partIds.includes('main'));

  it('has a notch there, and flaps on the bars beside it that it is folded round', () => {
    expect(main?.flaps.map(({ side }) => side).sort()).toEqual(['back', 'front', 'left', 'right']);
    const edge = main?.flaps.filter(({ side }) => side === 'front' || side === 'back').map(({ strips: [strip] }) => (strip?.end ?? 0) - (strip?.start ?? 0)).sort((a, b) => a - b);
    // 820 and 1300 between the posts, less 74 at each end for a socket and its gap.
    expect(edge).toEqual([expect.closeTo(820 - 148, 6), expect.closeTo(1300 - 148, 6)]);
  });

  it('shares no room with anything, and all is one whole', () => {
    expect(sharing(model)).toEqual([]);
    expect(hangingTogether(model).size).toBe(model.parts.length);
  });

  it('meets the wing over the tube they share', () => {
    const [one, other] = ['main', 'wing'].map((id) => solids.box(partOf(model, id)));
    expect((one?.min[1] ?? 0)).toBeLessThan(other?.max[1] ?? 0);
    expect(model.connections.filter((each) => each.is === 'lay' && each.bar === 'gb').map((each) => (each.is === 'lay' ? each.panel : ''))).toEqual(['main', 'wing']);
  });
});

const wrongBars: readonly (readonly [from: string, to: string, found: string, remedy: string])[] = [
  ['hb: { from: h, to: b }', 'hb: { from: h, to: b }\n  extra: { from: g, to: h }', 'no joint that fits joint g', 'which lacks a socket'],
  ['wrap: [eh, hb, eg]', 'wrap: [eh, hb, eg, gb]', 'gb, which another panel is folded round', 'a bar that is free of other panels'],
  ['loop: [eh, hb, gb, eg], wrap: [eh, hb, eg]', 'loop: [eh, hb, gb], wrap: [eh, hb]', 'a loop that is no rectangle in one plane', 'bars one after the other round a rectangle'],
  ['wing: 480 mm', 'wing: 130 mm', '130 mm between its points', 'at least 140 mm, the room its sockets need'],
];

describe('bars and panels that do not go together', () => {
  it.each(wrongBars)('%s → %s', (from, to, found, remedy) => {
    const faults = faultsOf(() => standard(structureFrom('corner-desk', changedText(lShaped, from, to))));
    expect(faults.some((fault) => fault.found === found && fault.remedy.includes(remedy))).toBe(true);
    for (const { position } of faults) expect(position.line).toBeGreaterThan(10);
  });

  it('tells joints that run into each other on one bar, and a bar that ends before its pin', () => {
    const text = structureText('two-bay');
    const near = changedText(text, 'spacing: (height - lowest - 80 mm) / (decks - 1)', 'spacing: 60 mm');
    expect(faultsOf(() => standard(structureFrom('two-bay', near)))[0]).toMatchObject({ field: 'bars.post', remedy: 'points at least 74 mm apart' });
    // The lowest joints are 126.5 mm up, and drilled 36 mm under that.
    const short = changedText(text.replace('along: height - 25 mm', 'along: 700 mm'), 'f: { for: { x: 0..2, y: 0..1 }, at: [x * along, y * across, 0] }', 'f: { for: { x: 0..2, y: 0..1 }, at: [x * along, y * across, 100 mm] }');
    expect(faultsOf(() => standard(structureFrom('two-bay', short)))[0]).toMatchObject({ field: 'bars.post', found: 'a bar that ends before the pin of its joint' });
  });
});

describe('a square tube', () => {
  const joint = `  square-elbow:
    profile: square
    bore: 25.6 mm
    sleeve-diameter: 34 mm
    socket-diameter: 34 mm
    end-play: 2 mm
    mass: 0.1 kg
    ports:
      - { is: socket, axis: [0, 0, -1], depth: 50 mm, stop: 20 mm }
      - { is: socket, axis: [1, 0, 0], depth: 50 mm, stop: 20 mm }
`;
  const tube = `tubes:
  square:
    profile: square
    outside: 25 mm
    wall: 2 mm
    length: 3000 mm
    density: 1900 kg/m^3
    modulus: 23 GPa
    bending-strength: 240 MPa
    bearing-strength: 150 MPa
    used-stock-factor: 0.7

fittings:
`;
  const kit = kitText.replace('  elbow: ', () => `${joint}  elbow: `).replace('fittings:\n', () => tube);
  const portal = (kind: string): string => `kind: item
name: portal
kit: stall-kit
use: storage
place: indoors
for: adults
revision: 1
parameters:
  width:
    range: 300 mm to 900 mm
    purpose: From post to post.
sizes:
  standard:
    width: 600 mm
points:
  f: { at: [width / 2, 0, 0], mirror: x }
  t: { at: [width / 2, 0, 800 mm], mirror: x }
bars:
  post: { for: { x: 0..1 }, from: f.x, to: t.x, tube: ${kind} }
  beam: { from: t.1, to: t.0, tube: ${kind} }
`;
  const built = (kind: string): Model => standard(structureFrom('portal', portal(kind), { [kitFile]: kit }));

  it('goes into joints with square sockets, a round one into round ones', () => {
    const kinds = (model: Model): readonly string[] => model.parts.filter(({ kind }) => kind === 'joint').map(({ id }) => kindAt(model, id));
    expect([kinds(built('square')), kinds(built('usual'))]).toEqual([['square-elbow', 'square-elbow'], ['elbow', 'elbow']]);
    expect(sharing(built('square'))).toEqual([]);
  });

  it('is as heavy as its section says', () => {
    const post = built('square').parts.find(({ id }) => id === 'post.0') as Part;
    // (25² − 21²) mm² · 780 mm · 1.9e-6 kg/mm³
    expect(post.mass).toBeCloseTo(184 * 780 * 1.9e-6, 9);
    expect(solids.volume(post.shape)).toBeCloseTo(184 * 780, -2);
  });
});
