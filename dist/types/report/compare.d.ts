import { type Difference } from '../differences.ts';
import type { Rule } from '../types.ts';
/** One thing in which a report differs from the one that its files give: a finding, a chart, a field. */
export interface Unlike {
    /** "findings", "grade" … and which of them, where there are several. */
    readonly kind: string;
    readonly item: string | null;
    readonly fields: readonly Difference[];
}
/** Where a report, which may be anybody's, differs from ours: item by item, what weighs most in front. */
export declare function compare(stated: unknown, ours: unknown): readonly Unlike[];
/**
 * Whether a difference may come from body mass, which a redacted report leaves out: then the checks that need it
 * can be made only by whoever knows it.
 */
export declare function mayRestOnMass(rules: readonly Rule[]): (unlike: Unlike) => boolean;
