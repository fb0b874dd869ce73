/** The first number in plain data that is not finite, with its place; null when all are. */
export function oddNumber(data: unknown, at: string): string | null {
  const left: [at: string, data: unknown][] = [[at, data]];
  const seen = new Set<unknown>();
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    const [where, value] = next;
    if (typeof value === 'number' && !Number.isFinite(value)) return `${where} = ${value}`;
    if (typeof value !== 'object' || value === null || seen.has(value)) continue;
    seen.add(value);
    for (const [name, inner] of Object.entries(value)) left.push([`${where}.${name}`, inner]);
  }
  return null;
}

/** The first length of a thing that is below nought in what a build tells, by its place; places and slopes may be. */
export function negativeLength(data: unknown, at = ''): string | null {
  if (typeof data !== 'object' || data === null) return null;
  for (const [name, value] of Object.entries(data as Readonly<Record<string, unknown>>)) {
    const isLength = /^(length|mass|value|offCut|notchRadius|halfCut|widestGap|count)$/.test(name) || /^\.(flatPattern)\.(blank|inside|notch)$/.test(at);
    const found = typeof value === 'number' ? (isLength && value < 0 && !at.startsWith('.parameters') ? `${at}.${name} = ${value}` : null) : at === '' && /^(findings|advice|source)$/.test(name) ? null : negativeLength(value, `${at}.${name}`);
    if (found !== null) return found;
  }
  return null;
}
