/**
 * `npm run bench`: what an audit costs, as ratios within one run, so that the machine matters little.
 * The yardstick is strict decoding of the same files into objects by a public decoder, and nothing else.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import FitParser from 'fit-file-parser';
import { audit, type Stage } from '../../src/audit.ts';
import { marksOf } from '../../src/event/fingerprint.ts';
import { settings } from '../../src/history/settings.ts';
import { meanMaximal } from '../../src/math/mean-maximal.ts';
import { copiedSeconds } from '../../src/measure/copied-seconds.ts';
import { sharedSeconds } from '../../src/measure/shared-seconds.ts';
import { normalise } from '../../src/normalise/index.ts';
import { compileProfile } from '../../src/profile.ts';
import { read } from '../../src/read/index.ts';
import { renderCsv } from '../../src/report/csv.ts';
import { renderHtml } from '../../src/report/html.ts';
import { renderJson } from '../../src/report/json.ts';
import { renderText } from '../../src/report/text.ts';
import { ruleSet } from '../../src/rules.ts';
import type { Outcome, Profile, Report } from '../../src/types.ts';
import { type OnDisk, pastFiles, writePair } from './files.ts';
import { runProcess } from './process.ts';

const rounds = 15;
const coldRounds = 7;
const historyRounds = 3;

async function inProcess(pair: OnDisk): Promise<void> {
  const { decode, whole, stages, report } = await compare(pair);
  heading('A 3 h pair, one process, warm');
  row('strict decoding of both files', ms(decode));
  row('audit', ms(whole), `${ratio(whole, decode)} of decoding; target at most 1.5`);
  for (const [stage, time] of stages) row(`  ${stage}`, ms(time), ratio(time, decode));
  const forms = {
    text: () => renderText(report, { width: 100, colour: false, ascii: false }),
    JSON: () => renderJson(report),
    HTML: () => renderHtml(report),
    CSV: () => renderCsv(report),
  };
  for (const [form, render] of Object.entries(forms)) {
    const { time, result } = await timed(render);
    row(`report as ${form}`, ms(time), `${Math.round(Buffer.byteLength(result) / 1000)} kB`);
  }
}

/** The same for shorter and longer rides: what grows faster than the ride shows here. */
async function growth(pairs: ReadonlyMap<number, OnDisk>): Promise<void> {
  heading('From an hour to eight');
  for (const [hours, pair] of pairs) {
    const { decode, whole } = await compare(pair);
    row(`decoding of ${hours} h`, ms(decode));
    row(`audit of ${hours} h`, ms(whole), `${ratio(whole, decode)} of decoding; target at most 1.5`);
  }
}

/** What a history costs: compiled for the first time, and again when its files are known. */
async function history(): Promise<void> {
  const files = pastFiles(200);
  const measured = async (work: () => unknown) => {
    const from = performance.now();
    await work();
    return performance.now() - from;
  };
  const yardstick = () => {
    for (const { bytes } of files) decodeStrictly(bytes);
  };
  await measured(yardstick);
  const rows: { decode: number; first: number; again: number }[] = [];
  for (let round = 0; round < historyRounds; round++) {
    const decode = await measured(yardstick);
    let previous: Profile | undefined;
    const first = await measured(async () => {
      previous = await compileProfile(files);
    });
    const again = await measured(() => compileProfile(files, { previous: previous! }));
    rows.push({ decode, first, again });
  }
  const middle = (of: keyof (typeof rows)[number]) => median(rows.map((row) => row[of]));
  heading('A history of 200 rides of 1 h');
  row('strict decoding of all files', ms(middle('decode')));
  row('compiled', ms(middle('first')), `${ratio(middle('first'), middle('decode'))} of decoding`);
  row(
    'compiled again, nothing new',
    ms(middle('again')),
    `${ratio(middle('again'), middle('decode'))} of decoding`,
  );
}

