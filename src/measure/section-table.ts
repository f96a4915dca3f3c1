import type { AlignedSecond, ReportSection, Series, Stretch, Subjects } from '../types.ts';
import { roundTo } from '../units.ts';
import { blockInterval } from './pair/block-interval.ts';

/** Blocks (s) that an interval inside a section rests on: short, for sprints have room for few. */
const blockSeconds = 10;

/**
 * What each section shows: the primary's mean power, and how each other meter on the same clock differs
 * from it there, so that a reader sees where a meter is good and where not.
 *
 * @param pairs the other meters that can be compared with the primary
 */
export function sectionTable(all: Subjects, pairs: readonly AlignedSecond[]): ReportSection[] {
  return all.sections.map((section) => ({
    ...section,
    watts: meanPower(all.primary, section.stretch),
    differences: pairs.flatMap((pair) => differenceIn(all.primary, pair, section.stretch) ?? []),
  }));
}

function meanPower({ channels: { power } }: Series, [from, to]: Stretch): number | null {
  let sum = 0;
  let count = 0;
  for (let t = from; t < to; t++) {
    const watts = power?.[t] ?? Number.NaN;
    if (Number.isNaN(watts)) continue;
    sum += watts;
    count++;
  }
  return count === 0 ? null : roundTo(sum / count, 'W');
}

function differenceIn(
  primary: Series,
  { subject, series }: AlignedSecond,
  [from, to]: Stretch,
): ReportSection['differences'][number] | null {
  const own = primary.channels.power!;
  const other = series.channels.power!;
  const blocks: { own: number; other: number }[] = [];
  for (let start = from; start < to; start += blockSeconds) {
    const block = { own: 0, other: 0 };
    for (let t = start; t < Math.min(to, start + blockSeconds); t++) {
      if (Number.isNaN(own[t]!) || Number.isNaN(other[t]!)) continue;
      block.own += own[t]!;
      block.other += other[t]!;
    }
    if (block.own + block.other > 0) blocks.push(block);
  }
  const ownSum = blocks.reduce((sum, block) => sum + block.own, 0);
  const otherSum = blocks.reduce((sum, block) => sum + block.other, 0);
  if (ownSum <= 0 || otherSum <= 0) return null;
  const ratio = ownSum / otherSum;
  const percent = 100 * (ratio - 1);
  const misfits = Float64Array.from(blocks, (block) => block.own - ratio * block.other);
  const deviation = blockInterval(misfits);
  if (deviation === null) return { subject, percent: roundTo(percent, '%'), low: null, high: null };
  const half = (100 * deviation * blocks.length) / otherSum;
  return {
    subject,
    percent: roundTo(percent, '%'),
    low: roundTo(percent - half, '%'),
    high: roundTo(percent + half, '%'),
  };
}
