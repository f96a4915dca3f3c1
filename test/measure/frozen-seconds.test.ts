import { expect, test } from 'vitest';
import { frozenSeconds } from '../../src/measure/frozen-seconds.ts';
import { SecondState } from '../../src/types.ts';
import { measuredOf } from './measure-of.ts';
import { alone, ride, seriesOf } from './series.ts';

const power = ride(3600);
const cadence = ride(3600, 2, 90, 3);
const hold = (column: number[], from: number, to: number) =>
  column.map((value, i) => (i >= from && i < to ? column[from]! : value));
const put = (columns: Record<string, number[]>) => alone(seriesOf(columns));

test('a ride has none', () => {
  expect(measuredOf(frozenSeconds, 'frozen-value', put({ power, cadence })).value).toBe(0);
});

test('finds held power and says which channel', () => {
  const outcome = measuredOf(frozenSeconds, 'frozen-value', put({ power: hold(power, 600, 690), cadence }));
  expect(outcome.value).toBeGreaterThanOrEqual(90);
  expect(outcome.details).toMatchObject({ channel: 'power', stretches: 1 });
  expect(outcome.charts[0]).toMatchObject({ kind: 'close-ups' });
});

test('zeros are coasting, and a channel alone cannot show that it is frozen', () => {
  const coasting = put({ power: power.map((w, i) => (i < 300 ? 0 : w)), cadence });
  expect(measuredOf(frozenSeconds, 'frozen-value', coasting).value).toBe(0);
  expect(measuredOf(frozenSeconds, 'frozen-value', put({ power: hold(power, 600, 690) })).value).toBe(0);
  const both = put({ power: hold(power, 600, 690), cadence: hold(cadence, 600, 690) });
  expect(measuredOf(frozenSeconds, 'frozen-value', both).value).toBe(0);
});

test('a recorder that leaves seconds out shows frozen power too, and freezes nothing by itself', () => {
  const sparse = (column: number[]) => {
    const series = seriesOf({ power: column.map((_, i) => column[i - (i % 5)]!), cadence });
    for (let i = 0; i < series.length; i++) if (i % 5 > 0) series.state[i] = SecondState.bridged;
    return measuredOf(frozenSeconds, 'frozen-value', alone(series)).value;
  };
  expect(sparse(power)).toBe(0);
  expect(sparse(hold(power, 600, 690))).toBeGreaterThan(80);
});

test('steps from target to target are named as such', () => {
  const target = power.map((_, i) => [180, 250, 210][Math.floor(i / 60) % 3]!);
  expect(measuredOf(frozenSeconds, 'frozen-value', put({ power: target, cadence })).circumstances).toEqual([
    'target levels',
  ]);
  const dropouts = hold(hold(power, 600, 690), 1500, 1600);
  expect(measuredOf(frozenSeconds, 'frozen-value', put({ power: dropouts, cadence })).circumstances).toEqual(
    [],
  );
});

const balanceOf = (left: (i: number) => number) =>
  power.map((watts, i) => (watts > 0 && i % 50 > 3 ? left(i) : Number.NaN));
const pedals = (sides: 1 | 2) => ({ name: 'primary', place: 'pedal', sides, tolerancePercent: 1 }) as const;

test('balance that never moves was not measured, unless the meter sits at one leg', () => {
  const still = put({ power, cadence, balance: balanceOf(() => 50) });
  const asked = measuredOf(frozenSeconds, 'frozen-value', { ...still, rider: { devices: [pedals(2)] } });
  expect(asked.value).toBeGreaterThan(3400);
  expect(asked.details).toMatchObject({ channel: 'balance' });
  expect(asked.circumstances).toEqual([]);
  const alike = measuredOf(frozenSeconds, 'frozen-value', { ...still, rider: { devices: [pedals(1)] } });
  expect(alike.value).toBe(0);
  expect(measuredOf(frozenSeconds, 'frozen-value', still).circumstances).toEqual(['sides unknown']);
});

test('balance that moves once in a ride moves; ten minutes of power are needed', () => {
  const value = (balance: number[]) =>
    measuredOf(frozenSeconds, 'frozen-value', {
      ...put({ power, cadence, balance }),
      rider: { devices: [pedals(2)] },
    }).value;
  expect(value(balanceOf((i) => (i === 1810 ? 51 : 50)))).toBe(0);
  expect(value(balanceOf((i) => (i < 600 ? 50 : Number.NaN)))).toBe(0);
});

test('undeclared, it does not speak beside what else stands still', () => {
  const both = put({ power: hold(power, 600, 690), cadence, balance: balanceOf(() => 50) });
  const { details, circumstances } = measuredOf(frozenSeconds, 'frozen-value', both);
  expect(details).toMatchObject({ channel: 'power', stretches: 1 });
  expect(circumstances).toEqual([]);
});
