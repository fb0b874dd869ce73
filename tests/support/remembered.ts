/**
 * The same function of a thing and some words, worked out once for each; what is found goes with the thing. The thing is
 * told by its identity: one read anew is worked out anew.
 */
export function remembered<Thing extends object, Rest extends readonly (string | null | undefined)[], Answer>(make: (thing: Thing, ...rest: Rest) => Answer): (thing: Thing, ...rest: Rest) => Answer {
  const known = new WeakMap<Thing, Map<string, Answer>>();
  return (thing, ...rest) => {
    const answers = known.get(thing) ?? new Map<string, Answer>();
    known.set(thing, answers);
    const asked = JSON.stringify(rest);
    const found = answers.get(asked);
    if (found !== undefined) return found;
    const made = make(thing, ...rest);
    answers.set(asked, made);
    return made;
  };
}
