import type { Recording } from '../types.ts';

/** What a format makes of a file's own bytes: everything but what the caller knows about the file. */
export type Parsed = Omit<Recording, 'name' | 'sha256' | 'format'>;
