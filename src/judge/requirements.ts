import type { Channel, Requirement } from '../types.ts';

/** What a submission holds, as far as an event can require it. */
export interface Holdings {
  /** Channels of the primary with at least one valid value. */
  readonly channels: readonly Channel[];
  /** Second recordings that are readable and an independent measurement. */
  readonly independentSeconds: number;
  /** Past rides that may speak about this race. */
  readonly rides: number;
}

/** Which of an event's requirements a submission does not meet, each once, in the order given. */
export function missingOf(required: readonly Requirement[], holdings: Holdings): Requirement[] {
  const meets: Readonly<Record<Requirement, boolean>> = {
    power: holdings.channels.includes('power'),
    cadence: holdings.channels.includes('cadence'),
    heartRate: holdings.channels.includes('heartRate'),
    'second recording': holdings.independentSeconds > 0,
    history: holdings.rides > 0,
  };
  return [...new Set(required)].filter((requirement) => !meets[requirement]);
}
