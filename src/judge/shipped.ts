import aboveHistory from '../../rules/above-history.rule.json' with { type: 'json' };
import aboveHumanRecord from '../../rules/above-human-record.rule.json' with { type: 'json' };
import cadenceDependentBias from '../../rules/cadence-dependent-bias.rule.json' with { type: 'json' };
import clockFault from '../../rules/clock-fault.rule.json' with { type: 'json' };
import coastingPower from '../../rules/coasting-power.rule.json' with { type: 'json' };
import deadCadence from '../../rules/dead-cadence.rule.json' with { type: 'json' };
import differentRide from '../../rules/different-ride.rule.json' with { type: 'json' };
import duplicateSubmission from '../../rules/duplicate-submission.rule.json' with { type: 'json' };
import estimatedPower from '../../rules/estimated-power.rule.json' with { type: 'json' };
import flatSetpoint from '../../rules/flat-setpoint.rule.json' with { type: 'json' };
import frozenValue from '../../rules/frozen-value.rule.json' with { type: 'json' };
import gradesFile from '../../rules/grades.json' with { type: 'json' };
import heartRateUnresponsive from '../../rules/heart-rate-unresponsive.rule.json' with { type: 'json' };
import impliedMass from '../../rules/implied-mass.rule.json' with { type: 'json' };
import impossibleTorque from '../../rules/impossible-torque.rule.json' with { type: 'json' };
import lateDrift from '../../rules/late-drift.rule.json' with { type: 'json' };
import latePowerRise from '../../rules/late-power-rise.rule.json' with { type: 'json' };
import machineLike from '../../rules/machine-like.rule.json' with { type: 'json' };
import meanBias from '../../rules/mean-bias.rule.json' with { type: 'json' };
import missingChannel from '../../rules/missing-channel.rule.json' with { type: 'json' };
import oddOneOut from '../../rules/odd-one-out.rule.json' with { type: 'json' };
import outsideRaceWindow from '../../rules/outside-race-window.rule.json' with { type: 'json' };
import overSmoothed from '../../rules/over-smoothed.rule.json' with { type: 'json' };
import powerDependentBias from '../../rules/power-dependent-bias.rule.json' with { type: 'json' };
import powerSpike from '../../rules/power-spike.rule.json' with { type: 'json' };
import recordingGap from '../../rules/recording-gap.rule.json' with { type: 'json' };
import repeatedBlock from '../../rules/repeated-block.rule.json' with { type: 'json' };
import rescaledSeries from '../../rules/rescaled-series.rule.json' with { type: 'json' };
import reserveOverdrawn from '../../rules/reserve-overdrawn.rule.json' with { type: 'json' };
import responseLag from '../../rules/response-lag.rule.json' with { type: 'json' };
import sharedOrigin from '../../rules/shared-origin.rule.json' with { type: 'json' };
import sprintOvershoot from '../../rules/sprint-overshoot.rule.json' with { type: 'json' };
import sprintShape from '../../rules/sprint-shape.rule.json' with { type: 'json' };
import summaryMismatch from '../../rules/summary-mismatch.rule.json' with { type: 'json' };
import warmupCrossing from '../../rules/warmup-crossing.rule.json' with { type: 'json' };
import wideSpread from '../../rules/wide-spread.rule.json' with { type: 'json' };
import zeroOffset from '../../rules/zero-offset.rule.json' with { type: 'json' };
import type { Grades, Rule } from '../types.ts';
import { withoutSchema } from './overlay.ts';

/**
 * The shipped rules, one import and one line each, in the order in which they are listed and reported:
 * recording, trace, agreement, physiology. A test holds this list against the folder and every file
 * against its schema, so that nothing is checked again when the program runs.
 */
const files: readonly object[] = [
  // Recording.
  missingChannel,
  recordingGap,
  clockFault,
  outsideRaceWindow,
  summaryMismatch,
  repeatedBlock,
  duplicateSubmission,
  rescaledSeries,
  // Trace.
  deadCadence,
  coastingPower,
  flatSetpoint,
  frozenValue,
  powerSpike,
  overSmoothed,
  estimatedPower,
  machineLike,
  // Agreement.
  differentRide,
  sharedOrigin,
  meanBias,
  zeroOffset,
  wideSpread,
  powerDependentBias,
  cadenceDependentBias,
  sprintOvershoot,
  lateDrift,
  warmupCrossing,
  responseLag,
  oddOneOut,
  // Physiology.
  aboveHistory,
  latePowerRise,
  sprintShape,
  reserveOverdrawn,
  heartRateUnresponsive,
  impliedMass,
  impossibleTorque,
  aboveHumanRecord,
];

export const shippedRules = files.map(withoutSchema) as unknown as readonly Rule[];
export const shippedGrades = withoutSchema(gradesFile) as unknown as Grades;
