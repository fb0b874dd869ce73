import type { ChangedPicture } from '../../booklet/index.ts';
import { reportOf, type SizeChanges } from './report.ts';

/** One page of HTML that needs nothing else: what changed of each size, and each picture that did before and after. */
export function changesPage(sizes: readonly { readonly changes: SizeChanges; readonly pairs: readonly ChangedPicture[] }[]): string {
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>What changed</title>
<style>body{font:16px/1.4 sans-serif;margin:2em auto;max-width:80em;padding:0 1em}pre{white-space:pre-wrap}figure{margin:1em 0;display:grid;grid-template-columns:1fr 1fr;gap:1em}figcaption{grid-column:1/-1;font-weight:bold}div{border:1px solid #bbb}img{width:100%;display:block}p{margin:0;padding:.5em}</style></head>
<body>
<h1>What changed</h1>
${sizes.map(({ changes, pairs }) => `<h2>${escaped(`${changes.item} ${changes.size}`)}</h2>
<pre>${escaped(reportOf(changes).join('\n'))}</pre>
${pairs.map(figure).join('\n')}`).join('\n')}
</body></html>
`;
}

const figure = ({ before, after }: ChangedPicture): string =>
  `<figure><figcaption>${escaped(after.id)}</figcaption>${side('before', after.id, before)}${side('after', after.id, after)}</figure>`;

/** As an image, so that names inside one drawing do not reach another. */
const side = (when: string, id: string, picture: ChangedPicture['before']): string => `<div><p>${when}</p>${picture === null ? '<p>no picture</p>'
  : `<img alt="${escaped(`${id}, ${when}`)}" src="data:image/svg+xml;base64,${Buffer.from(picture.svg).toString('base64')}">`}</div>`;

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
