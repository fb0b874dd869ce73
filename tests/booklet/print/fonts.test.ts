import { describe, expect, it } from 'vitest';
import { PRINTABLE_LANGS, fontCss, openPrinter, scriptOf } from '../../../src/booklet/print/index.ts';
import { hasFontOf, letterCoverage } from '../../../src/booklet/print/fonts.ts';
import { dictsWith, key, readPdf } from './readPdf.ts';

// Unicode CLDR, main exemplar characters of each language (from memory): the letters beyond the script's commonest.
const letters: Readonly<Record<string, string>> = {
  ps: 'اآبپتټثجځچڅحخدډذرړزژږسشښصضطظعغفقکګلمنڼهوؤۍېيئیءةأ',
  ckb: 'ئابپتجچحخدرڕزژسشعغفڤقکگلڵمنهھەوۆیێ',
  ur: 'ابپتٹثجچحخدڈذرڑزژسشصضطظعغفقکگلمنںوہھءیےؤئۂۓآ۔،؟',
  fa: 'ءآأؤئاٱبپتثجچحخدذرزژسشصضطظعغفقکگلمنهوی۰۱۲۳۴۵۶۷۸۹',
  uk: 'абвгґдеєжзиіїйклмнопрстуфхцчшщьюя’АБВГҐДЕЄЖЗИІЇ',
  el: 'αάβγδεέζηήθιίϊΐκλμνξοόπρσςτυύϋΰφχψωώΆΈΉΊΌΎΏ',
  am: 'ሀሁሂሃሄህሆለሐመሠረሰሸቀበተቸኀነኘአከኸወዐዘዠየደጀገጠጨጰጸፀፈፐ፡።፣፤',
  ti: 'ሀለሐመረሰሸቀቐቘበቨተቸነኘአከኸዀወዐዘዠየደጀገጠጨጸፈፐ፣።',
  bn: 'অআইঈউঊঋএঐওঔকখগঘঙচছজঝঞটঠডঢণতথদধনপফবভমযরলশষসহৎকংকঃকঁ।০১২৩৪৫৬৭৮৯',
  my: 'ကခဂဃငစဆဇဈဉညဋဌဍဎဏတထဒဓနပဖဗဘမယရလဝသဟဠအဣဤဥဦဧဩဪ၀၁၂၃၄၅၆၇၈၉၊။',
};

/** Letters one by one, each with its marks: joined they have other shapes. */
const apart = (text: string): string => text.replace(/(?<=[\p{L}\p{M}])(?=\p{L})/gu, ' ');

/** The families that each language is set in. */
const familiesOf = (langs: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries([...fontCss(langs).matchAll(/^:lang\(([^)]+)\) \{ font-family: ([^;]*);/gm)].map(([, lang, families]) => [lang ?? '', families ?? '']));

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
    expect(/https?:|file:|local\(/.test(css)).toBe(false);
    expect(css.includes('font-synthesis: none')).toBe(true);
  });

  it('sets each language in its script’s own font first, in any order of the list', () => {
    expect(familiesOf(['en', 'ar'])).toEqual({ ar: "'Noto Sans Arabic', 'Noto Sans'", en: "'Noto Sans', 'Noto Sans Arabic'" });
    expect(fontCss(['ar', 'en', 'ar']) === fontCss(['en', 'ar'])).toBe(true);
  });

  it('sets Urdu in Nastaliq and the other languages of its script in Naskh', () => {
    expect(familiesOf(['ur'])).toEqual({ ur: "'Noto Nastaliq Urdu', 'Noto Sans'" });
    for (const lang of ['fa', 'fa-AF', 'ps', 'ckb', 'ar']) expect(familiesOf(['ur', lang])[lang]).toMatch(/^'Noto Sans Arabic', 'Noto Sans'/);
    expect(hasFontOf('ur', ['ar', 'en'])).toBe(false);
    expect(hasFontOf('ps', ['ar', 'en'])).toBe(true);
  });

  it('has a font for every language of the booklets, ready in a printer', () => {
    for (const lang of ['en', 'fr', 'es', 'pt', 'sw', 'ar', 'fa', 'fa-AF', 'ps', 'ckb', 'ur', 'ti', 'am', 'so', 'bn', 'my', 'uk', 'el', 'ht']) {
      expect([lang, hasFontOf(lang, PRINTABLE_LANGS)]).toEqual([lang, true]);
    }
  });

  it('refuses a script without a font and a tag that is none', () => {
    expect(() => fontCss(['km'])).toThrow('language “km” is written in the script Khmr, for which there is no font');
    expect(() => fontCss(['not a tag'])).toThrow('is not a BCP 47 tag');
  });

  it('knows which letters are covered', () => {
    const covered = letterCoverage(['en', 'ar']);
    expect([...'Aé×–²ğ'].every((letter) => covered(letter.codePointAt(0) ?? 0))).toBe(true);
    expect(covered(0x627)).toBe(true);
    expect(covered(0x6f22)).toBe(false);
    expect(letterCoverage(['en'])(0x627)).toBe(false);
  });

  it.each(Object.keys(letters))('covers the letters of %s', (lang) => {
    const covered = letterCoverage([lang]);
    expect([...(letters[lang] ?? '')].filter((letter) => !covered(letter.codePointAt(0) ?? 0))).toEqual([]);
  });

  it('really holds them: a printer sets them all, in both weights, and in no other face', async () => {
    const printer = await openPrinter();
    try {
      const html = Object.entries(letters).map(([lang, text]) => `<p lang="${lang}">${text} ${apart(text)} <b>${text} ${apart(text)}</b></p>`).join('');
      const doc = { id: 'letters', lang: 'en', dir: 'ltr', title: 'Letters', paper: 'a4', contentMark: 'm', css: '', html } as const;
      expect((await printer.measure(doc)).filter(({ kind }) => kind === 'face')).toEqual([]);
      // Refuses a page that shows glyph 0 or a Type 3 font.
      const pdf = await readPdf(await printer.document(doc, { sheets: [] }));
      const names = dictsWith(pdf, 'Type', 'FontDescriptor').map((font) => font.lookup(key('FontName'))?.toString().replace(/^.[A-Z]{6}\+/, ''));
      expect([...new Set(names)].sort()).toEqual(['NotoNastaliqUrdu', 'NotoSans', 'NotoSansArabic', 'NotoSansBengali', 'NotoSansEthiopic', 'NotoSansMyanmar']
        .flatMap((family) => [`${family}-Bold`, `${family}-Regular`]));
    } finally {
      await printer.close();
    }
  });
});
