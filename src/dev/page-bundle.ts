import process from 'node:process';
import { build } from 'rolldown';

/** The pages that carry a script of their own: where it is written, and where its text is kept. */
export const pageScripts = {
  report: { source: 'src/report/client/page.ts', kept: 'src/report/client/script.ts' },
  overview: { source: 'src/report/client/overview.ts', kept: 'src/report/client/overview-script.ts' },
} as const;

/** The script that a page carries, bundled into one text. */
export async function pageScript(page: keyof typeof pageScripts): Promise<string> {
  const { output } = await build({
    input: pageScripts[page].source,
    cwd: process.cwd(),
    platform: 'browser',
    write: false,
    logLevel: 'warn',
    output: { format: 'iife', minify: true },
  });
  return output[0].code.trim();
}
