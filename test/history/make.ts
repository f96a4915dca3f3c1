import { settings } from '../../src/history/settings.ts';
import type { PastRide } from '../../src/types.ts';

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
