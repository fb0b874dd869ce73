import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createHash as ours, sha256 } from '../../src/page/browser/sha256.ts';

describe('SHA-256 for the browser', () => {
  // FIPS 180-2, appendix B.1 and B.2: the worked examples (M), and Node's own for any other text (C).
  it('gives the published digests', () => {
    expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    expect(sha256('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq')).toBe('248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1');
  });

  it('agrees with Node\'s for every length round a block and for any text', () => {
    for (let length = 0; length < 130; length += 1) expect(sha256('x'.repeat(length))).toBe(createHash('sha256').update('x'.repeat(length)).digest('hex'));
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => ours('sha256').update(text).digest('hex') === createHash('sha256').update(text).digest('hex')));
  });
});
