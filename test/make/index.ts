/** The simulator's front door: see README.md beside this file. */

export type { Fault } from './faults/fault.ts';
export * as faults from './faults/index.ts';
export { type MeterSpec, perfectMeter } from './meter.ts';
export { Random } from './random.ts';
export { plainRecorder, type RecorderSpec } from './recorder.ts';
export { type RideKind, rideKinds } from './ride.ts';
export { standards } from './rider.ts';
export {
  type Draft,
  drawDraft,
  drawSubmission,
  realise,
  type Submission,
  type SubmissionWish,
} from './submission.ts';
