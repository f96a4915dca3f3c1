import type {
  AlignedSecond,
  ReportSection,
  Section,
  SectionKind,
  SectionsChart,
  Series,
  Stretch,
  Subjects,
} from '../types.ts';
import { roundTo } from '../units.ts';
import { blockInterval } from './pair/block-interval.ts';
import { lostLinks } from './pair/samples.ts';

/** Blocks (s) that an interval inside a section rests on: short, for sprints have room for few. */
const blockSeconds = 10;
/** From so many sections of a kind on, each is one piece: seconds of one sprint are more alike than two sprints. */
const leastSections = 4;
/** Kinds that are told, in this order. Of coasting there is no power to compare. */
const kindsTold: readonly SectionKind[] = [
  'first third',
  'last third',
  'steady',
  'climb',
  'over-under',
  'set-point block',
  'sprint',
];

type Difference = ReportSection['differences'][number];

/**
 * What each section shows: the primary's mean power, and how each other meter on the same clock differs
 * from it there, so that a reader sees where a meter is good and where not.
 *
 * @param pairs the other meters that can be compared with the primary
 */
export function sectionTable(all: Subjects, pairs: readonly AlignedSecond[]): ReportSection[] {
  return all.sections.map((section) => ({ ...section, ...shownIn(all, pairs, [section]) }));
}

/** The same of all sections of a kind together; null where there is no other meter, or nothing to compare. */
export function sectionsChart(all: Subjects, pairs: readonly AlignedSecond[]): SectionsChart | null {
  const rows = kindsTold
    .map((section) => {
      const of = all.sections.filter(({ kind }) => kind === section);
      return { section, count: of.length, ...shownIn(all, pairs, of) };
    })
    .filter(({ differences }) => differences.length > 0);
  return rows.length === 0 ? null : { kind: 'sections', id: 'sections', rows };
}

function shownIn(all: Subjects, pairs: readonly AlignedSecond[], sections: readonly Section[]) {
  const stretches = sections.map(({ stretch }) => stretch);
  return {
    watts: meanPower(all.primary, stretches),
    differences: pairs.flatMap((pair) => differenceIn(all, pair, stretches) ?? []),
  };
}

function meanPower({ channels: { power } }: Series, stretches: readonly Stretch[]): number | null {
  let sum = 0;
  let count = 0;
  for (const [from, to] of stretches) {
    for (let t = from; t < to; t++) {
      const watts = power?.[t] ?? Number.NaN;
      if (Number.isNaN(watts)) continue;
      sum += watts;
      count++;
    }
  }
  return count === 0 ? null : roundTo(sum / count, 'W');
}

interface Work {
  readonly own: number;
  readonly other: number;
}

function differenceIn(all: Subjects, pair: AlignedSecond, stretches: readonly Stretch[]): Difference | null {
  const { subject } = pair;
  const inEach = stretches.map((stretch) => blocksIn(all, pair, stretch)).filter(({ length }) => length > 0);
  const pieces = inEach.length >= leastSections ? inEach.map(together) : inEach.flat();
  const work = together(pieces);
  if (work.own <= 0 || work.other <= 0) return null;
  const ratio = work.own / work.other;
  const percent = 100 * (ratio - 1);
  const misfits = Float64Array.from(pieces, (piece) => piece.own - ratio * piece.other);
  const deviation = blockInterval(misfits);
  if (deviation === null) return { subject, percent: roundTo(percent, '%'), low: null, high: null };
  const half = (100 * deviation * pieces.length) / work.other;
  return {
    subject,
    percent: roundTo(percent, '%'),
    low: roundTo(percent - half, '%'),
    high: roundTo(percent + half, '%'),
  };
}

/** Work of both meters in blocks, over the seconds that both measured; blocks without any are left out. */
function blocksIn(all: Subjects, pair: AlignedSecond, [from, to]: Stretch): Work[] {
  const own = all.primary.channels.power!;
  const other = pair.series.channels.power!;
  const lost = lostLinks(all, pair);
  const blocks: Work[] = [];
  for (let start = from; start < to; start += blockSeconds) {
    const block = { own: 0, other: 0 };
    for (let t = start; t < Math.min(to, start + blockSeconds); t++) {
      if (Number.isNaN(own[t]!) || Number.isNaN(other[t]!) || lost[t] === 1) continue;
      block.own += own[t]!;
      block.other += other[t]!;
    }
    if (block.own + block.other > 0) blocks.push(block);
  }
  return blocks;
}

function together(pieces: readonly Work[]): Work {
  return pieces.reduce((sum, piece) => ({ own: sum.own + piece.own, other: sum.other + piece.other }), {
    own: 0,
    other: 0,
  });
}
