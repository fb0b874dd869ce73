/** Stands between the picture's id and its words in the label until the finishing pass takes it out. */
export const SEPARATOR = '\u241F';

export interface Place {
  /** Id of the picture that goes here. */
  readonly id: string;
  /** Size on paper, mm. A picture of the same shape is scaled to it; the same size keeps it true. */
  readonly width: number;
  readonly height: number;
  /** Words for those who hear the page instead of seeing it; must say something. */
  readonly alt: string;
}

/**
 * The place of a picture as an HTML string.
 * It paints a rectangle that nobody sees: a browser makes a Figure in the PDF only of what paints,
 * and the finishing pass puts the picture where that rectangle stands in the page's content.
 * @throws when the alternative text is empty or the size is not a positive number of mm.
 */
export function picturePlace({ id, width, height, alt }: Place): string {
  if (alt.trim() === '') throw new Error(`picture “${id}”: the alternative text is empty; say in words what it shows`);
  if (!(width > 0 && height > 0 && Number.isFinite(width * height))) {
    throw new Error(`picture “${id}”: its place is ${width} × ${height} mm; both must be more than 0 mm`);
  }
  return `<svg class="picture-place" role="img" data-place="" aria-label="${escapeAttribute(placeLabel(id, alt))}"`
    + ` width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" direction="ltr"`
    + ` style="overflow:visible;break-inside:avoid">${placeInk(width, height)}</svg>`;
}

/** What a place paints over its whole size, in units of its viewBox. */
export const placeInk = (width: number, height: number): string => `<path d="M0 0H${width}V${height}H0Z" fill="#fff" fill-opacity="0"/>`;

/** The label of a place: the picture's id and the words. An element bears it with an empty attribute `data-place`. */
export const placeLabel = (id: string, alt: string): string => id + SEPARATOR + alt;

/** On which pages of a document's HTML each picture has a place: a page's sheet says its number. */
export function picturesOnPages(html: string): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (const [, page = '', content = ''] of html.matchAll(/data-page="(\d+)"([^]*?)(?=data-page="|$)/g)) {
    for (const [, label = ''] of content.matchAll(/class="picture-place"[^>]*? aria-label="([^"]*)"/g)) {
      const id = readPlaceLabel(label)?.id ?? '';
      if (found.get(id)?.at(-1) !== Number(page)) found.set(id, [...found.get(id) ?? [], Number(page)]);
    }
  }
  return found;
}

/** The picture's id and the words, from a Figure's label; undefined where the Figure is no place. */
export function readPlaceLabel(label: string): { readonly id: string; readonly alt: string } | undefined {
  const at = label.indexOf(SEPARATOR);
  return at < 0 ? undefined : { id: label.slice(0, at), alt: label.slice(at + SEPARATOR.length) };
}

function escapeAttribute(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}
