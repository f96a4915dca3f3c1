import type { Fault } from '../make/faults/fault.ts';
import { faults as allFaults } from '../make/faults/index.ts';
import type { Build, Cohort } from '../make/meters.ts';
import type { RideKind } from '../make/ride.ts';

/** How strong a planted fault is; `any`: drawn between a quarter of borderline and clear, for the curve. */
export const strengthNames = ['borderline', 'moderate', 'clear', 'any'] as const;
export type StrengthName = (typeof strengthNames)[number];

export const cohorts: readonly Cohort[] = ['within claims', 'as found'];

/** One sort of draw: so many submissions of one honest kind, of one fault at each of its strengths, or pairs of one ride. */
export type Lot =
  | { readonly sort: 'honest'; readonly cohort: Cohort; readonly kind: string; readonly count: number }
  | {
      readonly sort: 'fault';
      readonly fault: string;
      readonly strengths: readonly StrengthName[];
      readonly count: number;
    }
  | { readonly sort: 'coverage'; readonly kind: RideKind; readonly minutes: number; readonly count: number };

export interface Plan {
  readonly build: Build;
  readonly seed: string;
  readonly lots: readonly Lot[];
}

/** A part of a lot, small enough to be handed to a worker. */
export interface Task {
  readonly lot: number;
  readonly from: number;
  readonly to: number;
}

/** Honest submissions of a cohort, draws of a fault, and of a ride whose intervals are tried, at scale 1. */
export const fullSize = { cohort: 8500, fault: 350, coverage: 2000 } as const;

export interface PlanWish {
  readonly build: Build;
  readonly seed: string;
  /** 1: sizes that can show the targets. */
  readonly scale: { readonly honest: number; readonly faults: number };
  readonly kinds: readonly string[];
  readonly faults: readonly Fault[];
  /** Strengths at which they are planted, as far as they have them. */
  readonly strengths: readonly StrengthName[];
  readonly cohorts: readonly Cohort[];
  /** Kind and minutes of rides in which intervals are tried. */
  readonly rides: readonly (readonly [RideKind, number])[];
}

export function planOf(wish: PlanWish): Plan {
  const { build, seed, scale, kinds } = wish;
  const part = (total: number, share: number) => Math.max(1, Math.ceil(total * share));
  const each = part(fullSize.cohort / Math.max(1, kinds.length), scale.honest);
  const drawn = part(fullSize.fault, scale.faults);
  const tried = part(fullSize.coverage, scale.honest);
  return {
    build,
    seed,
    lots: [
      ...wish.cohorts.flatMap((cohort) =>
        kinds.map((kind): Lot => ({ sort: 'honest', cohort, kind, count: each })),
      ),
      ...wish.faults.flatMap((fault): Lot[] => {
        const strengths = strengthsOf(fault).filter((one) => wish.strengths.includes(one));
        return strengths.length === 0 ? [] : [{ sort: 'fault', fault: fault.name, strengths, count: drawn }];
      }),
      ...wish.rides.map(([kind, minutes]): Lot => ({ sort: 'coverage', kind, minutes, count: tried })),
    ],
  };
}

/** The strengths at which a fault is planted in every draw: one that is there or not is planted once. */
export function strengthsOf({ strengths, only }: Fault): readonly StrengthName[] {
  return strengths.borderline === strengths.clear ? [only ?? 'clear'] : strengthNames;
}

/** What is going to be drawn, before anything is. */
export function sizesOf({ lots }: Plan): {
  readonly honest: number;
  readonly kinds: number;
  readonly faults: number;
  readonly faulty: number;
} {
  const honest = lots.filter((lot) => lot.sort === 'honest');
  const faulty = lots.filter((lot) => lot.sort === 'fault');
  return {
    honest: honest.reduce((sum, { count }) => sum + count, 0),
    kinds: new Set(honest.map(({ kind }) => kind)).size,
    faults: faulty.length,
    faulty: faulty.reduce((sum, { count, strengths }) => sum + count * strengths.length, 0),
  };
}

export function faultNamed(name: string): Fault {
  const fault = allFaults.find((one) => one.name === name);
  if (fault === undefined) throw new Error(`there is no fault “${name}”`);
  return fault;
}

/** Tasks in an order that mixes the lots, so that the time left can be told from the time spent. */
export function tasksOf({ lots }: Plan, size = 8): Task[] {
  const queues = lots.map(({ count }, lot) =>
    Array.from({ length: Math.ceil(count / size) }, (_, k) => ({
      lot,
      from: k * size,
      to: Math.min(count, (k + 1) * size),
    })),
  );
  const longest = Math.max(0, ...queues.map((queue) => queue.length));
  const out: { task: Task; at: number }[] = queues.flatMap((queue) =>
    queue.map((task, k) => ({ task, at: ((k + 0.5) * longest) / queue.length })),
  );
  return out.sort((a, b) => a.at - b.at || a.task.lot - b.task.lot).map(({ task }) => task);
}
