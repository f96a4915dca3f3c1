import { expect, test } from 'vitest';
import { totalDiscrepancy } from '../../src/measure/total-discrepancy.ts';
import type { Defect, Totals } from '../../src/types.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, recordingOf, ride, seriesOf } from './series.ts';

// A quarter coasting, a further part standing with the recorder on.
const power = ride(3600).map((watts, i) => (i % 4 === 0 ? 0 : watts));
const cadence = power.map((watts) => (watts > 0 ? 90 : 0));
const speed = power.map((_, i) => (i < 300 ? 0 : 9));
const sum = power.reduce((a, b) => a + b, 0);
const mean = sum / power.length;
const nonzero = sum / power.filter((watts) => watts > 0).length;

const put = (totals: Totals, defects: Defect[] = []) => {
  const recording = recordingOf({ power, cadence, speed }, { totals, defects });
  return alone(seriesOf({}, { recording }));
};
const off = (totals: Totals) => measuredOf(totalDiscrepancy, 'summary-mismatch', put(totals));

test.each([
  ['all records, rounded', { meanPower: Math.round(mean) }],
  ['all records, cut', { meanPower: Math.floor(mean) }],
  ['zeros left out', { meanPower: Math.round(nonzero) }],
  ['over the time elapsed, pauses in', { meanPower: Math.round(sum / 5000), elapsedS: 5000 }],
  ['seconds missing from the file', { meanPower: Math.round((sum + 400 * 150) / 4000), timerS: 4000 }],
  ['a maximum above every record', { maxPower: Math.max(...power) + 60 }],
  ['work', { workJ: sum }],
  ['a timer that stops while standing', { timerS: 3300, elapsedS: 3300 }],
])('explains honest habits: %s', (_, totals) => {
  expect(off(totals).value).toBeLessThan(0.5);
});

test.each([
  ['mean', { meanPower: mean / 1.12 }, 'mean power'],
  ['maximum', { maxPower: Math.max(...power) / 1.25 }, 'highest power'],
  ['work', { workJ: sum * 1.12 }, 'work'],
  ['duration', { timerS: 2000, elapsedS: 2000 }, 'duration'],
])('does not explain another %s', (_, totals, total) => {
  const outcome = off(totals);
  expect(outcome.value).toBeGreaterThan(8);
  expect(outcome.details).toMatchObject({ total });
  expect(outcome.charts[0]).toMatchObject({ kind: 'totals' });
});

test('the totals of a damaged file may belong to other samples', () => {
  const damaged = put({ meanPower: mean / 2 }, [{ id: 'truncated', values: {} }]);
  expect(measuredOf(totalDiscrepancy, 'summary-mismatch', damaged).circumstances).toEqual(['unfinished']);
  // Whoever cuts the checksum off has taken no sample away.
  const cut = put({ meanPower: mean / 2 }, [{ id: 'truncated', values: { kept: 3600, lostBytes: 2 } }]);
  expect(measuredOf(totalDiscrepancy, 'summary-mismatch', cut).circumstances).toEqual([]);
});

test('a file without totals, or with zeros for them, states none', () => {
  expect(outcomeOf(totalDiscrepancy, 'summary-mismatch', put({}))).toMatchObject({ reason: 'no-totals' });
  expect(outcomeOf(totalDiscrepancy, 'summary-mismatch', put({ meanPower: 0 }))).toMatchObject({
    reason: 'no-totals',
  });
});
