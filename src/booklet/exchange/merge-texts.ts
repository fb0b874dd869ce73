/** A JSON object of texts, nested. */
interface Texts {
  readonly [name: string]: string | Texts;
}

/**
 * A locale file with new texts: keys that are there keep their place, new ones come after those they follow in `texts`.
 * `texts` are keys as `push-tubes.short` with their text, in the order of the source language. Two spaces, one line end.
 */
export function mergedFile(present: string | undefined, texts: readonly (readonly [string, string])[]): string {
  const was = present === undefined ? {} : JSON.parse(present) as Texts;
  return `${JSON.stringify(merged(was, nested(texts)), null, 2)}\n`;
}

function nested(texts: readonly (readonly [string, string])[]): Texts {
  const names = [...new Set(texts.map(([key]) => key.split('.', 1)[0] ?? key))];
  return Object.fromEntries(names.map((name) => {
    const own = texts.find(([key]) => key === name);
    const under = texts.filter(([key]) => key.startsWith(`${name}.`)).map(([key, text]) => [key.slice(name.length + 1), text] as const);
    return [name, own === undefined ? nested(under) : own[1]];
  }));
}

function merged(was: Texts, now: Texts): Texts {
  const names = Object.keys(was);
  Object.keys(now).forEach((name, index, all) => {
    if (!names.includes(name)) names.splice(names.indexOf(all[index - 1] ?? '') + 1, 0, name);
  });
  return Object.fromEntries(names.map((name) => [name, value(was[name], now[name])]));
}

function value(was: Texts[string] | undefined, now: Texts[string] | undefined): Texts[string] {
  if (typeof now === 'object') return merged(typeof was === 'object' ? was : {}, now);
  return now ?? was ?? '';
}
