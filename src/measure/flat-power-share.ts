import { inNarrowWindow } from '../math/sliding-range.ts';
import { stretchesWhere, totalLength } from '../math/stretches.ts';
import { type PlateausChart, SecondState, type Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { readings } from './recording/close-ups.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Share of the pedalling that keeps to a level more closely than legs can: seconds inside a window whose
 * highest and lowest power differ by hardly more than the rounding. An exact count.
 */
export const flatPowerShare = defineMeasure({
  id: 'flat-power-share',
  of: 'recording',
  options: {
    windowSeconds: number('shortest time on one level, s'),
    spreadWatts: number('spread (highest minus lowest) that a level may have, W'),
    spreadPercent: number('the same in % of the level; the larger of the two holds'),
    minimumWatts: number('power from which a second counts as pedalling, W'),
    minimumSeconds: number('seconds of pedalling below which nothing is said'),
  },
  circumstances: { workout: 'the ride was a workout, in which a trainer may hold a target' },
  compute(all, recording, options) {
    const column = recording.channels.power;
    if (column === undefined) return notApplicable('no-channel', { channel: 'power' });
    const pedalled = column.map((watts, i) =>
      recording.state[i] === SecondState.recorded && watts >= options.minimumWatts ? watts : Number.NaN,
    );
    const seconds = pedalled.reduce((sum, watts) => (Number.isNaN(watts) ? sum : sum + 1), 0);
    if (seconds < options.minimumSeconds) return notApplicable('no-power-flow');
    const allowed = (lowest: number) => Math.max(options.spreadWatts, (options.spreadPercent / 100) * lowest);
    const flat = inNarrowWindow(pedalled, options.windowSeconds, allowed);
    const plateaus = plateausOf(pedalled, flat, allowed);
    const levels = new Set(plateaus.map(({ watts }) => Math.round(watts)));
    const total = totalLength(plateaus.map(({ stretch }) => stretch));
    return exact(total / seconds, 'share', seconds, {
      stretches: plateaus.map(({ stretch }) => stretch),
      circumstances: all.race.kind === 'workout' ? ['workout'] : [],
      details: {
        plateaus: plateaus.length,
        levels: levels.size,
        flat: { value: total, unit: 's' },
        longest: { value: plateaus.reduce((m, p) => Math.max(m, p.stretch[1] - p.stretch[0]), 0), unit: 's' },
      },
      charts: plateaus.length === 0 ? [] : [chart(`plateaus:${subjectOf(all, recording)}`, column, plateaus)],
    });
  },
});

interface Plateau {
  readonly stretch: Stretch;
  readonly watts: number;
}

/** Flat seconds, cut where one level steps to the next. */
function plateausOf(
  power: Float64Array,
  flat: Uint8Array,
  allowed: (lowest: number) => number,
): readonly Plateau[] {
  const plateaus: Plateau[] = [];
  for (const [from, to] of stretchesWhere(0, flat.length, (i) => flat[i] === 1)) {
    let start = from;
    let sum = 0;
    for (let i = from; i <= to; i++) {
      const mean = sum / (i - start);
      if (i === to || (i > start && Math.abs(power[i]! - mean) > allowed(mean))) {
        plateaus.push({ stretch: [start, i], watts: mean });
        start = i;
        sum = 0;
      }
      if (i < to) sum += power[i]!;
    }
  }
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
