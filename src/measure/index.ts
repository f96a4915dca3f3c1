import { flatPowerShare } from './flat-power-share.ts';
import { frozenSeconds } from './frozen-seconds.ts';
import { lostSeconds } from './lost-seconds.ts';
import type { Measure } from './measure.ts';
import { missingChannelCount } from './missing-channel-count.ts';
import { powerAtZeroCadence } from './power-at-zero-cadence.ts';
import { spikeCount } from './spike-count.ts';
import { zeroCadenceShare } from './zero-cadence-share.ts';

/** Every measure, in the order of the families: recording, trace, agreement, physiology. */
export const measures: readonly Measure[] = [
  missingChannelCount,
  lostSeconds,
  zeroCadenceShare,
  powerAtZeroCadence,
  flatPowerShare,
  frozenSeconds,
  spikeCount,
];
