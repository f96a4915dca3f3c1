import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import {
  redact,
  renderCharts,
  renderCsv,
  renderHtml,
  renderJson,
  renderLetter,
  renderMarkdown,
  renderText,
} from '../../src/report/index.ts';
import schema from '../../src/report/report.schema.json' with { type: 'json' };
import type { Report } from '../../src/types.ts';
import { auditSample } from './samples.ts';

const validate = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);
const faults = (report: unknown) =>
  validate(report) ? [] : validate.errors!.map((one) => `${one.instancePath} ${one.message}`);

async function everyForm(report: Report): Promise<string> {
  return [
    renderText(report, { width: 80, colour: false, ascii: false }),
    await renderHtml(report),
    renderMarkdown(report, { limit: 60_000 }),
    renderCsv(report),
    renderLetter(report),
    ...renderCharts(report, { width: 760 }).map(({ svg }) => svg),
  ].join('\n');
}

describe.each(['17', '23', '31'])('the sample of rider %s', (number) => {
  it('is told by real measures and rules: valid, with every value stated', async () => {
    const report = await auditSample(number);
    expect(faults(JSON.parse(renderJson(report)))).toEqual([]);
    expect(faults(JSON.parse(renderJson(redact(report))))).toEqual([]);
    const forms = await everyForm(report);
    expect(forms).not.toMatch(/an unstated value|NaN|Infinity|\[object|undefined/);
    // A placeholder of a claim that was never filled, outside the rules' own texts.
    expect(renderText(report, { width: 80, colour: false, ascii: false })).not.toMatch(/\{[a-z]+[:|}]/);
    const redacted = await everyForm(redact(report));
    // Rules speak of kilograms in general; the rider's own are nowhere.
    expect(report.settings.rider.massKg).toBeGreaterThan(40);
    expect(redacted).not.toMatch(new RegExp(`\\b${report.settings.rider.massKg}\\s*kg`));
    expect(redacted).not.toMatch(/\d[\s\u00a0]*bpm\b/);
    expect(redacted).not.toMatch(/primary\.fit|second\.fit/);
  });
});

describe('a redacted report', () => {
  it('is the same for two riders whose masses differ by too little to change a level', async () => {
    const withMass = async (massKg: number) => renderJson(redact(await auditSample('14', { massKg })));
    expect(await withMass(98)).toBe(await withMass(97));
  });
});
