/** `outside-diameter` → `outsideDiameter`, in types. */
type Camel<Name> = Name extends `${infer First}-${infer Rest}` ? `${First}${Capitalize<Camel<Rest>>}` : Name;
export type CamelKeys<T> = T extends object ? { [Key in keyof T as Camel<Key>]: CamelKeys<T[Key]> } : T;

/** A section of a file with the names of its fields as the code writes them. */
export function camelKeys<T extends object>(section: T): CamelKeys<T> {
  const entries = Object.entries(section).map(([name, value]: [string, unknown]) =>
    [camel(name), typeof value === 'object' && value !== null ? camelKeys(value) : value] as const);
  return Object.fromEntries(entries) as CamelKeys<T>;
}

function camel(name: string): string {
  return name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
}
