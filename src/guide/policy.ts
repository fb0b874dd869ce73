import { createHash } from 'node:crypto';

/**
 * The content security policy of the page (CSP level 2): no network, no frames, no plug-ins, and of scripts and styles
 * only these very texts. Data blocks are not scripts and need no leave.
 */
export function policy(script: string, style: string): string {
  return [
    "default-src 'none'",
    `script-src '${hashOf(script)}'`,
    `style-src '${hashOf(style)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

const hashOf = (text: string): string => `sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}`;
