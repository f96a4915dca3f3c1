import { averagingDifference } from './averaging-difference.ts';
import { averagingSeconds } from './averaging-seconds.ts';
import { cadenceDependence } from './cadence-dependence.ts';
import { copiedSeconds } from './copied-seconds.ts';
import { crossingTime } from './crossing-time.ts';
import { differenceTrend } from './difference-trend.ts';
import { distanceFromOthers } from './distance-from-others.ts';
import { effortSpread } from './effort-spread.ts';
import { excessOverHistory } from './excess-over-history.ts';
import { excessOverRecord } from './excess-over-record.ts';
import { flatPowerShare } from './flat-power-share.ts';
import { frozenSeconds } from './frozen-seconds.ts';
import { latePowerExcess } from './late-power-excess.ts';
import { latticeExcess } from './lattice-excess.ts';
import { lostSeconds } from './lost-seconds.ts';
import { massShortfall } from './mass-shortfall.ts';
import type { Measure } from './measure.ts';
import { misplacedShare } from './misplaced-share.ts';
import { missingChannelCount } from './missing-channel-count.ts';
import { missingTraits } from './missing-traits.ts';
import { overallDifference } from './overall-difference.ts';
import { powerAtZeroCadence } from './power-at-zero-cadence.ts';
import { powerDependence } from './power-dependence.ts';
import { reserveShare } from './reserve-share.ts';
import { sharedDetail } from './shared-detail.ts';
import { sharedSeconds } from './shared-seconds.ts';
import { speedCurveScatter } from './speed-curve-scatter.ts';
import { spikeCount } from './spike-count.ts';
import { sprintDisproportion } from './sprint-disproportion.ts';
import { sprintExcess } from './sprint-excess.ts';
import { torqueOffset } from './torque-offset.ts';
import { torqueShare } from './torque-share.ts';
import { totalDiscrepancy } from './total-discrepancy.ts';
import { uncoveredShare } from './uncovered-share.ts';
import { unexplainedDetail } from './unexplained-detail.ts';
import { unresponsiveShare } from './unresponsive-share.ts';
import { zeroCadenceShare } from './zero-cadence-share.ts';

/** Every measure, in the order of the families: recording, trace, agreement, physiology. */
export const measures: readonly Measure[] = [
  missingChannelCount,
  lostSeconds,
  misplacedShare,
  uncoveredShare,
  totalDiscrepancy,
  copiedSeconds,
  sharedSeconds,
  latticeExcess,
  zeroCadenceShare,
  powerAtZeroCadence,
  flatPowerShare,
  frozenSeconds,
  spikeCount,
  averagingSeconds,
  speedCurveScatter,
  missingTraits,
  sharedDetail,
  unexplainedDetail,
  overallDifference,
  torqueOffset,
  effortSpread,
  powerDependence,
  cadenceDependence,
  sprintExcess,
  differenceTrend,
  crossingTime,
  averagingDifference,
  distanceFromOthers,
  excessOverHistory,
  latePowerExcess,
  sprintDisproportion,
  reserveShare,
  unresponsiveShare,
  massShortfall,
  torqueShare,
  excessOverRecord,
];
