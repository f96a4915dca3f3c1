/** `npm run docs`: makes the generated parts of the documents anew. */
import { readFileSync, writeFileSync } from 'node:fs';
import { documents, refreshed } from './documents.ts';

for (const file of documents) writeFileSync(file, refreshed(readFileSync(file, 'utf8')));
