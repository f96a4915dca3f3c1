import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { redact, renderJson } from '../../src/report/index.ts';
import schema from '../../src/report/report.schema.json' with { type: 'json' };
import { reasons } from '../../src/report/words/reasons.ts';
import type { Report } from '../../src/types.ts';
import { makeReport } from './make-report.ts';

const validate = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);
const faults = (report: unknown) =>
  validate(report) ? [] : validate.errors!.map((one) => `${one.instancePath} ${one.message}`);

/** The same value with the keys of every object in another order. */
function shuffled(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(shuffled);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, one]) => [key, shuffled(one)]),
  );
}

describe('renderJson', () => {
  const report = makeReport({}, 3600);

  it('writes what the schema says, redacted or not', () => {
    expect(faults(JSON.parse(renderJson(report)))).toEqual([]);
    expect(faults(JSON.parse(renderJson(redact(report))))).toEqual([]);
  });

  it('knows every reason for which a rule does not speak', () => {
    expect([...schema.$defs.reasonId.enum].sort()).toEqual(Object.keys(reasons).sort());
  });

  it('loses nothing', () => {
    expect(JSON.parse(renderJson(report))).toEqual(report);
  });

  it('writes the same bytes whatever the order of keys', () => {
    expect(renderJson(shuffled(report) as Report)).toBe(renderJson(report));
  });

  it('begins with the keys in the order of the report', () => {
    const keys = [...renderJson(report).matchAll(/^ "(\w+)":/gm)].map(([, key]) => key);
    expect(keys).toEqual(Object.keys(schema.properties));
  });

  it('keeps every string as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        const one = { ...report, charts: [], inputs: [{ role: 'primary', name, sha256: 'x' }] };
        expect(JSON.parse(renderJson(one)).inputs[0].name).toBe(name);
      }),
      { numRuns: 30 },
    );
  });

  it('refuses what does not belong', () => {
    expect(faults({ ...report, verdict: 'x' })).not.toEqual([]);
    expect(faults({ ...report, grade: 'guiltless' })).not.toEqual([]);
    expect(faults({ ...report, charts: [{ kind: 'pie', id: 'x' }] })).not.toEqual([]);
  });
});
