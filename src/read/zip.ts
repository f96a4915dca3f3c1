import { Problem } from '../problem.ts';
import { type Budget, inflate, spend, tooLarge } from './inflate.ts';
import { limits } from './limits.ts';

/*
 * The part of ZIP that exports use (PKWARE APPNOTE 6.3): one disk, stored or deflated members, sizes below
 * 4 GiB. Sizes and places are taken from the central directory, for the headers before the members may
 * leave them out. Little-endian throughout.
 */
const endOfDirectory = { signature: 0x06054b50, size: 22, longestComment: 0xffff };
const directoryEntry = { signature: 0x02014b50, size: 46 };
const memberHeader = { signature: 0x04034b50, size: 30 };
const encrypted = 0x0001;
const utf8Name = 0x0800;
const stored = 0;
const deflated = 8;
const inZip64 = 0xffffffff;

export interface Member {
  readonly name: string;
  /** Bytes that it says it unpacks to. */
  readonly size: number;
  /** @throws Problem when it is encrypted, damaged, packed in a way we do not read, or beyond the budget. */
  unpack(budget: Budget): Promise<Uint8Array>;
}

/**
 * The files in a ZIP, in the order of its directory; folders are left out.
 *
 * @throws Problem `format-damaged` without a readable directory, `format-limits` with too many members.
 */
export function members(bytes: Uint8Array): Member[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (count > limits.archiveMembers) {
    throw new Problem({
      code: 'format-limits',
      what: `this ZIP holds ${count} files; at most ${limits.archiveMembers} are looked at`,
      hint: 'Split it into several',
    });
  }
  const found: Member[] = [];
  for (let i = 0; i < count; i++) {
    if (at + directoryEntry.size > bytes.length || view.getUint32(at, true) !== directoryEntry.signature) {
      throw damaged();
    }
    const nameLength = view.getUint16(at + 28, true);
    const member = readEntry(bytes, view, at, nameLength);
    if (!member.name.endsWith('/')) found.push(member);
    at += directoryEntry.size + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return found;
}

/** The end record stands last, before a comment of any length. */
function findEnd(view: DataView): number {
  const last = view.byteLength - endOfDirectory.size;
  for (let at = last; at >= Math.max(0, last - endOfDirectory.longestComment); at--) {
    if (view.getUint32(at, true) === endOfDirectory.signature) return at;
  }
  throw damaged();
}

function readEntry(bytes: Uint8Array, view: DataView, at: number, nameLength: number): Member {
  const flags = view.getUint16(at + 8, true);
  const method = view.getUint16(at + 10, true);
  const checksum = view.getUint32(at + 16, true);
  const packedSize = view.getUint32(at + 20, true);
  const size = view.getUint32(at + 24, true);
  const header = view.getUint32(at + 42, true);
  const nameAt = at + directoryEntry.size;
  const name = new TextDecoder((flags & utf8Name) === 0 ? 'windows-1252' : 'utf-8').decode(
    bytes.subarray(nameAt, nameAt + nameLength),
  );
  const unpack = async (budget: Budget): Promise<Uint8Array> => {
    if ((flags & encrypted) !== 0) throw refused('is encrypted', 'Pack it again without a password');
    if ([packedSize, size, header].includes(inZip64)) throw tooLarge('a file in this ZIP', budget.whole);
    if (method !== stored && method !== deflated) {
      throw refused(`is packed by a method (${method}) that is not read`, 'Pack it again as an ordinary ZIP');
    }
    const from = dataStart(view, header);
    const packed = bytes.subarray(from, from + packedSize);
    if (method === stored) spend(budget, packed.length);
    const unpacked = method === stored ? packed : await inflate(packed, 'deflate-raw', budget);
    if (unpacked.length !== size || crc32(unpacked) !== checksum) throw damaged();
    return unpacked;
  };
  return { name, size, unpack };
}

/** The member's own header repeats its name and may carry more: both are skipped. */
function dataStart(view: DataView, header: number): number {
  if (
    header + memberHeader.size > view.byteLength ||
    view.getUint32(header, true) !== memberHeader.signature
  ) {
    throw damaged();
  }
  return header + memberHeader.size + view.getUint16(header + 26, true) + view.getUint16(header + 28, true);
}

function damaged(): Problem {
  return new Problem({
    code: 'format-damaged',
    what: 'this ZIP is incomplete or damaged',
    hint: 'Download or pack it again',
  });
}

function refused(what: string, hint: string): Problem {
  return new Problem({ code: 'format-unknown', what: `the file in this ZIP ${what}`, hint });
}

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = (crc & 1) === 0 ? crc >>> 1 : (crc >>> 1) ^ 0xedb88320;
  return crc;
});

/** CRC-32 as RFC 1952 and APPNOTE define it (reflected polynomial EDB88320). */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) crc = (crc >>> 8) ^ crcTable[(crc ^ bytes[i]!) & 0xff]!;
  return (crc ^ 0xffffffff) >>> 0;
}
