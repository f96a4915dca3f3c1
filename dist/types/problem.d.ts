/**
 * Every error that the program raises on purpose. A problem is not a bug: it says in one sentence
 * what is wrong, where, and what to do next. Anything else that is thrown is a fault of the program.
 */
export type ProblemCode = 'usage' | 'file-missing' | 'file-refused' | 'file-unwritable' | 'format-unknown' | 'format-damaged' | 'format-limits' | 'no-records' | 'no-power' | 'facts-wrong' | 'profile-wrong' | 'rule-wrong' | 'report-wrong';
export interface ProblemParts {
    readonly code: ProblemCode;
    /** What is wrong: a full sentence without the final stop. */
    readonly what: string;
    /** File, and field or line in it. A stranger's string: escape it. */
    readonly where?: string;
    /** What to do next: a full sentence without the final stop. */
    readonly hint?: string;
}
export declare class Problem extends Error {
    readonly name = "Problem";
    readonly code: ProblemCode;
    readonly where: string | undefined;
    readonly hint: string | undefined;
    constructor(parts: ProblemParts);
    /** The same problem, placed: used where the name of the file is known, and only there. */
    at(where: string): Problem;
}
/** The problems that an error tells of, one or many; null where it is, or holds, a fault of the program. */
export declare function problemsIn(error: unknown): readonly Problem[] | null;
/** "where: what. hint." in one line, for a log or a terminal. The caller cleans it for its medium. */
export declare function sentence(problem: Problem): string;
