import { hasValue, type RawColumns } from '../columns.ts';
import type { RecordColumns } from './record-fields.ts';

/** Every channel but balance, from the fields of the records; a channel without any is left out. */
export function plainChannels(columns: RecordColumns): RawColumns['channels'] {
  return {
    power: columns.power,
    cadence: withFraction(columns.cadence, columns.fractional_cadence),
    heartRate: columns.heart_rate,
    // Newer recorders write the enhanced field alone, older ones the plain field alone.
    speed: overlaid(columns.enhanced_speed, columns.speed),
    altitude: overlaid(columns.enhanced_altitude, columns.altitude),
    distance: columns.distance,
    temperature: columns.temperature,
    ...unpackSpeedAndDistance(columns),
  };
}

type Column = Float64Array | undefined;

function withFraction(whole: Column, fraction: Column): Column {
  if (fraction === undefined) return whole;
  return whole?.map((value, i) => (Number.isNaN(fraction[i]!) ? value : value + fraction[i]!));
}

/** The first column, and the second where the first has nothing. */
function overlaid(first: Column, second: Column): Column {
  if (first === undefined || second === undefined) return first ?? second;
  return first.map((value, i) => (Number.isNaN(value) ? second[i]! : value));
}

/**
 * The old field compressed_speed_distance: 12 bits of speed (1/100 m/s) and 12 of distance (1/16 m), the
 * distance starting over every 256 m (FIT Profile, message record, field 8: accumulated). Nothing when no
 * record has it, or any has a plain distance as well.
 */
function unpackSpeedAndDistance({
  compressed_speed_distance: packed,
  distance: plain,
}: RecordColumns): { speed: Float64Array; distance: Float64Array } | null {
  if (packed === undefined || !hasValue(packed) || (plain !== undefined && hasValue(plain))) return null;
  const speed = new Float64Array(packed.length).fill(Number.NaN);
  const distance = new Float64Array(packed.length).fill(Number.NaN);
  let before: number | null = null;
  let total = 0;
  packed.forEach((bits, i) => {
    if (Number.isNaN(bits)) return;
    const sixteenths = bits >> 12;
    total += before === null ? sixteenths : (sixteenths - before) & 0xfff;
    before = sixteenths;
    speed[i] = (bits & 0xfff) / 100;
    distance[i] = total / 16;
  });
  return { speed, distance };
}
