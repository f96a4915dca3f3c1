// Runs one TypeScript file of this project on every supported Node: `node src/dev/run.mjs FILE [ARGS…]`.
// Node 20 cannot run TypeScript, so the file is bundled into out/ (packages stay in node_modules) and
// imported from there. Scripts run in the project's top folder and find their files from it.
import { rmSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'rolldown';

const [file, ...rest] = process.argv.slice(2);
if (file === undefined) throw new Error('usage: node src/dev/run.mjs FILE [ARGS…]');

const top = fileURLToPath(new URL('../..', import.meta.url));
process.chdir(top);
// One bundle a process: two scripts may run at once.
const bundle = path.join(top, 'out', 'run', `${path.basename(file, '.ts')}-${process.pid}.js`);
await build({
  input: path.resolve(file),
  cwd: top,
  platform: 'node',
  external: (id) => !id.startsWith('.') && !path.isAbsolute(id),
  logLevel: 'warn',
  output: { file: bundle, format: 'esm', codeSplitting: false },
});
process.once('exit', () => rmSync(bundle, { force: true }));
process.argv.splice(1, process.argv.length - 1, bundle, ...rest);
await import(pathToFileURL(bundle).href);
