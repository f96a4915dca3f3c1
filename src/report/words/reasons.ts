import type { ReasonId, ReportMeasurement } from '../../types.ts';
import { fill, fillable } from './fill.ts';
import type { Sentence } from './sentence.ts';

/** `short` heads a group and stands alone; `full` adds the numbers where the measurement gives them. */
interface Reason {
  readonly short: string;
  readonly full?: string;
}

/** Why a check could not be made; each completes "could not be checked: …". */
export const reasons: Readonly<Record<ReasonId | 'failed', Reason>> = {
  'no-third': {
    short: 'fewer than three independent meters',
    full: 'it takes three independent meters; here: {meters}',
  },
  'no-second': { short: 'no second recording was handed in' },
  'second-unreadable': { short: 'the second recording could not be read' },
  'no-detail': { short: 'one of the traces is too smooth or constant to compare in detail' },
  'not-secure': { short: 'the two recordings could not be put on one clock with certainty' },
  'different-ride': { short: 'the second recording does not look like the same ride' },
  'not-independent': { short: 'the second recording is not an independent meter' },
  'too-short': {
    short: 'too little time was recorded',
    full: 'too little time: {seconds:s} recorded, {needed:s} needed',
  },
  'too-few-readings': {
    short: 'power seldom differs from the second before',
    full: 'power seldom differs from the second before: {readings} readings can be used, {needed} are needed',
  },
  'too-few-blocks': {
    short: 'too few blocks of data',
    full: 'too few blocks of data: {blocks} found, {needed} needed',
  },
  'too-few-efforts': {
    short: 'too few efforts of the kind it looks at that both meters told',
    full: 'too few efforts of the kind it looks at that both meters told: {efforts} found, {needed} needed',
  },
  'no-channel': { short: 'a channel it needs was not recorded', full: 'no {channel} was recorded' },
  'mostly-invalid': {
    short: 'a channel it needs is mostly invalid',
    full: '{channel} is invalid or missing in {share:share} of the time',
  },
  'no-power-flow': { short: 'there is hardly any pedalling with power' },
  'dead-channel': {
    short: 'a channel it needs is there but zero throughout',
    full: '{channel} is there but zero throughout',
  },
  'decimal-power': {
    short: 'power is not recorded in whole watts',
    full: 'power is not recorded in whole watts in {share:share} of the seconds',
  },
  'coarse-steps': {
    short: 'the meter works in steps of several watts, or its watts were multiplied by much',
    full: 'watts are missing from the scale ({share:share} of those that should occur): the meter works in coarse steps, or its watts were multiplied by much, and the two cannot be told apart',
  },
  'irregular-recorder': {
    short: 'the recorder does not write every second',
    full: 'the recorder does not write every second: only {share:share} of the seconds follow one another',
  },
  'no-totals': { short: 'the file states no totals of its own' },
  'no-event': { short: 'the other submissions of the event are needed' },
  'no-history': { short: 'no earlier rides were handed in' },
  'history-too-thin': {
    short: 'the earlier rides hold too few hard efforts',
    full: 'the earlier rides hold too few hard efforts: {windows} found, {needed} needed',
  },
  'no-heart-rate-range': { short: 'heart rate hardly varied' },
  'no-overlap-of-power': { short: 'the early and the late part of the ride share no range of power' },
  'no-drift': { short: 'the difference of the meters does not drift' },
  'no-crossing': { short: 'neither meter passes the other' },
  'narrow-range': {
    short: 'the ride used too narrow a range',
    full: 'the ride used too narrow a range of {what}',
  },
  'no-one-line': { short: 'the blocks of the two meters lie along no one line' },
  'rises-with-power': { short: 'a rise with power tells the difference of the meters better' },
  'cannot-separate': { short: 'the possible causes cannot be told apart in this ride' },
  'speed-not-tied': { short: 'speed does not follow from power in this ride' },
  'no-fact': { short: 'a fact it needs was not given', full: '{fact} was not given' },
  'nothing-required': { short: 'the event requires nothing of this kind' },
  'not-a-race': { short: 'the ride is no race' },
  outdoors: { short: 'the ride was outdoors' },
  'switched-off': { short: 'the rule is switched off', full: 'the rule is switched off: {why}' },
  failed: {
    short: 'the check itself broke: a fault of this program, not of the rider',
    full: 'the check itself broke, a fault of this program and not of the rider: {message}',
  },
};

export function reasonInShort(id: ReasonId | 'failed'): string {
  return reasons[id].short;
}

export function reasonInFull(reason: NonNullable<ReportMeasurement['reason']>): Sentence {
  const { short, full } = reasons[reason.id];
  return full !== undefined && fillable(full, reason.values) ? fill(full, reason.values) : [short];
}
