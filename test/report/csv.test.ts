import { describe, expect, it } from 'vitest';
import { redact, renderCsv } from '../../src/report/index.ts';
import { makeReport } from './make-report.ts';

describe('renderCsv', () => {
  const lines = renderCsv(makeReport({}, 600)).split('\r\n');

  it('has a row a check: raised, fine, and not made', () => {
    expect(lines[0]).toBe(
      'rule,title,subject,about,state,level,value,low,high,unit,count,note at least,note at most,query at least,query at most,refer at least,refer at most,stretches,sentence',
    );
    expect(
      lines.slice(1, -1).map((line) =>
        line
          .split(',')
          .filter((_, index) => [0, 4, 5].includes(index))
          .join(' '),
      ),
    ).toEqual([
      'sprint-overshoot measured refer',
      'late-drift measured query',
      'above-history measured note',
      'heart-rate-unresponsive measured none',
      'mean-bias measured none',
      'dead-cadence measured none',
      'implied-mass not applicable ',
      'rescaled-series not applicable ',
      'odd-one-out failed ',
    ]);
  });

  it('keeps numbers plain, for programs', () => {
    expect(lines[1]).toContain(',15.2,12.4,18.1,%,4,,,8,,12,,');
  });

  it('leaves a withheld number empty', () => {
    const row = renderCsv(redact(makeReport({}, 600)))
      .split('\r\n')
      .find((line) => line.startsWith('heart-rate'))!;
    expect(row.split(',').slice(5, 9)).toEqual(['none', '', '', '']);
  });
});
