/**
 * Every error that the program raises on purpose. A problem is not a bug: it says in one sentence
 * what is wrong, where, and what to do next. Anything else that is thrown is a fault of the program.
 */

export type ProblemCode =
  | 'usage' // a flag or argument makes no sense
  | 'file-missing'
  | 'file-refused' // a link, a device, a folder where a file is wanted, too large
  | 'file-unwritable'
  | 'format-unknown' // none of the formats we read
  | 'format-damaged' // ours, but nothing can be recovered
  | 'format-limits' // larger or deeper than we agree to read
  | 'no-records'
  | 'no-power'
  | 'facts-wrong' // rider, race or event file
  | 'profile-wrong'
  | 'rule-wrong'
  | 'report-wrong';

export interface ProblemParts {
  readonly code: ProblemCode;
  /** What is wrong: a full sentence without the final stop. */
  readonly what: string;
  /** File, and field or line in it. A stranger's string: escape it. */
  readonly where?: string;
  /** What to do next: a full sentence without the final stop. */
  readonly hint?: string;
}

export class Problem extends Error {
  override readonly name = 'Problem';
  readonly code: ProblemCode;
  readonly where: string | undefined;
  readonly hint: string | undefined;

  constructor(parts: ProblemParts) {
    super(parts.what);
    this.code = parts.code;
    this.where = parts.where;
    this.hint = parts.hint;
  }

  /** The same problem, placed: used where the name of the file is known, and only there. */
  at(where: string): Problem {
    return new Problem({
      code: this.code,
      what: this.message,
      where: this.where === undefined ? where : `${where} › ${this.where}`,
      ...(this.hint === undefined ? {} : { hint: this.hint }),
    });
  }
}

/** The problems that an error tells of, one or many; null where it is, or holds, a fault of the program. */
export function problemsIn(error: unknown): readonly Problem[] | null {
  const all: readonly unknown[] = error instanceof AggregateError ? error.errors : [error];
  const problems = all.filter((one) => one instanceof Problem);
  return problems.length === all.length ? problems : null;
}

/** "where: what. hint." in one line, for a log or a terminal. The caller cleans it for its medium. */
export function sentence(problem: Problem): string {
  const place = problem.where === undefined ? '' : `${problem.where}: `;
  const hint = problem.hint === undefined ? '' : ` ${stopped(problem.hint)}`;
  return `${place}${stopped(problem.message)}${hint}`;
}

function stopped(text: string): string {
  return /[.?!]$/.test(text) ? text : `${text}.`;
}
