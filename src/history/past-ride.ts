import { climbing } from '../math/climbs.ts';
import { meanMaximal } from '../math/mean-maximal.ts';
import type { Climbed, PastRide, Place, Series } from '../types.ts';
import { controlledShare } from './control.ts';
import { settings } from './settings.ts';

/** What a profile remembers of one ride. The series must have power. */
export function pastRide(series: Series, place: Place | null): PastRide {
  const { meter } = series.recording;
  const power = series.channels.power!;
  const best = meanMaximal(power, settings.durations);
  const heartRate = series.channels.heartRate;
  return {
    sha256: series.recording.sha256,
    from: series.start,
    to: series.start + series.length - 1,
    device: series.recording.device,
    ...(meter === undefined ? {} : { meter }),
    place,
    indoors: series.recording.indoors,
    bests: Array.from(best.watts, (watts) => (Number.isNaN(watts) ? null : Math.round(watts * 10) / 10)),
    ...(heartRate === undefined
      ? {}
      : { heartRates: settings.durations.map((duration, k) => meanOf(heartRate, best.from[k]!, duration)) }),
    controlled: Math.round(controlledShare(power) * 100) / 100,
    ...climbedIn(series),
  };
}

/** Mass by the ride's climbs, as if no power were lost on its way to the wheel. */
function climbedIn(series: Series): { climbed?: Climbed } {
  const { speed, altitude } = series.channels;
  if (speed === undefined || altitude === undefined) return {};
  const { climbs, mass, scatter } = climbing(series, [0, series.length], 1);
  if (climbs.length === 0 || !(mass > 0)) return {};
  const { mostKg, mostScatter } = settings.climbed;
  if (mass > mostKg || scatter > mostScatter) return {};
  const kg = Math.round(mass * 10) / 10;
  return { climbed: { kg, stretches: climbs.length, scatter: Math.round(scatter * 1000) / 1000 } };
}

/** Mean (bpm, whole) over the window where at least half of it was recorded; null otherwise. */
function meanOf(heartRate: Float64Array, from: number, seconds: number): number | null {
  if (from < 0) return null;
  let sum = 0;
  let count = 0;
  for (let i = from; i < from + seconds; i++) {
    const bpm = heartRate[i]!;
    if (!(bpm > 0)) continue;
    sum += bpm;
    count++;
  }
  return count * 2 < seconds ? null : Math.round(sum / count);
}
