import { RuleTester } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, it } from 'vitest';
import { noBareText } from '../../src/lint/no-bare-text.mjs';

RuleTester.describe = describe;
RuleTester.it = it;
RuleTester.itOnly = it.only;

const tester = new RuleTester({ languageOptions: { parser: tseslint.parser, parserOptions: { ecmaFeatures: { jsx: true } } } });
const options = [{ allow: ['mm', 'kg', 'Noto Sans'], printers: ['isolate', 'textAt'] }];

const valid = (code: string) => ({ code, options, filename: 'page.tsx' });
const invalid = (code: string, ...texts: readonly string[]) =>
  ({ code, options, filename: 'page.tsx', errors: texts.map((text) => ({ messageId: 'bare', data: { text } })) });

tester.run('no-bare-text', noBareText, {
  valid: [
    'const page = <p>{words.t("booklet.time")}</p>;',
    '<p className="main wide" id="first" data-page="cover">×4 · 12 / 30&nbsp;</p>;',
    '<img src="cover.svg" alt={words.t("booklet.alt.finished")} />;',
    '<img alt="" title={"×"} />;',
    '<svg role="img" aria-label={said} viewBox="0 0 48 48"><path d="M0 0h48v48z" stroke="black" /></svg>;',
    '<th>{"mm"}</th>;',
    '<b>12 kg</b>;',
    'isolate("mm"); isolate("Noto Sans"); isolate(mark); textAt("×4");',
    'throw new Error("no picture of that name");',
    'const style = "<style>p { color: black }</style>";',
    'const drawing = `<svg role="img" aria-label="${said}"><text x="${x}" font-family="Noto Sans">${words}</text></svg>`;',
    'const side = which === "left" ? "<g>" : "</g>";',
    'element.textContent = words.t("page.open"); element.className = "open"; element.setAttribute("class", "open");',
    'const smaller = a < b && c > d ? "less" : "more";',
    'const glyph = { name: "saw", title: rectangle }; const view = { alt: words.t("x") };',
    'type Name = "left" | "right"; const key = `booklet.${name}`;',
  ].map(valid),
  invalid: [
    invalid('<p>Push the tubes in</p>;', 'Push the tubes in'),
    invalid('<p>{"Push"} {`and ${turn}`}</p>;', 'Push', 'and …'),
    invalid('<>Schieben</>;', 'Schieben'),
    invalid('<p>ادفع</p>;', 'ادفع'),
    invalid('<p>{done ? "done" : words.t("open")}{late && "late"}{"step " + number}</p>;', 'done', 'late', 'step'),
    invalid('<img alt="A rack" />;', 'A rack'),
    invalid('<button title="Close" aria-label={`Close ${name}`} placeholder={"Name" as string} />;', 'Close', 'Close …', 'Name'),
    invalid('<GlyphMark glyph={saw} label="Saw" />;', 'Saw'),
    invalid('<Spoken text="Saw" />;', 'Saw'),
    invalid('<b>12 lbs</b>;', '12 lbs'),
    invalid('isolate("seconds");', 'seconds'),
    invalid('textAt(`${count} tubes`);', '… tubes'),
    invalid('const drawing = `<text x="${x}">Width</text>`;', 'Width'),
    invalid('const drawing = \'<svg aria-label="A rack"><title>Rack</title></svg>\';', 'Rack', 'A rack'),
    invalid('const part = ` aria-label="Width ${x}"`;', 'Width …'),
    invalid('element.textContent = "Open"; element.title = `Open ${name}`; element.innerHTML = "<b>Open</b>";', 'Open', 'Open …', '<b>Open</b>', 'Open'),
    invalid('element.setAttribute("aria-label", "Open");', 'Open'),
    invalid('createElement("svg", { "aria-label": "Rack", alt: "Rack" });', 'Rack', 'Rack'),
  ],
});
