import { describe, expect, it } from 'vitest';
import { audit } from '../src/audit.ts';
import { renderHtml } from '../src/report/html.ts';
import { ruleSet } from '../src/rules.ts';
import type { Recording, Report } from '../src/types.ts';
import { writeFit } from './make/fit-writer.ts';
import { drawSubmission, faults } from './make/index.ts';

const rules = await ruleSet();

/** A race on one meter, with a fault at its clear strength. */
function ridden(name: string): { file: Recording; race: object; rule: string } {
  const fault = faults.faults.find((one) => one.name === name)!;
  const wish = { kind: 'bunch race', minutes: 40, seconds: 0 } as const;
  const planted = { fault, strength: fault.strengths.clear };
  const { primary, race } = drawSubmission('repairs', { ...wish, faults: [planted] });
  return { file: primary, race, rule: fault.rules[0]! };
}

async function audited(bytes: Uint8Array<ArrayBuffer>, race: object, name = 'ride.fit'): Promise<Report> {
  const facts = { rider: {}, race, profile: null, otherInputs: [] };
  return await audit({ primary: { name, bytes }, seconds: [], ...facts }, rules);
}

/** Every word of the page. */
const said = async (report: Report) =>
  (await renderHtml(report))
    .replace(/<(script|style)\b.*?<\/\1>/gs, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
const levelOf = (report: Report, rule: string) => report.findings.find((one) => one.rule === rule)?.level;

/** Every hundredth record bears the second of the one before, as recorders with a jittering clock write it. */
function doubled(file: Recording): Recording {
  return { ...file, time: file.time.map((clock, k) => (k % 100 === 50 ? file.time[k - 1]! : clock)) };
}

/** Neighbours that were written in the wrong order, once in five minutes. */
function outOfOrder(file: Recording): Recording {
  const order = [...file.time.keys()];
  for (let k = 150; k + 1 < order.length; k += 300) [order[k], order[k + 1]] = [k + 1, k];
  const put = (column: Float64Array) => Float64Array.from(order, (k) => column[k]!);
  const channels = Object.fromEntries(
    Object.entries(file.channels).map(([channel, column]) => [channel, put(column)]),
  );
  return { ...file, time: put(file.time), channels };
}

/** As it lies on a recorder that died: no size in the header, no end. */
function unfinished(file: Recording): Uint8Array<ArrayBuffer> {
  const bytes = writeFit(file).slice(0, -40);
  bytes.fill(0, 4, 8);
  return bytes;
}

/** The same as a table, to show that the rule is the format's no more than the maker's. */
function table({ time, channels: { power, cadence } }: Recording): Uint8Array<ArrayBuffer> {
  const lines = Array.from(time, (clock, k) =>
    [new Date(clock * 1000).toISOString(), power![k], cadence?.[k] ?? ''].join(','),
  );
  return new TextEncoder().encode(['time,power (W),cadence (rpm)', ...lines, ''].join('\n'));
}

const repairs: readonly (readonly [string, (file: Recording) => Uint8Array<ArrayBuffer>, RegExp])[] = [
  [
    'doubled seconds',
    (file) => writeFit(doubled(file)),
    /\d+ seconds held several records; their values were averaged/,
  ],
  ['backward steps', (file) => writeFit(outOfOrder(file)), /\d+ records put back in order of time/],
  ['an unfinished file', unfinished, /The recorder never closed the file: [\d,]+ records were recovered/],
];

describe.each([
  'good stretch copied over a bad one',
  'spikes',
  'set-point reporting',
  'power frozen',
  'head unit averages',
])('what is repaired hides nothing: %s', (name) => {
  const { file, race, rule } = ridden(name);

  it.each(repairs)('with %s, which the report tells', async (_, damaged, sentence) => {
    const whole = levelOf(await audited(writeFit(file), race), rule);
    expect(['query', 'refer']).toContain(whole);
    const report = await audited(damaged(file), race);
    expect(levelOf(report, rule)).toBe(whole);
    expect(sentence.exec(await said(report))).not.toBeNull();
  });
});

describe('what is repaired', () => {
  const { file, race } = ridden('spikes');

  it.each([
    ['doubled seconds', doubled],
    ['backward steps', outOfOrder],
  ])('is repaired alike whatever the format: %s', async (_, damage) => {
    const [one, other] = await Promise.all([
      audited(writeFit(damage(file)), race),
      audited(table(damage(file)), race, 'ride.csv'),
    ]);
    const repaired = ({ steps }: Report) =>
      steps.filter(({ id }) => id === 'doubled-seconds' || id === 'backward-steps');
    expect(repaired(one).length).toBeGreaterThan(0);
    expect(repaired(other)).toEqual(repaired(one));
  });

  it('leaves a sound file as it is, and says so by saying nothing', async () => {
    const report = await audited(writeFit(file), race);
    expect(report.submission.primary.defects).toEqual([]);
    expect(
      /held several records|put back in order of time\.|never closed/.exec(await said(report)),
    ).toBeNull();
  });
});
