import { settings } from '../../src/history/settings.ts';
import type { Columns, PastRide, Recording, Series } from '../../src/types.ts';

export const recordingOf = (
  channels: Columns,
  seconds: number,
  more: Partial<Recording> = {},
): Recording => ({
  name: 'ride.fit',
  sha256: 'a'.repeat(64),
  format: 'fit',
  sport: 'cycling',
  indoors: true,
  device: { maker: 'maker', product: 'product', serial: '1' },
  time: Float64Array.from({ length: seconds }, (_, i) => 1_700_000_000 + i),
  channels,
  extraMeters: [],
  balanceSide: null,
  pauses: [],
  laps: [],
  totals: {},
  defects: [],
  ...more,
});

/** A series without gaps. */
export function seriesOf(channels: Columns, more: Partial<Recording> = {}): Series {
  const length = Object.values(channels)[0]!.length;
  return {
    recording: recordingOf(channels, length, more),
    start: 1_700_000_000,
    length,
    channels,
    state: new Uint8Array(length),
    extraMeters: [],
  };
}

export const rideOf = (n: number, more: Partial<PastRide> = {}): PastRide => ({
  sha256: n.toString(16).padStart(64, '0'),
  from: 1_600_000_000 + n * 86_400,
  to: 1_600_000_000 + n * 86_400 + 3600,
  device: { maker: 'maker', product: 'product', serial: '1' },
  place: null,
  indoors: true,
  bests: settings.durations.map((d) => (d > 3600 ? null : Math.round(200 + n + 3000 / (d + 5)))),
  ...more,
});
