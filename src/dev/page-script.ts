/**
 * Makes the scripts that pages carry, `src/report/client/script.ts` and its like, from their sources beside
 * them: `node src/dev/run.mjs src/dev/page-script.ts`. They are kept as text so that a page has the same bytes
 * whatever builds or runs the program; tests hold them fresh.
 */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { pageScript, pageScripts } from './page-bundle.ts';

/** In single quotes, as the formatter has it. */
function literal(text: string): string {
  const inside = JSON.stringify(text).slice(1, -1).replaceAll('\\"', '"').replaceAll("'", "\\'");
  return `'${inside}'`;
}

for (const page of ['report', 'overview'] as const) {
  const { source, kept } = pageScripts[page];
  const text = await pageScript(page);
  const why = text.includes('${')
    ? '  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is code\n'
    : '';
  writeFileSync(
    kept,
    `// Made from client/${path.basename(source)} by \`node src/dev/run.mjs src/dev/page-script.ts\`; changes go there.
export const script =
${why}  ${literal(text)};
`,
  );
}
