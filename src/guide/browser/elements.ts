/** The one element that a selector finds. Throws where the page has none: then it was built wrong. */
export function one<Kind extends Element = HTMLElement>(selector: string, within: ParentNode = document): Kind {
  const found = within.querySelector<Kind>(selector);
  if (found === null) throw new Error(`the guide has no ${selector}`);
  return found;
}

/** All elements that a selector finds, in the order of the page. */
export function all<Kind extends Element = HTMLElement>(selector: string, within: ParentNode = document): readonly Kind[] {
  return Array.prototype.slice.call(within.querySelectorAll<Kind>(selector)) as Kind[];
}

/** Adds a class or takes it away: the second argument of `toggle` is younger than some phones. */
export function mark(element: Element, name: string, marked: boolean): void {
  if (marked) element.classList.add(name);
  else element.classList.remove(name);
}

/** Calls `pressed` whenever the button of that id is pressed. */
export function onPress(id: string, pressed: () => void): HTMLButtonElement {
  const button = one<HTMLButtonElement>(`#${id}`);
  button.addEventListener('click', pressed);
  return button;
}
