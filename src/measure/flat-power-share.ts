import { meanOfValid } from '../math/mean.ts';
import { inSteadyWindow } from '../math/steady-windows.ts';
import type { PlateausChart, Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { readings } from './recording/close-ups.ts';
import { type Records, recordsOf, secondsOf } from './recording/records.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Share of the pedalling that keeps to a level more closely than legs can: records inside a window of
 * records with next to no spread. An exact count; what a recorder left out counts with the record before.
 */
export const flatPowerShare = defineMeasure({
  id: 'flat-power-share',
  of: 'recording',
  unit: 'share',
  options: {
    windowSeconds: number('shortest time that a level lasts, s'),
    fewestRecords: number('and the fewest records it holds, for recorders that leave seconds out'),
    spreadWatts: number('standard deviation up to which power counts as standing still, W'),
    stepWatts: number('change from the level that begins another one, W'),
    minimumWatts: number('power from which a second counts, W: lower down, legs are steady too'),
    minimumSeconds: number('seconds at such power below which nothing is said'),
  },
  circumstances: { workout: 'the ride was a workout, in which a trainer may hold a target' },
  compute(all, recording, options) {
    const records = recordsOf(recording);
    if (records === null) return notApplicable('no-channel', { channel: 'power' });
    let seconds = 0;
    const power = records.power.map((watts, i) => {
      if (!(watts >= options.minimumWatts)) return Number.NaN;
      seconds += secondsOf(records, i);
      return watts;
    });
    if (seconds < options.minimumSeconds) {
      return notApplicable('too-short', { seconds, needed: options.minimumSeconds });
    }
    const usable = meanOfValid(power).count;
    const inWindow = Math.round((options.windowSeconds * usable) / seconds);
    const flat = inSteadyWindow(power, Math.max(options.fewestRecords, inWindow), options.spreadWatts);
    const plateaus = plateausOf(records, power, flat, options.stepWatts);
    const lengths = plateaus.map(({ stretch: [from, to] }) => to - from);
    const total = lengths.reduce((sum, length) => sum + length, 0);
    return exact(total / seconds, seconds, {
      stretches: plateaus.map(({ stretch }) => stretch),
      circumstances: all.race.kind === 'workout' ? ['workout'] : [],
      details: {
        plateaus: plateaus.length,
        levels: new Set(plateaus.map(({ watts }) => Math.round(watts))).size,
        flat: { value: total, unit: 's' },
        longest: { value: Math.max(0, ...lengths), unit: 's' },
        from: { value: options.minimumWatts, unit: 'W' },
      },
      charts:
        plateaus.length === 0
          ? []
          : [chart(`plateaus:${subjectOf(all, recording)}`, recording.channels.power!, plateaus)],
    });
  },
});

interface Plateau {
  readonly stretch: Stretch;
  readonly watts: number;
}

/** Flat records joined into plateaus, cut where recording broke off or one level steps to the next. */
function plateausOf(records: Records, power: Float64Array, flat: Uint8Array, step: number): Plateau[] {
  const plateaus: Plateau[] = [];
  let from = -1;
  let sum = 0;
  const close = (to: number) => {
    if (from < 0) return;
    const stretch = [records.at[from]!, records.at[to - 1]! + secondsOf(records, to - 1)] as const;
    plateaus.push({ stretch, watts: sum / (to - from) });
    from = -1;
  };
  for (let i = 0; i < flat.length; i++) {
    const cut = records.broken[i] === 1 || Math.abs(power[i]! - sum / (i - from)) > step;
    if (flat[i] === 0 || cut) close(i);
    if (flat[i] === 0) continue;
    if (from < 0) {
      from = i;
      sum = 0;
    }
    sum += power[i]!;
  }
  close(flat.length);
  return plateaus;
}

function chart(id: string, power: Float64Array, plateaus: readonly Plateau[]): PlateausChart {
  return {
    kind: 'plateaus',
    id,
    power: readings(power, 0, power.length),
    plateaus: plateaus.map(({ stretch, watts }) => ({ stretch, watts: Math.round(watts * 10) / 10 })),
  };
}
