/** The characters alone: for media that escape for themselves. */
export declare function showable(text: string): string;
/**
 * For a terminal or a log. Continuous-integration logs take `::name::` and `##[name]` as commands, also
 * behind spaces: a space inside takes that power away and leaves them readable.
 */
export declare function clean(text: string): string;
/** At most `most` characters, counted as a reader counts them, the cut marked. */
export declare function shorten(text: string, most: number): string;
