/**
 * Makes the committed `dist/`: `npm run build`; with `--check` compares it with what is on disk.
 *
 * Two bundles. The Node bundle has one entry a door, so that @actions/core stays out of the command
 * line's start-up; the library is a bundle of its own, for pages and for Node, with no `node:` import.
 * Nothing is minified: whoever runs it on other people's files must be able to read it.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { build, type OutputChunk, type RolldownOutput } from 'rolldown';

const dist = path.resolve('dist');

const nodeEntries = {
  cli: 'src/bin/wattassay.ts',
  action: 'src/bin/action.ts',
};

/** Every file of `dist/` by name. The same on every Node and in every folder. */
async function bundle(): Promise<ReadonlyMap<string, string>> {
  const common = { cwd: process.cwd(), logLevel: 'warn', write: false } as const;
  const output = { format: 'esm', chunkFileNames: '[name].js', minify: 'dce-only' } as const;
  const node = await build({ ...common, input: nodeEntries, platform: 'node', output });
  const library = await build({
    ...common,
    input: { index: 'src/index.ts' },
    platform: 'browser',
    output: { ...output, codeSplitting: false },
  });
  const chunks = [...chunksOf(node), ...chunksOf(library)];
  const files = new Map(chunks.map((chunk) => [chunk.fileName, chunk.code]));
  files.set('licenses.txt', licences(chunks));
  return files;
}

function chunksOf(result: RolldownOutput): OutputChunk[] {
  return result.output.filter((item) => item.type === 'chunk');
}

/** Name, version and licence text of every package that went into the bundles, in order of name. */
function licences(chunks: readonly OutputChunk[]): string {
  const folders = new Set(chunks.flatMap((chunk) => chunk.moduleIds.flatMap(packageFolder)));
  const entries = [...folders].map((folder) => {
    const manifest = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
    const file = readdirSync(folder)
      .sort()
      .find((name) => /^licen[cs]e/i.test(name));
    if (file === undefined) throw new Error(`${manifest.name} is bundled but has no licence file`);
    const text = readFileSync(path.join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim();
    return { title: `${manifest.name} ${manifest.version} (${manifest.license})`, text };
  });
  entries.sort((a, b) => (a.title < b.title ? -1 : 1));
  return entries.map(({ title, text }) => `${title}\n\n${text}\n`).join(`\n${'-'.repeat(80)}\n\n`);
}

/** The package that a bundled module belongs to; none for our own. */
function packageFolder(moduleId: string): string[] {
  const at = moduleId.replaceAll('\\', '/').lastIndexOf('/node_modules/');
  if (at < 0 || moduleId.startsWith('\0')) return [];
  const [scope, name] = moduleId.slice(at + '/node_modules/'.length).split(/[\\/]/);
  const parts = scope!.startsWith('@') ? [scope!, name!] : [scope!];
  return [path.join(moduleId.slice(0, at), 'node_modules', ...parts)];
}

function write(files: ReadonlyMap<string, string>): void {
  rmSync(dist, { recursive: true, force: true });
  mkdirSync(dist, { recursive: true });
  for (const [name, text] of files) {
    writeFileSync(path.join(dist, name), text);
    process.stdout.write(`dist/${name} ${Math.round(Buffer.byteLength(text) / 1000)} kB\n`);
  }
}

/** Names of files that are missing, stray or differ by a byte. */
function stale(files: ReadonlyMap<string, string>): string[] {
  const there = existsSync(dist) ? readdirSync(dist) : [];
  return [...new Set([...files.keys(), ...there])]
    .filter((name) => {
      const text = files.get(name);
      if (text === undefined || !there.includes(name)) return true;
      return !Buffer.from(text).equals(readFileSync(path.join(dist, name)));
    })
    .sort();
}

const files = await bundle();
if (process.argv.includes('--check')) {
  const names = stale(files);
  if (names.length > 0) {
    process.stderr.write(`dist/ is not what src/ makes: ${names.join(', ')}. Run: npm run build\n`);
    process.exitCode = 1;
  }
} else {
  write(files);
}
