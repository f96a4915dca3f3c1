import { studentQuantile } from '../math/student.ts';
import type { AlignedSecond, ReportSection, Section, Series, Stretch, Subjects } from '../types.ts';
import { gate } from './pair/gate.ts';

/** Blocks (s) that an interval inside a section rests on: short, for sprints have room for few. */
const blockSeconds = 10;
/** Neighbouring blocks of ten seconds resemble each other: lag-1 correlation assumed in the interval. */
const neighbours = 0.3;
/** A section with fewer blocks states its difference without an interval. */
const leastBlocks = 4;

/**
 * What each section shows: the primary's mean power, and how each other meter on the same clock differs
 * from it there, so that a reader sees where a meter is good and where not.
 */
export function sectionTable(all: Subjects): ReportSection[] {
  const pairs = all.seconds.filter((pair) => gate(pair) === null);
  return all.sections.map((section) => ({
    ...section,
    watts: meanPower(all.primary, section.stretch),
    rise: section.kind === 'set-point block' ? riseTime(all.primary, section, all.sections) : null,
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
  return count === 0 ? null : Math.round((10 * sum) / count) / 10;
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
  const percent = round(100 * (ratio - 1));
  const n = blocks.length;
  if (n < leastBlocks) return { subject, percent, low: null, high: null };
  const squares = blocks.reduce((sum, block) => sum + (block.own - ratio * block.other) ** 2, 0);
  const error = Math.sqrt((squares * n) / (n - 1)) / otherSum;
  const half = 100 * studentQuantile(0.975, n - 1) * error * Math.sqrt((1 + neighbours) / (1 - neighbours));
  return { subject, percent, low: round(100 * (ratio - 1) - half), high: round(100 * (ratio - 1) + half) };
}

/**
 * Seconds from 10 to 90 % of the step from the block before, when that one ended within half a minute;
 * null where there is no such step.
 */
function riseTime({ channels: { power } }: Series, section: Section, all: readonly Section[]): number | null {
  const before = all.findLast(
    ({ kind, stretch }) =>
      kind === 'set-point block' && stretch[1] <= section.stretch[0] && section.stretch[0] - stretch[1] <= 30,
  );
  if (before === undefined || power === undefined) return null;
  const from = mean(power, before.stretch);
  const to = mean(power, section.stretch);
  if (!(Math.abs(to / from - 1) > 0.1)) return null;
  const progress = (t: number) => (power[t]! - from) / (to - from);
  let start = before.stretch[1] - 10;
  while (start < section.stretch[1] && !(progress(start) >= 0.1)) start++;
  let end = start;
  while (end < section.stretch[1] && !(progress(end) >= 0.9)) end++;
  return end < section.stretch[1] ? end - start : null;
}

function mean(power: Float64Array, [from, to]: Stretch): number {
  let sum = 0;
  for (let t = from; t < to; t++) sum += power[t]!;
  return sum / (to - from);
}

const round = (value: number) => Math.round(10 * value) / 10;
