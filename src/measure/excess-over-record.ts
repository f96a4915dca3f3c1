import { claimedSpread, declaredFor } from '../declared.ts';
import { meanMaximal } from '../math/mean-maximal.ts';
import { defineMeasure, exact, notApplicable, number, numbers } from './measure.ts';
import { recordPower } from './rider/records.ts';

/**
 * How far the race's best mean power per kilogram stands above the highest that is published for people,
 * in percent, at the duration where it stands highest. Between published durations the record runs
 * straight on logarithmic axes. The honest spread is that of meters and scales.
 */
export const excessOverRecord = defineMeasure({
  id: 'excess-over-record',
  of: 'recording',
  unit: '%',
  options: {
    durations: numbers('durations compared, s'),
    fieldSpread: number('SD of meters as found in the field, %'),
    massSpread: number('SD of a stated body mass, %'),
  },
  compute(all, series, options) {
    const { power } = series.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    const { massKg, recordClass = 'open', devices } = all.rider;
    if (massKg === undefined) return notApplicable('no-fact', { fact: 'massKg' });
    const best = meanMaximal(power, options.durations, ...all.window);
    const compared = options.durations.flatMap((duration, k) => {
      const perKg = best.watts[k]! / massKg;
      const record = recordPower(duration, recordClass);
      return Number.isNaN(perKg) ? [] : [{ duration, perKg, record, from: best.from[k]! }];
    });
    if (compared.length === 0) return notApplicable('no-power-flow');
    const most = compared.reduce((a, b) => (b.perKg / b.record > a.perKg / a.record ? b : a));
    const own = declaredFor(devices, series.recording.name, 'primary');
    const spread = (meter: number) => ({ centre: 0, spread: Math.hypot(meter, options.massSpread) });
    return exact(100 * (most.perKg / most.record - 1), compared.length, {
      stretches: [[most.from, most.from + most.duration]],
      expected: {
        declared: spread(claimedSpread(own, options.fieldSpread)),
        field: spread(options.fieldSpread),
      },
      details: {
        duration:
          most.duration < 120
            ? { value: most.duration, unit: 's' }
            : { value: most.duration / 60, unit: 'min' },
        perKg: { value: most.perKg, unit: 'W/kg' },
        record: { value: most.record, unit: 'W/kg' },
        class: recordClass,
      },
    });
  },
});
