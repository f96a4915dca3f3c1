/**
 * Makes `src/report/client/script.ts`, the script that a report's page carries, from
 * `src/report/client/page.ts`: `node src/dev/run.mjs src/dev/page-script.ts`. It is kept as text so that a
 * report has the same bytes whatever builds or runs the program; a test holds it fresh.
 */
import { writeFileSync } from 'node:fs';
import { pageScript } from './page-bundle.ts';

/** In single quotes, as the formatter has it. */
function literal(text: string): string {
  const inside = JSON.stringify(text).slice(1, -1).replaceAll('\\"', '"').replaceAll("'", "\\'");
  return `'${inside}'`;
}

writeFileSync(
  'src/report/client/script.ts',
  `// Made from client/page.ts by \`node src/dev/run.mjs src/dev/page-script.ts\`; changes go there.
export const script =
  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is code
  ${literal(await pageScript())};
`,
);
