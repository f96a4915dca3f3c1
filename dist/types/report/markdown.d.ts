import type { Report } from '../types.ts';
import { type Mermaid } from './mermaid.ts';
export interface MarkdownOptions {
    /** Most bytes of UTF-8, which no count of characters exceeds. */
    readonly limit: number;
}
/**
 * The report as GitHub-flavoured Markdown for a job summary or a comment: grade, table of findings, drawings,
 * what to do. Whole parts are left out, the least urgent first, to keep within the limit.
 */
export declare function renderMarkdown(report: Report, { limit }: MarkdownOptions): string;
/** Parts one behind another, as many as the bytes allow, with a sentence about what is left out. */
export declare function within(parts: readonly string[], limit: number): string;
/** Text that Markdown, HTML inside it, and GitHub's own links and mentions must leave as it is. */
export declare function text(words: string): string;
/** A stranger's words as code: a fence longer than any run of backticks inside. */
export declare function code(words: string): string;
/** A table of cells that are Markdown already. */
export declare function table(head: readonly string[], rows: readonly (readonly string[])[]): string;
/** A drawing for GitHub to render, with its legend as text. */
export declare function drawn({ source, legend }: Mermaid): string;
