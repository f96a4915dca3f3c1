import { foreignText } from '../words/sentence.ts';

/** What each part of a case is; the first part of a file's path tells which it is. */
const parts: Readonly<Record<string, string>> = {
  'report.html': 'the report: the evidence for every question, and its innocent explanations',
  'report.json': 'the same report for programs',
  'letter.txt': 'the letter to the rider, as it was drafted',
  recordings: 'the recordings, as they were handed in',
  facts: "the rider's facts, as they were handed in",
  history: "the rider's earlier rides, as they were handed in",
  'seen-together.txt': 'what only the event as a whole shows',
  'decisions.json': 'what was asked, answered and decided, and by whom',
  rules: "the event's own rules, which are laid over the shipped ones",
};

export interface Case {
  readonly number: string;
  readonly event: string;
  /** Paths of everything else in the folder. */
  readonly files: readonly string[];
  /** The folder of the event's own rules, from the case's; null where it has none. */
  readonly rules: string | null;
}

/** What the folder of a case holds, and how its report can be made again from it. */
export function caseReadme({ number, event, files, rules }: Case): string {
  const there = Object.keys(parts).filter((part) =>
    files.some((file) => file === part || file.startsWith(`${part}/`)),
  );
  const again = `wattassay verify report.json .${rules === null ? '' : ` --rules ${rules}`}`;
  return [
    `Rider ${number}: ${foreignText(event)}`,
    '',
    'Both sides argue from these files. They name no other rider. They hold health data: they are for the rider',
    'and for those who decide, and for nobody else.',
    '',
    ...there.map((part) => `  ${part.padEnd(19)}${parts[part]}`),
    `  ${'SHA256SUMS'.padEnd(19)}a checksum of every file: sha256sum -c SHA256SUMS`,
    ...(there.includes('report.json')
      ? [
          '',
          'Anyone can make the report again from these files, and see that it is the same:',
          '',
          `  ${again}`,
        ]
      : ['', 'There is no report: this submission could not be audited.']),
    '',
  ].join('\n');
}
