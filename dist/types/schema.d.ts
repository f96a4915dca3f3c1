import { Problem, type ProblemCode } from './problem.ts';
/** One thing that is wrong with a JSON value, before it is known in which file it stands. */
export interface Fault {
    /** Names of the fields that lead to it; items of a list by their place, counted from 1. */
    readonly path: readonly string[];
    /** A full sentence without the final stop. */
    readonly what: string;
    readonly hint?: string;
}
/** The schema of one kind of file: JSON Schema 2020-12. Its descriptions are part of the sentences. */
export type Schema = Readonly<Record<string, unknown>>;
/** Every fault that a schema finds in a value; none when it fits. Each schema is compiled once. */
export declare function faultsOf(schema: Schema, value: unknown): Promise<Fault[]>;
/** The value, when it fits; otherwise a problem that says every fault. */
export declare function fitting<T>(schema: Schema, value: unknown, code: ProblemCode, file: string): Promise<T>;
/** One problem for each fault. */
export declare function problemsOf(faults: readonly Fault[], code: ProblemCode, file: string): Problem[];
/** All faults of one file as one problem: the first in full, the rest counted. */
export declare function problemOf(faults: readonly Fault[], code: ProblemCode, file: string): Problem;
