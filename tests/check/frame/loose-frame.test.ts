import { describe, expect, it } from 'vitest';
import { FrameError, MechanismError, solveFrame, type Frame } from '../../../src/check/frame/index.ts';
import { all, bar, endOf, frameOf, hold, pinned, push, shiftOf } from './frames.ts';

const section = { EA: 3.2e6, EIy: 1.6e8, EIz: 1.6e8, GJ: 6e7 };
const rod = { EA: 3.2e6, EIy: 0, EIz: 0, GJ: 0 };
const pin = { from: ['rx', 'ry', 'rz'], to: ['rx', 'ry', 'rz'] } as const;

function refusal(frame: Frame): unknown {
  try { solveFrame(frame); } catch (error) { return error; }
  return null;
}

describe('a mechanism is refused with the node and the freedom that move', () => {
  it('a beam on two rollers rolls along x', () => {
    const error = refusal(frameOf({ a: [0, 0, 0], b: [900, 0, 0] }, {
      members: [bar('a', 'b', section)], supports: [hold('a', ['uy', 'uz', 'rx']), hold('b', ['uy', 'uz'])], nodeLoads: [push('b', [0, 0, 0], [0, 500, 0])],
    }));
    expect(error).toBeInstanceOf(MechanismError);
    expect(error).toMatchObject({ node: 'a', freedom: 'ux' });
    expect(String(error)).toContain('node "a" moves freely along x');
  });

  it('a square of pinned bars without a diagonal leans along x at its top', () => {
    const names = ['a', 'b', 'c', 'd'];
    const error = refusal(frameOf({ a: [0, 0, 0], b: [0, 0, 500], c: [700, 0, 500], d: [700, 0, 0] }, {
      members: [bar('a', 'b', section, { released: pin }), bar('b', 'c', section, { released: pin }), bar('c', 'd', section, { released: pin })],
      supports: names.map((name) => hold(name, name === 'a' || name === 'd' ? pinned : ['uy'])),
    }));
    expect(error).toMatchObject({ node: 'b', freedom: 'ux' });
  });

  it('a moment on a bar that may spin about itself turns it freely', () => {
    const frame = frameOf({ a: [0, 0, 0], b: [900, 0, 0] }, { members: [bar('a', 'b', section)], supports: [hold('a', pinned), hold('b', ['uy', 'uz'])] });
    expect(refusal({ ...frame, nodeLoads: [push('b', [0, 0, 0], [400, 0, 0])] })).toMatchObject({ freedom: 'rx' });
    expect(refusal({ ...frame, nodeLoads: [push('b', [30, 0, 0])] })).toBeNull();
  });

  it('nothing holds a frame without supports', () => {
    expect(refusal(frameOf({ a: [0, 0, 0], b: [900, 0, 0] }, { members: [bar('a', 'b', section)] }))).toBeInstanceOf(MechanismError);
  });

  it('a post held by one cable stands against a pull away from it and falls when pushed towards it', () => {
    const post = (force: number): Frame => frameOf({ foot: [0, 0, 0], head: [0, 0, 800], peg: [-600, 0, 0] }, {
      members: [bar('foot', 'head', section)],
      cables: [{ name: 'stay', from: 'peg', to: 'head', EA: 60_000 }],
      supports: [hold('foot', [...pinned, 'rz']), hold('peg', pinned), hold('head', ['uy'])],
      nodeLoads: [push('head', [force, 0, 0])],
    });
    expect(solveFrame(post(60)).cableForces['stay']).toBeCloseTo(100, 6);
    expect(refusal(post(-60))).toMatchObject({ node: 'head', freedom: 'ux' });
  });
});

describe('motions that do no harm', () => {
  it('joints where only pinned bars meet need no hold against turning', () => {
    const result = solveFrame(frameOf({ a: [0, 0, 0], b: [300, 0, 400], c: [600, 0, 0] }, {
      members: [bar('a', 'b', section, { released: pin }), bar('b', 'c', rod)],
      supports: [hold('a', pinned), hold('c', pinned), hold('b', ['uy'])], nodeLoads: [push('b', [0, 0, -80])],
    }));
    // Each bar carries half the load over the sine of its slope, 0.8.
    expect(endOf(result, 'a-b', 'from')[0]).toBeCloseTo(50, 9);
  });

  it('cables all slack under a weight on top leave the frame standing', () => {
    const result = solveFrame(frameOf({ a: [0, 0, 0], b: [0, 0, 500], c: [700, 0, 500], d: [700, 0, 0] }, {
      members: [bar('a', 'b', rod), bar('b', 'c', rod), bar('d', 'c', rod)],
      cables: [{ name: 'up', from: 'a', to: 'c', EA: 60_000 }, { name: 'down', from: 'd', to: 'b', EA: 60_000 }],
      supports: [hold('a', pinned), hold('d', pinned), hold('b', ['uy']), hold('c', ['uy'])],
      nodeLoads: [push('b', [0, 0, -200]), push('c', [0, 0, -200])],
    }));
    expect(result.cableForces).toEqual({ up: 0, down: 0 });
    expect(shiftOf(result, 'b', 'uz')).toBeCloseTo((-200 * 500) / rod.EA, 6);
    expect(Math.abs(shiftOf(result, 'b', 'ux'))).toBeLessThan(0.05);
  });
});

describe('a frame that makes no sense is refused in words', () => {
  const sound = frameOf({ a: [0, 0, 0], b: [900, 0, 0] }, { members: [bar('a', 'b', section)], supports: [hold('a', all)] });

  it.each<readonly [string, Frame, string]>([
    ['an unknown node', { ...sound, members: [bar('a', 'z', section)] }, 'member "a-z" names node "z", which is not there'],
    ['twins', { ...sound, nodes: [...sound.nodes, { name: 'a', at: [1, 1, 1] }] }, 'two nodes are called "a"'],
    ['no length', { ...sound, nodes: sound.nodes.map(({ name }) => ({ name, at: [0, 0, 0] as const })) }, 'member "a-b" has no length'],
    ['a negative stiffness', { ...sound, members: [bar('a', 'b', { ...section, EIy: -1 })] }, 'member "a-b" has EIy -1; it must be 0 or more'],
    ['"up" along the member', { ...sound, members: [bar('a', 'b', section, { up: [2, 0, 0] })] }, 'it must point across'],
    ['a load that is no number', { ...sound, nodeLoads: [push('b', [NaN, 0, 0])] }, 'the load on node "b" has the value NaN'],
    ['a line load on a rod', { ...sound, members: [bar('a', 'b', rod)], lineLoads: [{ member: 'a-b', perLength: [0, 0, -1] }] }, 'no bending stiffness'],
    ['a load on a missing member', { ...sound, lineLoads: [{ member: 'q', perLength: [0, 0, -1] }] }, 'member "q", which is not there'],
    ['a cable without stiffness', { ...sound, cables: [{ name: 'c', from: 'a', to: 'b', EA: 0 }] }, 'cable "c" has E A 0 N'],
  ])('%s', (_, frame, words) => {
    const error = refusal(frame);
    expect(error).toBeInstanceOf(FrameError);
    expect(String(error)).toContain(words);
  });
});
