import { expect, it } from 'vitest';
import { agreement } from '../../../src/report/chart/agreement.ts';
import type { AgreementChart } from '../../../src/types.ts';

const setting = { id: 'c', marked: [], meter: (subject: string) => subject };
const chart: AgreementChart = {
  kind: 'agreement',
  id: 'agreement',
  subject: 'pair:1',
  points: [
    { watts: 200, percent: 1 },
    { watts: 300, percent: -2 },
  ],
  mean: 0.5,
  low: -3,
  high: 4,
  half: { mean: 0.4, low: 0.7, high: 0.8 },
  concordance: { value: 0.972, low: 0.951, high: 0.984, honest: 0.87 },
};

it('gives every number its interval, and concordance what honest meters have in such a ride', () => {
  const { table, description } = agreement(chart, setting);
  expect(table.rows.map((row) => row.map((cell) => cell.replaceAll('\u00A0', ' ')))).toEqual([
    ['mean', '0.5 %', '0.1 to 0.9 %'],
    ['lower limit of agreement', '−3 %', '−3.7 to −2.3 %'],
    ['upper limit of agreement', '4 %', '3.2 to 4.8 %'],
    ['concordance', '0.972', '0.951 to 0.984'],
    ['concordance of honest meters in such a ride, at least', '0.870', ''],
  ]);
  expect(description).toContain('compare it with no other ride, but with the 0.870');
});

it('leaves concordance out where there is none', () => {
  const { table, description } = agreement({ ...chart, concordance: null }, setting);
  expect(table.rows).toHaveLength(3);
  expect(description).not.toContain('oncordance');
});
