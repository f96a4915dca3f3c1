/**
 * Makes the committed `dist/`: `npm run build`; with `--check` compares it with what is on disk.
 *
 * Two bundles. The Node bundle has one entry a door, so that @actions/core stays out of the command
 * line's start-up; the library is a bundle of its own, for pages and for Node, with no `node:` import.
 * Nothing is minified: whoever runs it on other people's files must be able to read it.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { build, type OutputChunk, type RolldownOutput } from 'rolldown';
import { program } from '../cli/program.ts';

const dist = path.resolve('dist');

const nodeEntries = {
  cli: 'src/bin/wattassay.ts',
  action: 'src/bin/action.ts',
  worker: 'src/bin/worker.ts',
};

/** Of reports, profiles and events; those of rules and facts lie beside the rules. */
const schemas = [
  'src/report/report.schema.json',
  'src/history/profile.schema.json',
  'src/event/event.schema.json',
  'src/event/decisions.schema.json',
  'src/event/record.schema.json',
  'src/event/marks.schema.json',
];

/** The compiler of schemas, loaded only when one is needed, is called after a year by its makers. */
const chunkFileNames = ({ name }: { name: string }) => (name === '2020' ? 'schemas.js' : '[name].js');

/** Every file of `dist/` by name. The same on every Node and in every folder. */
async function bundle(): Promise<ReadonlyMap<string, string>> {
  const common = { cwd: process.cwd(), logLevel: 'warn', write: false } as const;
  const output = { format: 'esm', chunkFileNames, minify: 'dce-only' } as const;
  const node = await build({
    ...common,
    input: nodeEntries,
    platform: 'node',
    output: { ...output, codeSplitting: { groups: [{ name: 'program', minShareCount: 2 }] } },
  });
  const library = await build({
    ...common,
    input: { index: 'src/index.ts' },
    platform: 'browser',
    output: { ...output, codeSplitting: false },
  });
  const made = [...chunksOf(node), ...chunksOf(library)];
  const files = new Map(made.map((chunk) => [chunk.fileName, chunk.code]));
  const digest = digestOf(chunksOf(node));
  for (const { fileName, code } of chunksOf(node)) files.set(fileName, code.replaceAll(program, digest));
  for (const [name, text] of declarations()) files.set(`types/${name}`, text);
  for (const file of schemas) files.set(`schemas/${path.basename(file)}`, readText(file));
  files.set('licenses.txt', licences(made));
  return files;
}

/** Of the whole program, in order of the names. */
function digestOf(chunks: readonly OutputChunk[]): string {
  const hash = createHash('sha256');
  const byName = [...chunks].sort((a, b) => (a.fileName < b.fileName ? -1 : 1));
  for (const { fileName, code } of byName) hash.update(`${fileName}\n${code}\n`);
  return hash.digest('hex');
}

function readText(file: string): string {
  return readFileSync(file, 'utf8').replaceAll('\r\n', '\n');
}

function chunksOf(result: RolldownOutput): OutputChunk[] {
  return result.output.filter((item) => item.type === 'chunk');
}

/** The library's types: the declarations of `src/index.ts` and of what they name, by path under src/. */
function declarations(): ReadonlyMap<string, string> {
  const made = mkdtempSync(path.join(tmpdir(), 'wattassay-types-'));
  try {
    const project = path.join(made, 'tsconfig.json');
    const compilerOptions = {
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
      outDir: made,
      rootDir: process.cwd(),
      typeRoots: [path.resolve('node_modules/@types')],
    };
    const files = [path.resolve('src/index.ts')];
    const settings = { extends: path.resolve('tsconfig.json'), compilerOptions, files, include: [] };
    writeFileSync(project, JSON.stringify(settings));
    const compiler = path.resolve('node_modules/typescript/bin/tsc');
    // Its complaints are the type check's business; declarations are made all the same.
    spawnSync(process.execPath, [compiler, '-p', project], { stdio: 'ignore' });
    const texts = new Map<string, string>();
    const queue = ['index.ts'];
    for (const module of queue) {
      const name = module.replace(/\.ts$/, '.d.ts');
      const text = readText(path.join(made, 'src', name));
      texts.set(name, text);
      for (const [, target] of text.matchAll(/(?:from |import\()['"](\.[^'"]+)['"]/g)) {
        const next = path.posix.join(path.posix.dirname(module), target!);
        if (!queue.includes(next)) queue.push(next);
      }
    }
    return texts;
  } finally {
    rmSync(made, { recursive: true, force: true });
  }
}

/** Name, version and licence text of every package that went into the bundles, in order of name. */
function licences(chunks: readonly OutputChunk[]): string {
  const folders = new Set(chunks.flatMap((chunk) => chunk.moduleIds.flatMap(packageFolder)));
  const entries = [...folders].map((folder) => {
    const manifest = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
    const text = licenceText(folder, manifest.name);
    if (text === undefined) throw new Error(`${manifest.name} is bundled, but where is its licence?`);
    return { title: `${manifest.name} ${manifest.version} (${manifest.license})`, text: text.trim() };
  });
  entries.sort((a, b) => (a.title < b.title ? -1 : 1));
  return entries.map(({ title, text }) => `${title}\n\n${text}\n`).join(`\n${'-'.repeat(80)}\n\n`);
}

/** From a file of its own, from the last section of the read-me file, or from where we keep it. */
function licenceText(folder: string, name: string): string | undefined {
  const named = (pattern: RegExp) =>
    readdirSync(folder)
      .sort()
      .filter((file) => pattern.test(file))
      .map((file) => readText(path.join(folder, file)))[0];
  const section = /^#+ licen[cs]e\n([\s\S]*)$/im.exec(named(/^readme/i) ?? '')?.[1];
  // Packed without a licence by its makers; the text is from their repository.
  const kept = path.resolve('src/dev/licences', `${name}.txt`);
  return named(/^licen[cs]e/i) ?? section ?? (existsSync(kept) ? readText(kept) : undefined);
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
  for (const [name, text] of files) {
    const file = path.join(dist, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
    process.stdout.write(`dist/${name} ${Math.ceil(Buffer.byteLength(text) / 1000)} kB\n`);
  }
}

/** Names of files that are missing, stray or differ by a byte. */
function stale(files: ReadonlyMap<string, string>): string[] {
  const there = existsSync(dist) ? filesIn(dist) : [];
  return [...new Set([...files.keys(), ...there])]
    .filter((name) => {
      const text = files.get(name);
      if (text === undefined || !there.includes(name)) return true;
      return !Buffer.from(text).equals(readFileSync(path.join(dist, name)));
    })
    .sort();
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
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
