import { sha256 } from '../../math/digest.ts';
import { script } from '../client/script.ts';
import { html, type Markup } from '../markup.ts';
import { style } from './style.ts';

/** The one style and the one script of a page. */
export interface Dress {
  readonly style: string;
  readonly script: string;
}

/** What a content policy calls a text by: an event prints thousands of pages in the same dress. */
const hashes = new Map<string, Promise<string>>();

function policyHash(text: string): Promise<string> {
  const hash = hashes.get(text) ?? hashed(text);
  hashes.set(text, hash);
  return hash;
}

async function hashed(text: string): Promise<string> {
  const hex = await sha256(new TextEncoder().encode(text));
  const bytes = hex.match(/../g)!.map((pair) => Number.parseInt(pair, 16));
  return `'sha256-${btoa(String.fromCharCode(...bytes))}'`;
}

const ofReport: Dress = { style, script };

/**
 * The whole document. Its policy lets in nothing but this one style and this one script, known by their
 * hashes: no network, no other script, no frame, no form. The fixed text here, the style and the script are
 * the only strings that are not escaped.
 */
export async function shell(
  title: string,
  body: Markup,
  { style, script }: Dress = ofReport,
): Promise<string> {
  const policy = `default-src 'none'; style-src ${await policyHash(style)}; script-src ${await policyHash(script)}; base-uri 'none'; form-action 'none'`;
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
${html`<title>${title}</title>`}
<style>${style}</style>
</head>
<body>
${body}
<script>${script}</script>
</body>
</html>
`;
}
