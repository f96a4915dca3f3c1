import type { Place } from '../../../src/types.ts';
import type { MeterSpec } from '../meter.ts';
import type { Random } from '../random.ts';
import type { RideKind } from '../ride.ts';
import type { Draft } from '../submission.ts';

/** A trainer against pedals, as most indoor races have it. */
export const trainerAndPedals = { places: ['trainer', 'pedal'] satisfies Place[] };

/** Changes any meter of the draft; what is declared of it stays. */
export function withMeterOf(draft: Draft, recording: number, change: Partial<MeterSpec>): Draft {
  const at = draft.recordings[recording]!.meter;
  return { ...draft, meters: draft.meters.map((meter, k) => (k === at ? { ...meter, ...change } : meter)) };
}

export function meterOf(draft: Draft, recording: number): MeterSpec {
  return draft.meters[draft.recordings[recording]!.meter]!;
}

/** Both meters claim ± 2 % and measure both legs, so that nothing but the fault is wide. */
export function declaredTwoPercent(draft: Draft): Draft {
  const meters = draft.meters.map((meter): MeterSpec => ({ ...meter, tolerancePercent: 2, sides: 2 }));
  const devices = draft.facts.devices!.map((device) => ({
    ...device,
    tolerancePercent: 2,
    sides: 2 as const,
  }));
  return { ...draft, meters, facts: { ...draft.facts, devices } };
}

export const racing = (random: Random): { kind: RideKind; minutes: number } => ({
  kind: random.pick(['bunch race', 'bunch race', 'time trial', 'long climb']),
  minutes: random.integer(25, 55),
});
