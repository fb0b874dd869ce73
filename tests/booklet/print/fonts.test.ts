import { describe, expect, it } from 'vitest';
import { fontCss, scriptOf } from '../../../src/booklet/print/index.ts';
import { letterCoverage } from '../../../src/booklet/print/fonts.ts';

describe('fonts', () => {
  // Unicode CLDR, likelySubtags.xml (from memory): the script a language is usually written in.
  it.each([['en', 'Latn'], ['ar', 'Arab'], ['fa', 'Arab'], ['ur', 'Arab'], ['hi', 'Deva'], ['uk', 'Cyrl'], ['el', 'Grek'], ['my', 'Mymr'], ['uz-Cyrl', 'Cyrl']])(
    'knows the script of %s as %s', (lang, script) => expect(scriptOf(lang)).toBe(script));

  it('carries regular and bold of each script as WOFF2 inside the style, and nothing from outside', () => {
    const css = fontCss(['en', 'ar']);
    const faces = css.split('\n').filter((line) => line.startsWith('@font-face'));
    expect(faces.filter((face) => face.includes("'Noto Sans Arabic'")).map((face) => /weight: (\d+)/.exec(face)?.[1])).toEqual(['400', '700']);
    expect(faces.filter((face) => face.includes("'Noto Sans';"))).toHaveLength(6);
    // WOFF2 starts with 'wOF2' (W3C WOFF File Format 2.0, section 4.1).
    for (const face of faces) expect(Buffer.from(/base64,([^)]*)/.exec(face)?.[1] ?? '', 'base64').subarray(0, 4).toString()).toBe('wOF2');
    expect(css).not.toMatch(/https?:|file:|local\(/);
    expect(css).toContain('font-synthesis: none');
  });

  it('sets each language in its script’s own font first, in any order of the list', () => {
    expect(fontCss(['en', 'ar'])).toContain(":lang(ar) { font-family: 'Noto Sans Arabic', 'Noto Sans'; }");
    expect(fontCss(['en', 'ar'])).toContain(":lang(en) { font-family: 'Noto Sans', 'Noto Sans Arabic'; }");
    expect(fontCss(['ar', 'en', 'ar'])).toBe(fontCss(['en', 'ar']));
  });

  it('refuses a script without a font and a tag that is none', () => {
    expect(() => fontCss(['my'])).toThrow('language “my” is written in the script Mymr, for which there is no font');
    expect(() => fontCss(['not a tag'])).toThrow('is not a BCP 47 tag');
  });

  it('knows which letters are covered', () => {
    const covered = letterCoverage(['en', 'ar']);
    expect([...'Aé×–²ğ'].every((letter) => covered(letter.codePointAt(0) ?? 0))).toBe(true);
    expect(covered(0x627)).toBe(true);
    expect(covered(0x6f22)).toBe(false);
    expect(letterCoverage(['en'])(0x627)).toBe(false);
  });
});
