import { countedTwice, crankLengthWrong, offsetHigh, offsetLow, readsHigh, weakLegDoubled } from './bias.ts';
import { deadCadence, magnetLost } from './cadence.ts';
import { neverPaired, sensorDies } from './channels.ts';
import { clockLeaps, clockSetBack, stampedInPackets } from './clock.ts';
import { coastingPower, flywheelTail } from './coasting.ts';
import { blockCopied, lapInserted, powerCopied } from './copies.ts';
import { flywheelSpeed, highCadenceHigh, risesAbove, slipsAbove } from './dependence.ts';
import {
  crossesEvenly,
  crossesWarming,
  doublesFromThere,
  drift,
  offsetLost,
  pedalDropsOut,
  secondFalls,
  warming,
} from './drift.ts';
import { partOfAnother, partOfAnotherRescaled, sameFile, sameFileRescaled } from './duplicates.ts';
import { byMotion, byTrainerCurve } from './estimated.ts';
import type { Fault } from './fault.ts';
import { balanceStill, meterFrozen, powerFrozen } from './frozen.ts';
import { linkFails, recorderStops, recorderSwapped } from './gaps.ts';
import { driftsUnseen, heartAtRest, helpedFromThere, strapLost, strapOfAnother } from './heart.ts';
import { readsAboveHistory, sprinterRode, sprintsReadHigh, strongerThanHistory } from './history.ts';
import { slowPrimary, slowSecond } from './lag.ts';
import { motor, script } from './machine.ts';
import { massLowered, massOverstated, massUnderstated } from './mass.ts';
import { otherRide, otherRider, sameWorkout, secondScaled, secondSmoothed } from './origin.ts';
import { beyondEverybody, massFarTooLow, sprintBeyondEverybody } from './record.ts';
import { rescaledCutOff, rescaledPart, rescaledWhole } from './rescaled.ts';
import {
  allOfItHigh,
  halfTheTurns,
  hardPartsHigh,
  sprintsLifted,
  sprintsRewritten,
  torqueBeyondLegs,
} from './reserve.ts';
import { loosePedal, lowBattery } from './scatter.ts';
import { reportsTarget, smoothedTarget } from './set-point.ts';
import { headUnitAverages, smoothingSwitched, trainerSmooths } from './smoothed.ts';
import { spikes, wakingSpikes } from './spikes.ts';
import { secondLosesSprints, sprintHigh, sprintOvershoot } from './sprint.ts';
import { oddHigh, oddOffset } from './third.ts';
import { samplesRaised, totalsRaised } from './totals.ts';
import { otherDay, partRecorded, zoneSlip } from './window.ts';

/** Every fault that can be planted, in the order of the rules that name them. */
export const faults: readonly Fault[] = [
  // The recording.
  neverPaired,
  sensorDies,
  recorderStops,
  linkFails,
  recorderSwapped,
  clockSetBack,
  clockLeaps,
  stampedInPackets,
  partRecorded,
  zoneSlip,
  otherDay,
  samplesRaised,
  totalsRaised,
  blockCopied,
  powerCopied,
  lapInserted,
  rescaledWhole,
  rescaledCutOff,
  rescaledPart,
  sameFile,
  sameFileRescaled,
  partOfAnother,
  partOfAnotherRescaled,
  // The trace.
  deadCadence,
  magnetLost,
  coastingPower,
  flywheelTail,
  reportsTarget,
  smoothedTarget,
  powerFrozen,
  balanceStill,
  meterFrozen,
  spikes,
  wakingSpikes,
  headUnitAverages,
  trainerSmooths,
  smoothingSwitched,
  byTrainerCurve,
  byMotion,
  script,
  motor,
  // Agreement.
  otherRide,
  sameWorkout,
  otherRider,
  secondScaled,
  secondSmoothed,
  readsHigh,
  crankLengthWrong,
  countedTwice,
  weakLegDoubled,
  offsetHigh,
  offsetLow,
  loosePedal,
  lowBattery,
  risesAbove,
  slipsAbove,
  highCadenceHigh,
  flywheelSpeed,
  sprintHigh,
  sprintOvershoot,
  secondLosesSprints,
  drift,
  warming,
  secondFalls,
  offsetLost,
  pedalDropsOut,
  doublesFromThere,
  crossesWarming,
  crossesEvenly,
  slowPrimary,
  slowSecond,
  oddHigh,
  oddOffset,
  // Physiology.
  strongerThanHistory,
  readsAboveHistory,
  sprinterRode,
  sprintsReadHigh,
  beyondEverybody,
  massFarTooLow,
  sprintBeyondEverybody,
  sprintsLifted,
  sprintsRewritten,
  hardPartsHigh,
  allOfItHigh,
  torqueBeyondLegs,
  halfTheTurns,
  strapOfAnother,
  strapLost,
  heartAtRest,
  driftsUnseen,
  helpedFromThere,
  massUnderstated,
  massLowered,
  massOverstated,
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
