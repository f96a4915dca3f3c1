/** One field that a change gave another value; undefined where it is not there. */
export interface Difference {
    readonly path: readonly string[];
    readonly before: unknown;
    readonly after: unknown;
}
/** Where two JSON values differ: fields by name, lists as a whole. */
export declare function differences(before: unknown, after: unknown, path?: readonly string[]): Difference[];
/** In whatever order their fields stand. */
export declare function sameJson(before: unknown, after: unknown): boolean;