/** Best mean powers at every duration of a profile, beside one pass over the samples. */
async function meanMaximalPower(): Promise<void> {
  const power = Float64Array.from({ length: 8 * 3600 }, (_, i) => 200 + ((i * 7919) % 101));
  const { durations } = settings;
  const { time: pass } = await timed(() => String(meanMaximal(power, [1]).watts[0]));
  const { time: all } = await timed(() => String(meanMaximal(power, durations).watts[0]));
  heading('Mean-maximal power of 8 h');
  row('one duration', ms(pass));
  row(`${durations.length} durations, 1 s to 8 h`, ms(all), `${ratio(all, pass)} of one`);
}

/** The search for copied stretches in 8 h, within a recording and across two, beside strict decoding of one. */
async function copies({ primary }: OnDisk): Promise<void> {
  const bytes = new Uint8Array(readFileSync(primary));
  const recording = await read({ name: path.basename(primary), bytes });
  const { series } = normalise(recording, 'primary');
  const { power } = series.channels;
  const planted = (from: number, to: number, column = power!) => {
    const copy = column.slice();
    copy.copyWithin(to, from, from + 60);
    return { ...series, recording: { ...recording, channels: { power: copy } }, channels: { power: copy } };
  };
  const own = planted(3000, 20_000);
  const theirs = new Float64Array(power!.length).map((_, i) => power![power!.length - 1 - i]!);
  theirs.set(power!.subarray(5000, 5060), 12_000);
  // Whoever wants the search to take long repeats a pattern all day.
  const pattern = planted(
    0,
    0,
    power!.map((_, i) => power![1000 + (i % 97)]!),
  );
  const { rules } = await ruleSet();
  const optionsOf = (measure: string) => rules.find((rule) => rule.measure === measure)!.options as never;
  const subjects = { primary: own, seconds: [], sections: [], rider: {}, race: {}, history: null } as const;
  const all = {
    ...subjects,
    window: [0, series.length] as const,
    others: [{ name: 'other', power: theirs }],
  };
  const within = (one: typeof own) => () =>
    said(copiedSeconds.compute({ ...all, primary: one }, one, optionsOf('copied-seconds')));
  const { time: decode } = await timed(() => {
    decodeStrictly(bytes);
    return '';
  });
  heading('A minute copied, looked for in 8 h; target well under a second');
  row('strict decoding of the file', ms(decode));
  const searches = {
    'within the recording': within(own),
    'within a pattern all day': within(pattern),
    'in the recording of another': () => said(sharedSeconds.compute(all, own, optionsOf('shared-seconds'))),
    'marks of the recording': () => `${marksOf(recording).split(' ').length} marks`,
  };
  for (const [what, search] of Object.entries(searches)) {
    const { time, result } = await timed(search);
    row(what, ms(time), `${ratio(time, decode)} of decoding; ${result}`);
  }
}

function said(outcome: Outcome): string {
  return outcome.state === 'measured' ? `${outcome.value} s found` : outcome.state;
}

/** Decoding and audit in turn, so that both meet the same machine. */
async function compare(pair: OnDisk) {
  const files = [pair.primary, pair.second].map((file) => ({
    name: path.basename(file),
    bytes: new Uint8Array(readFileSync(file)),
  }));
  const [primary, ...seconds] = files as [(typeof files)[number], ...typeof files];
  const submission = {
    primary,
    seconds,
    rider: JSON.parse(readFileSync(pair.rider, 'utf8')),
    race: JSON.parse(readFileSync(pair.race, 'utf8')),
    profile: null,
    otherInputs: [],
  };
  const rules = await ruleSet();
  const decoding: number[] = [];
  const auditing: number[] = [];
  const stages = new Map<Stage, number[]>();
  let report: Report | undefined;
  for (let round = -5; round < rounds; round++) {
    const start = performance.now();
    for (const { bytes } of files) decodeStrictly(bytes);
    const middle = performance.now();
    const marks: { stage: Stage; at: number }[] = [];
    report = await audit(submission, rules, (stage) => marks.push({ stage, at: performance.now() }));
    const end = performance.now();
    if (round < 0) continue; // Warming up.
    decoding.push(middle - start);
    auditing.push(end - middle);
    marks.forEach(({ stage, at }, i) => {
      stages.set(stage, [...(stages.get(stage) ?? []), (marks[i + 1]?.at ?? end) - at]);
    });
  }
  return {
    decode: median(decoding),
    whole: median(auditing),
    stages: [...stages].map(([stage, times]) => [stage, median(times)] as const),
    report: report!,
  };
}

