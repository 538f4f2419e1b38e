import { FileRefusal } from "../fileRefusal";
import { itemAt } from "../../../reference/itemAt";

/** One part of a zip, as its directory at the end of the file lists it. */
export interface ZipEntry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packed: number; // bytes
  readonly size: number; // bytes when unpacked, as the directory claims
  readonly at: number; // where its own header begins
}

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const END_SIZE = 22;
const ENTRY_SIZE = 46;
const LONGEST_COMMENT = 65535;
const ENCRYPTED = 1;
const ZIP64 = 0xffffffff;

const NOT_A_WORKBOOK = "This file is no .xlsx workbook.";
const DAMAGED = "This file is damaged or was cut short.";

/** Reads the directory, which says how large everything is before anything is unpacked. */
export function zipDirectory(bytes: Uint8Array): ZipEntry[] {
  refuseOthers(bytes);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  if (end === -1) throw new FileRefusal(DAMAGED);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: ZipEntry[] = [];
  for (let index = 0; index < count; index++) {
    if (at + ENTRY_SIZE > view.byteLength || view.getUint32(at, true) !== ENTRY) throw new FileRefusal(DAMAGED);
    const lengths = [28, 30, 32].map((offset) => view.getUint16(at + offset, true));
    if (view.getUint16(at + 8, true) & ENCRYPTED) throw new FileRefusal(ENCRYPTED_FILE);
    entries.push(entryAt(view, bytes, at, itemAt(lengths, 0)));
    at += ENTRY_SIZE + lengths.reduce((sum, length) => sum + length, 0);
  }
  return entries;
}

const ENCRYPTED_FILE = "This file is encrypted; save it without a password and open that.";

/** A workbook with a password, and one of the oldest format, lie in a container of another kind. */
function refuseOthers(bytes: Uint8Array): void {
  const begins = (...head: readonly number[]): boolean => head.every((byte, index) => bytes[index] === byte);
  if (begins(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1))
    throw new FileRefusal(
      "This file is encrypted or in the old .xls format; save it as an .xlsx workbook without a password and open that.",
    );
  if (!begins(0x50, 0x4b)) throw new FileRefusal(NOT_A_WORKBOOK);
}

function endOfDirectory(view: DataView): number {
  const last = view.byteLength - END_SIZE;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) if (view.getUint32(at, true) === END) return at;
  return -1;
}

function entryAt(view: DataView, bytes: Uint8Array, at: number, nameLength: number): ZipEntry {
  const long = (offset: number): number => view.getUint32(at + offset, true);
  const [packed, size, header] = [long(20), long(24), long(42)];
  if (at + ENTRY_SIZE + nameLength > bytes.length || [packed, size, header].includes(ZIP64))
    throw new FileRefusal(DAMAGED);
  return {
    name: new TextDecoder().decode(bytes.subarray(at + ENTRY_SIZE, at + ENTRY_SIZE + nameLength)),
    method: view.getUint16(at + 10, true),
    crc: long(16),
    packed,
    size,
    at: header,
  };
}
