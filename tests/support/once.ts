/** The same function, worked out once for each first word it is asked with; the answer hangs on that word alone. */
export function once<Name extends string, Rest extends readonly unknown[], Answer>(make: (name: Name, ...rest: Rest) => Answer): (name: Name, ...rest: Rest) => Answer {
  const known = new Map<Name, Answer>();
  return (name, ...rest) => {
    const found = known.get(name);
    if (found !== undefined) return found;
    const made = make(name, ...rest);
    known.set(name, made);
    return made;
  };
}
