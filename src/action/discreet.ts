import { type Problem, sentence } from '../problem.ts';

/** Words that files of a submission are called by; everything else in a name may name somebody. */
const words =
  /^(primary|seconds?|riders?|history|profile|recordings?|submissions?|events?|results|decisions|fingerprints|rules?|grades|fit|tcx|gpx|csv|json|zip|gz|\d{1,6}|[a-z]\d{1,5})$/i;

/** Whether a path below the event's folder holds nothing but numbers and such words. */
export function namesNobody(place: string): boolean {
  return place.split(/[/\\._ -]+/).every((word) => word === '' || words.test(word));
}

/**
 * A problem in a sentence that is fit to publish: what somebody wrote into a file is not quoted, and a place is
 * shown as far as it can name nobody.
 */
export function discreetly(problem: Problem): string {
  const { code, where = '' } = problem;
  // Rules, and what the workflow itself gives, are the organiser's own words.
  if (code === 'usage' || code === 'rule-wrong' || code === 'file-unwritable') return sentence(problem);
  const [file = '', ...fields] = where.split(' › ');
  const organisers = !/[/\\]/.test(file);
  const place = organisers || namesNobody(file) ? file : 'a file of a submission';
  const known = fields.filter((field) => /^(riders|categories|line \d+|\d+)$/.test(field));
  return `${[place, ...known].join(' › ')}: ${whatIsWrong[code] ?? 'it cannot be used'}.`;
}

const whatIsWrong: Partial<Record<Problem['code'], string>> = {
  'file-missing': 'there is no such file or folder',
  'file-refused': 'it is a link, a folder, too large, or lies elsewhere',
  'facts-wrong': 'what stands there is not as it should be',
  'profile-wrong': 'this is no profile that can be read',
  'report-wrong': 'this is no record that can be read',
};
