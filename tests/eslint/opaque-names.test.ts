import { RuleTester } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, it } from 'vitest';
import { opaqueNames } from '../../src/lint/opaque-names.mjs';

RuleTester.describe = describe;
RuleTester.it = it;
RuleTester.itOnly = it.only;

const tester = new RuleTester({ languageOptions: { parser: tseslint.parser } });

const invalid = (code: string, ...names: readonly string[]) => ({ code, errors: names.map((name) => ({ messageId: 'apart', data: { name } })) });

tester.run('opaque-names', opaqueNames, {
  valid: [
    'const same = part.id === other.id;',
    'const there = ids.includes(part.id) || step.newParts.some(({ ids }) => ids.indexOf(id) > 0);',
    'const [first, ...others] = partIds; const some = partIds.slice(1); const last = partIds.at(-1);',
    'const found = new Map(parts.map((part) => [part.id, part])).get(pinId);',
    'const key = `${kind}:${length}`; const label = [...ids].join();',
    'ids.map((id) => parts.get(id)).filter((part) => part.name.startsWith("x"));',
    'const text = words.t(key); text.replace("a", "b"); valid.split(","); monkey.slice(1); grid.at(0);',
    'for (const [key, value] of shapes) value.slice(0);',
    'parts.filter((name, id) => name.includes("a"));',
    '/long/.test(text); JSON.parse(text); Number(count);',
  ],
  invalid: [
    invalid('part.id.startsWith("deck");', 'part.id'),
    invalid('step.key.split(":")[1];', 'step.key'),
    invalid('step.key.split(/[:-]/).at(-1);', 'step.key'),
    invalid('pinId.replace("joint-pin", "wing-nut"); nutId?.endsWith("low"); groupKey!.slice(2);', 'pinId', 'nutId', 'groupKey!'),
    invalid('(part.id as string).includes("/joint-"); (id ?? "").match(/a/);', 'part.id as string', 'id ?? ""'),
    invalid('(found ? found.id : other).indexOf("-");', 'found ? found.id : other'),
    invalid('/-(left|right)$/.exec(part.id); /long/.test(id);', 'part.id', 'id'),
    invalid('JSON.parse(key); Number(id); parseInt(step.key);', 'key', 'id', 'step.key'),
    invalid('const first = id[0]; const signs = [...id]; Array.from(id);', 'id', 'id', 'id'),
    invalid('ids[0].slice(1); part.partIds[index].split("/"); ids.at(-1)?.endsWith("a");', 'ids[0]', 'part.partIds[index]', 'ids.at(-1)'),
    invalid('ids.filter((name) => name.startsWith("a"));', 'name'),
    invalid('partIds.filter((name) => name !== own).find((pin) => pin.includes("low"));', 'pin'),
    invalid('Object.keys(pictures).filter((name) => name.startsWith("step:")).sort();', 'name'),
    invalid('for (const name of shapes.keys()) name.startsWith(series); for (const pin of pinIds) pin.split("-");', 'name', 'pin'),
    invalid('const name = step.key; name.split(":");', 'name'),
    invalid('const { id: pin } = part; pin.split("-");', 'pin'),
    invalid('const joints = ({ id: joint }) => joint.split("-");', 'joint'),
    invalid('const of = ({ partIds: [first] }) => first.slice(1);', 'first'),
    invalid('const names = plate.partIds; names[0].slice(1);', 'names[0]'),
    invalid('const [first] = ids; first.charAt(0);', 'first'),
  ],
});
