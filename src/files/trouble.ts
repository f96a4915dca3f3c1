/** What the operating system's refusal means to the one who reads it. */
export interface Trouble {
  readonly code: 'missing' | 'other';
  readonly what: string;
  readonly hint?: string;
}

const troubles: Readonly<Record<string, Trouble>> = {
  ENOENT: { code: 'missing', what: 'there is no such file or folder' },
  ENOTDIR: { code: 'missing', what: 'a part of the path is no folder' },
  EACCES: {
    code: 'other',
    what: 'permission is denied',
    hint: 'Look at the rights of the file and its folder',
  },
  EPERM: {
    code: 'other',
    what: 'the system does not permit it',
    hint: 'Look at the rights, and whether another program has the file open',
  },
  EBUSY: { code: 'other', what: 'another program is using it', hint: 'Close the file there first' },
  ELOOP: { code: 'other', what: 'it is a link', hint: 'Hand in the file itself' },
  EISDIR: { code: 'other', what: 'it is a folder, and a file is wanted' },
  ENAMETOOLONG: { code: 'other', what: 'its name is too long' },
  ENOSPC: { code: 'other', what: 'the disk is full', hint: 'Make room, or write to another disk' },
  EDQUOT: { code: 'other', what: 'your share of the disk is full', hint: 'Make room, or write elsewhere' },
  EROFS: { code: 'other', what: 'the disk can only be read', hint: 'Write to another place' },
  EEXIST: { code: 'other', what: 'it is there already' },
  ENOTEMPTY: { code: 'other', what: 'it is a folder, and a file is wanted' },
  ENXIO: { code: 'other', what: 'it is no ordinary file' },
  EMFILE: { code: 'other', what: 'too many files are open' },
  EIO: { code: 'other', what: 'the disk reports a fault' },
  EINVAL: { code: 'other', what: 'the system does not accept the name' },
  ERR_INVALID_ARG_VALUE: { code: 'other', what: 'the name holds a character that no file name can hold' },
};

/** The words for an error of the file system; null when it is none, and so a fault of the program. */
export function whyNot(error: unknown): Trouble | null {
  const code = (error as { code?: unknown } | null)?.code;
  return typeof code === 'string' && Object.hasOwn(troubles, code) ? troubles[code]! : null;
}
