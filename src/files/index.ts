export { checksum } from './checksum.ts';
export { refuseOutside } from './inside.ts';
export { limits } from './limits.ts';
export { checksumSafely, holdsSafely, readFileSafely } from './read.ts';
export { type Found, filesBelow, filesIn, isFolder } from './walk.ts';
export { whyUnwritable, writeWhole } from './write.ts';
