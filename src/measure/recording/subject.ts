import type { Series, Subject, Subjects } from '../../types.ts';

/** The name of a recording among the subjects; charts need it, since their ids are unique in a report. */
export function subjectOf(all: Subjects, series: Series): Subject {
  const second = all.seconds.find((one) => one.series === series);
  return second?.subject.replace('pair:', 'second:') ?? 'primary';
}
