import { expect, it } from 'vitest';
import { align } from '../../src/align/index.ts';
import type { Channel } from '../../src/types.ts';
import { Random } from '../make/random.ts';
import { seriesOf } from '../measure/series.ts';

const seconds = 7200;

/** White noise around a level, of which the second's correlates so with the first's. */
function together(name: Channel, level: number, size: number, correlation: number) {
  const random = new Random(`together ${name}`);
  const [own, other] = [new Float64Array(seconds), new Float64Array(seconds)];
  for (let t = 0; t < seconds; t++) {
    const mine = random.normal();
    own[t] = level + size * mine;
    other[t] = level + size * (correlation * mine + Math.sqrt(1 - correlation ** 2) * random.normal());
  }
  return { own, other };
}

/** Two meters that agree in power as much as said, and in what else was recorded. */
function witnessed(power: number, cadence: number | null, heart: number | null) {
  const watts = together('power', 220, 30, power);
  const legs = cadence === null ? null : together('cadence', 88, 5, cadence);
  const beats = heart === null ? null : together('heartRate', 150, 6, heart);
  const columns = (which: 'own' | 'other') => ({
    power: watts[which],
    ...(legs && { cadence: legs[which] }),
    ...(beats && { heartRate: beats[which] }),
  });
  const { alignment } = align(seriesOf(columns('own')), seriesOf(columns('other')), 'pair:test', [
    0,
    seconds,
  ]);
  return alignment.secure ? 'secure' : alignment.reason;
}

// Two riders of one race, or one on two days, agree in power by up to 0.21, in the detail of cadence by 0.37 and in
// heart rate by 0.89 (simulated).
it('takes weak agreement in power for one ride only where cadence agrees more than two riders’ does', () => {
  expect(witnessed(0.13, 0.3, null)).toBe('only-surges-agree');
  expect(witnessed(0.13, 0.45, null)).toBe('secure');
});

it('asks the heart where no cadence can be compared, and cadence alone where it can', () => {
  expect(witnessed(0.13, null, 0.85)).toBe('only-surges-agree');
  expect(witnessed(0.13, null, 0.95)).toBe('secure');
  expect(witnessed(0.13, 0.3, 0.95)).toBe('only-surges-agree');
  expect(witnessed(0.13, null, null)).toBe('only-surges-agree');
});

it('needs no witness where power agrees by more than two riders or days do', () => {
  expect(witnessed(0.26, 0, 0)).toBe('secure');
});