function decodeStrictly(bytes: Uint8Array): void {
  new FitParser({ force: false, mode: 'list' }).parse(bytes as unknown as ArrayBuffer, (error) => {
    if (error !== null && error !== undefined) throw new Error(String(error));
  });
}

async function timed(render: () => string | Promise<string>): Promise<{ time: number; result: string }> {
  const times: number[] = [];
  let result = '';
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    result = await render();
    times.push(performance.now() - start);
  }
  return { time: median(times), result };
}

/** Whole processes, as a user starts them. */
function cold({ primary, second, rider, race }: OnDisk): void {
  const commandLine = (form: string): string[] => {
    const out = path.join(folder, `report.${form}`);
    const facts = ['--second', second, '--rider', rider, '--race', race];
    return [path.resolve('dist/cli.js'), 'audit', primary, ...facts, '--out', out, '--fail-on', 'never'];
  };
  const decoder = path.join(folder, 'decode.mjs');
  const library = import.meta.resolve('fit-file-parser');
  writeFileSync(
    decoder,
    `import { readFileSync } from 'node:fs';
import FitParser from ${JSON.stringify(library)};
for (const file of process.argv.slice(2))
  new FitParser({ force: false, mode: 'list' }).parse(readFileSync(file), (error) => { if (error) throw error; });
`,
  );
  const ways = {
    'bare Node': ['-e', '0'],
    'Node and strict decoding': [decoder, primary, second],
    'wattassay audit, JSON': commandLine('json'),
    'wattassay audit, HTML': commandLine('html'),
  };
  const runs = new Map(Object.keys(ways).map((name) => [name, [] as { time: number; memory: number }[]]));
  for (let round = 0; round < coldRounds; round++) {
    for (const [name, args] of Object.entries(ways)) runs.get(name)!.push(runProcess(args));
  }
  heading('A 3 h pair, whole processes');
  const middle = (name: string, of: 'time' | 'memory') => median(runs.get(name)!.map((run) => run[of]));
  const yardstick = middle('Node and strict decoding', 'time');
  for (const name of runs.keys()) {
    const time = middle(name, 'time');
    const memory = `peak ${Math.round(middle(name, 'memory') / 1000)} MB`;
    row(name, ms(time), `${ratio(time, yardstick)} of Node and decoding; ${memory}`);
  }
  row('', '', 'target at most 3');
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
function heading(text: string): void {
  process.stdout.write(`\n${text}\n`);
}
function row(what: string, value: string, note = ''): void {
  process.stdout.write(`  ${what.padEnd(32)}${value.padStart(10)}   ${note}\n`.trimEnd().concat('\n'));
}
const ms = (time: number) => `${time.toFixed(time < 10 ? 1 : 0)} ms`;
const ratio = (a: number, b: number) => (a / b).toFixed(2);

const folder = mkdtempSync(path.join(tmpdir(), 'wattassay-bench-'));
try {
  const pairs = new Map([1, 3, 6, 8].map((hours) => [hours, writePair(folder, hours)]));
  const pair = pairs.get(3)!;
  process.stdout.write(`Node ${process.version}, medians of ${rounds} (processes: ${coldRounds})\n`);
  await inProcess(pair);
  await growth(pairs);
  await copies(pairs.get(8)!);
  await meanMaximalPower();
  await history();
  cold(pair);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
