/** White round a drawing, in its own units. */
const MARGIN = 3;

/** Leaves out the white of a drawing's paper, once it is on the screen: so it is as large as the screen allows. */
export function fillFrame(svg: SVGSVGElement): void {
  const paper = svg.viewBox.baseVal;
  if (svg.getAttribute('data-filled') !== null || !paper) return;
  let box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  try {
    box = svg.getBBox();
  } catch {
    return; // not on the screen
  }
  if (box.width === 0 || box.height === 0) return;
  const [left, top] = [Math.max(paper.x, box.x - MARGIN), Math.max(paper.y, box.y - MARGIN)];
  const right = Math.min(paper.x + paper.width, box.x + box.width + MARGIN);
  const bottom = Math.min(paper.y + paper.height, box.y + box.height + MARGIN);
  svg.setAttribute('viewBox', `${left} ${top} ${right - left} ${bottom - top}`);
  svg.setAttribute('data-filled', '');
}
