/**
 * Digest of the built program, which the build puts in the place of these words: two builds of one version may
 * judge differently, and what the one found must not be taken over by the other. No output of an audit shows it.
 */
export const program = 'put-in-by-the-build';
