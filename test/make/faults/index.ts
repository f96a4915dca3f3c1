import { deadCadence } from './cadence.ts';
import { coastingPower } from './coasting.ts';
import { drift, warming } from './drift.ts';
import type { Fault } from './fault.ts';
import { readsAboveHistory, strongerThanHistory } from './history.ts';
import { reportsTarget } from './set-point.ts';
import { spikes } from './spikes.ts';
import { sprintHigh, sprintOvershoot } from './sprint.ts';

/** Every fault that can be planted. */
export const faults: readonly Fault[] = [
  drift,
  warming,
  sprintHigh,
  sprintOvershoot,
  reportsTarget,
  deadCadence,
  spikes,
  coastingPower,
  strongerThanHistory,
  readsAboveHistory,
];

export {
  coastingPower,
  deadCadence,
  drift,
  readsAboveHistory,
  reportsTarget,
  spikes,
  sprintHigh,
  sprintOvershoot,
  strongerThanHistory,
  warming,
};
