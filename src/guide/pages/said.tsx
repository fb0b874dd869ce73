import { Fragment, type ReactNode } from 'react';
import { splitIsolates } from '../../booklet/index.ts';
import { pictureOf, type PictureOf } from '../../draw/index.ts';
import type { Glyph, GlyphKind } from '../glyph-store.ts';
import type { Phrase } from '../phrases.ts';
import type { Maker } from './page.ts';

/** Words that are hidden until a language is picked, then said in it. */
export function Said({ phrase, as: Tag = 'p', className = '' }: { readonly phrase: Phrase; readonly as?: 'p' | 'span'; readonly className?: string }): ReactNode {
  return <Tag className={`say ${className}`.trim()} data-say={phrase.number}>{phrase.text}</Tag>;
}

/** What is the same in every language: measures, counts, numerals. Always read from left to right. */
export function Figure({ text }: { readonly text: string }): ReactNode {
  return splitIsolates(text).map((piece, index) => (piece.dir === null ? <Fragment key={index}>{piece.text}</Fragment> : <bdi key={index} dir={piece.dir}>{piece.text}</bdi>));
}

interface MarkProps {
  readonly maker: Maker;
  readonly glyph: Glyph;
  /** What it says to those who hear the page; none where something beside it says the same. */
  readonly label?: Phrase;
  readonly kind?: GlyphKind;
  readonly className?: string;
}

/** A pictogram. Its size is the style's; a wide one says so by its class. */
export function Mark({ maker, glyph, label, kind, className = '' }: MarkProps): ReactNode {
  const shown = <use xlinkHref={`#${maker.keep(glyph, kind)}`} />;
  const shape = `mark ${glyph.width > 48 ? 'wide' : ''} ${className}`.replace(/ +/g, ' ').trim();
  return label === undefined
    ? <svg className={shape} viewBox={`0 0 ${glyph.width} 48`} aria-hidden="true">{shown}</svg>
    : <svg className={shape} viewBox={`0 0 ${glyph.width} 48`} role="img" aria-label={label.text} data-label={label.number}>{shown}</svg>;
}

/** A drawing that can be looked at closely. */
export function Drawing({ maker, of, label }: { readonly maker: Maker; readonly of: PictureOf; readonly label: Phrase }): ReactNode {
  return <div className="drawing" dangerouslySetInnerHTML={{ __html: drawn(maker, of, label) }} />;
}

/** A small drawing beside its count. */
export function Small({ maker, of, label }: { readonly maker: Maker; readonly of: PictureOf; readonly label: Phrase }): ReactNode {
  return <span className="small" dangerouslySetInnerHTML={{ __html: drawn(maker, of, label) }} />;
}

/** The picture's SVG with its words in place of its size on paper. Throws where the picture is not there. */
function drawn({ pictures }: Maker, of: PictureOf, label: Phrase): string {
  const { svg, width, height } = pictureOf(pictures, of, 'guide');
  const head = svg.slice(0, svg.indexOf('>')).replace(/ (xmlns|width|height|viewBox|role|aria-label)="[^"]*"/g, '');
  const inside = svg.slice(svg.indexOf('>') + 1, svg.lastIndexOf('</svg>')).replace(/\n/g, '');
  return `${head} viewBox="0 0 ${round(width)} ${round(height)}" role="img" aria-label="${escaped(label.text)}" data-label="${label.number}">${inside}</svg>`;
}

const round = (length: number): number => Math.round(length * 100) / 100;
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
