import type { Defect, DefectId } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { subjectOf } from './recording/subject.ts';
import { type Definition, type Total, totalsOf } from './recording/totals.ts';

/**
 * How far the file's own totals lie from its samples, in percent of the nearest value that an honest
 * definition gives; the furthest of them counts. Rounding and cutting to whole units is allowed for.
 */
export const totalDiscrepancy = defineMeasure({
  id: 'total-discrepancy',
  of: 'recording',
  unit: '%',
  options: {
    mostMissing: number('share of the timer that may be missing from the samples and still explain a total'),
  },
  circumstances: {
    unfinished: 'the file is damaged or joined of several, so that its totals may belong to other samples',
  },
  compute(all, recording, { mostMissing }) {
    const totals = totalsOf(recording, mostMissing).filter(({ stated }) => stated > 0);
    if (totals.length === 0) return notApplicable('no-totals');
    const rows = totals.map((total) => ({ ...total, off: distance(total) }));
    const furthest = rows.reduce((a, b) => (b.off > a.off ? b : a));
    const nearest = nearestOf(furthest);
    return exact(furthest.off, rows.length, {
      circumstances: recording.recording.defects.some(unfinished) ? ['unfinished'] : [],
      details: {
        total: furthest.total,
        stated: { value: furthest.stated, unit: furthest.unit },
        nearest: { value: bounded(furthest.stated, nearest), unit: furthest.unit },
        definition: nearest.definition,
        totals: rows.length,
      },
      charts: [
        {
          kind: 'totals',
          id: `totals:${subjectOf(all, recording)}`,
          rows: rows.map(({ total, unit, stated, definitions, off }) => ({
            total,
            unit,
            stated,
            off,
            fromSamples: definitions.map((one) => ({
              definition: one.definition,
              value: bounded(stated, one),
            })),
          })),
        },
      ],
    });
  },
});

/** Defects that part a file's totals from its samples. */
const parting: ReadonlySet<DefectId> = new Set([
  'truncated',
  'never-closed',
  'chained',
  'several-sessions',
  'markup-ends-early',
]);
/** Bytes of a checksum. A file that lacks no more lacks no sample: cutting it off excuses nothing. */
const checksumBytes = 2;

function unfinished({ id, values }: Defect): boolean {
  const lost = id === 'truncated' ? values.lostBytes : undefined;
  return parting.has(id) && !(typeof lost === 'number' && lost <= checksumBytes);
}

/** The value within a definition's range that is nearest to what is stated. */
function bounded(stated: number, { low, high }: Definition): number {
  return Math.min(high, Math.max(low, stated));
}

function nearestOf({ stated, definitions }: Total): Definition {
  const apart = (one: Definition) => Math.abs(stated - bounded(stated, one));
  return definitions.reduce((a, b) => (apart(b) < apart(a) ? b : a));
}

/** Percent between a total and the nearest definition, the last whole unit allowed. */
function distance(total: Total): number {
  const value = bounded(total.stated, nearestOf(total));
  const apart = Math.max(0, Math.abs(total.stated - value) - 1);
  return value > 0 ? (100 * apart) / value : 100;
}
