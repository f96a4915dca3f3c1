import { describe, expect, it } from 'vitest';
import {
  redact,
  renderCsv,
  renderHtml,
  renderJson,
  renderMarkdown,
  renderText,
} from '../../src/report/index.ts';
import type { Report } from '../../src/types.ts';
import { hex, makeReport } from './make-report.ts';

const secretNames = [
  'anna-muster-race.fit',
  'anna-muster-pedals.fit',
  'anna.json',
  'Anna’s crank',
  'SER1AL',
  'anna-lost.fit',
];
/** Heart rates and a mass that occur nowhere else in the report, not even as a place in a drawing. */
const secretNumbers = ['68.47', '971.3', '983.7', '94.83'];

function secretReport(): Report {
  const made = makeReport({}, 1800);
  const { primary, seconds } = made.submission;
  const [race, pedals, facts, crank, serial, lost] = secretNames as [
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  return {
    ...made,
    inputs: [race, pedals, facts].map((name, index) => ({ role: 'primary', name, sha256: hex(`${index}`) })),
    settings: {
      ...made.settings,
      rider: {
        massKg: 68.47,
        recordClass: 'open',
        devices: [{ name: crank, place: 'crank', sides: 2, tolerancePercent: 2 }],
      },
    },
    submission: {
      ...made.submission,
      primary: {
        ...primary,
        name: race,
        device: { maker: 'Maker One', product: 'Trainer 5', serial },
        declared: { name: crank, place: 'crank', sides: 2, tolerancePercent: 2 },
        defects: [{ id: 'colliding-field', values: { name: crank } }],
      },
      seconds: [{ ...seconds[0]!, name: pedals }],
      unreadable: [
        { name: lost, sha256: hex('lost'), why: `${lost}: it holds no recording. Hand in another.` },
      ],
    },
    findings: made.findings.map((finding) => {
      if (finding.rule === 'above-history')
        return { ...finding, unit: 'W/kg' as const, value: 94.83, interval: [94.83, 94.83] as const };
      if (finding.rule !== 'heart-rate-unresponsive') return finding;
      return {
        ...finding,
        level: 'query' as const,
        summary: { id: 'below' as const, values: { mean: { value: 971.3, unit: 'bpm' as const } } },
      };
    }),
    measurements: made.measurements.map((one) =>
      one.rule === 'above-history'
        ? { ...one, unit: 'W/kg' as const, value: 94.83, interval: [94.83, 94.83] as const }
        : one,
    ),
    charts: made.charts.map((chart) => {
      if (chart.kind === 'traces') return { ...chart, heartRate: chart.primary.map(() => 983.7) };
      if (chart.kind === 'response')
        return { ...chart, blocks: [{ at: 0, watts: 200, heartRate: 983.7, predicted: 971.3 }] };
      if (chart.kind === 'close-ups')
        return { ...chart, closeUps: chart.closeUps.map((one) => ({ ...one, heartRate: [983.7] })) };
      if (chart.kind === 'traits')
        return {
          ...chart,
          traits: [
            ...chart.traits,
            {
              trait: 'heart rate',
              value: 983.7,
              unit: 'bpm' as const,
              atLeast: null,
              atMost: null,
              shown: true,
            },
          ],
        };
      if (chart.kind === 'totals')
        return {
          ...chart,
          rows: [
            ...chart.rows,
            { total: 'mean heart rate', unit: 'bpm' as const, stated: 983.7, fromSamples: [], off: 0 },
          ],
        };
      return chart;
    }),
  };
}

async function everyForm(report: Report): Promise<Readonly<Record<string, string>>> {
  return {
    json: renderJson(report),
    html: await renderHtml(report),
    text: renderText(report, { width: 90, colour: false, ascii: false }),
    markdown: renderMarkdown(report, { limit: 900_000 }),
    csv: renderCsv(report),
  };
}

const holds = (forms: Readonly<Record<string, string>>, secret: string) =>
  Object.entries(forms)
    .filter(([, text]) => text.includes(secret))
    .map(([form]) => form);

describe('redact', () => {
  it('leaves no name, heart rate or mass in any form', async () => {
    const forms = await everyForm(redact(secretReport()));
    for (const secret of [...secretNames, ...secretNumbers, 'anna', 'muster'])
      expect(holds(forms, secret), secret).toEqual([]);
    for (const text of Object.values(forms)) expect(text).not.toMatch(/\d[\s\u00a0]*(bpm|kg)\b/);
  });

  it('is tested with secrets that the plain forms show', async () => {
    const forms = await everyForm(secretReport());
    for (const secret of [...secretNames, ...secretNumbers])
      expect(holds(forms, secret), secret).not.toEqual([]);
  });

  it('keeps grade, levels, checksums and the numbers that are no health data', () => {
    const report = secretReport();
    const redacted = redact(report);
    expect(redacted.settings.redacted).toBe(true);
    expect(redacted.grade).toBe(report.grade);
    expect(redacted.findings.map(({ level }) => level)).toEqual(report.findings.map(({ level }) => level));
    expect(redacted.inputs.map(({ sha256 }) => sha256)).toEqual(report.inputs.map(({ sha256 }) => sha256));
    expect(redacted.findings[0]!.value).toBe(15.2);
    expect(redacted.charts.find((chart) => chart.kind === 'response')).toBeUndefined();
  });

  it('names one file by one code everywhere, and refers to no chart that is gone', () => {
    const redacted = redact(secretReport());
    expect(redacted.submission.primary.name).toBe(redacted.inputs[0]!.name);
    const charts = new Set(redacted.charts.map(({ id }) => id));
    for (const id of redacted.findings.flatMap((finding) => finding.charts)) expect(charts).toContain(id);
  });

  it('is done after one pass', () => {
    const once = redact(secretReport());
    const twice = redact(once);
    expect({ ...twice, submission: null, inputs: null, settings: null }).toEqual({
      ...once,
      submission: null,
      inputs: null,
      settings: null,
    });
  });
});
