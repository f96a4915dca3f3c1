import process from 'node:process';
import { build } from 'rolldown';

/** The script that a report's page carries, bundled into one text. */
export async function pageScript(): Promise<string> {
  const { output } = await build({
    input: 'src/report/client/page.ts',
    cwd: process.cwd(),
    platform: 'browser',
    write: false,
    logLevel: 'warn',
    output: { format: 'iife', minify: true },
  });
  return output[0].code.trim();
}
