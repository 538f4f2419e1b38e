import { Inflate } from "fflate";
import { FileRefusal, TOO_LARGE } from "../fileRefusal";
import { crc32 } from "./crc32";
import { type ZipEntry, zipDirectory } from "./zipDirectory";
import { valueAt } from "../../../reference/itemAt";

/** The parts of a file, unpacked when they are asked for. */
export interface Parts {
  readonly has: (name: string) => boolean;
  readonly text: (name: string) => string;
}

const MOST_BYTES = 100e6; // of all parts together
const MOST_READ = 2 * MOST_BYTES; // since a part may be referred to again and again
const MOST_PARTS = 2000;
const MOST_PACKED = 500; // times; a sheet of numbers packs to a tenth
const SMALL = 1e6; // bytes below which it does not matter how well a part packs
const CHUNK = 16384;
const HEADER = 0x04034b50;
const HEADER_SIZE = 30;
const STORED = 0;
const DEFLATED = 8;

const DAMAGED = "This file is damaged or was cut short.";

/** Opens a zip whose directory promises no more than a workbook may need. */
export function unzip(bytes: Uint8Array): Parts {
  const entries = zipDirectory(bytes);
  const total = entries.reduce((sum, { size }) => sum + size, 0);
  const isBomb = entries.some(({ size, packed }) => size > SMALL && size > packed * MOST_PACKED);
  if (total > MOST_BYTES || entries.length > MOST_PARTS || isBomb) throw new FileRefusal(TOO_LARGE);
  entries.forEach((entry) => checkHeader(bytes, entry));
  const byName = new Map(entries.map((entry) => [entry.name, entry]));
  let left = MOST_READ;
  return {
    has: (name) => byName.has(name),
    text: (name) => {
      const entry = valueAt(byName, name);
      left -= entry.size;
      if (left < 0) throw new FileRefusal(TOO_LARGE);
      return decoded(unpacked(bytes, entry));
    },
  };
}

/** A part's own header says its name again; where they differ, a part would be missing without a word. */
function checkHeader(bytes: Uint8Array, { name, at }: ZipEntry): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (at + HEADER_SIZE > bytes.length || view.getUint32(at, true) !== HEADER) throw new FileRefusal(DAMAGED);
  const from = at + HEADER_SIZE;
  const own = new TextDecoder().decode(bytes.subarray(from, from + view.getUint16(at + 26, true)));
  if (own !== name) throw new FileRefusal(DAMAGED);
}

function unpacked(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const from = entry.at + HEADER_SIZE + view.getUint16(entry.at + 26, true) + view.getUint16(entry.at + 28, true);
  const packed = bytes.subarray(from, from + entry.packed);
  const part = entry.method === STORED ? packed : inflated(packed, entry);
  if (part.length !== entry.size || crc32(part) !== entry.crc) throw new FileRefusal(DAMAGED);
  return part;
}

/** Unpacks a piece at a time, and stops as soon as a part grows beyond what the directory promised. */
function inflated(packed: Uint8Array, { method, size }: ZipEntry): Uint8Array {
  if (method !== DEFLATED) throw new FileRefusal(DAMAGED);
  const part = new Uint8Array(size);
  let length = 0;
  const inflate = new Inflate((piece) => {
    if (length + piece.length > size) throw new FileRefusal(DAMAGED);
    part.set(piece, length);
    length += piece.length;
  });
  try {
    for (let at = 0; at < packed.length; at += CHUNK)
      inflate.push(packed.subarray(at, at + CHUNK), at + CHUNK >= packed.length);
  } catch (error) {
    throw error instanceof FileRefusal ? error : new FileRefusal(DAMAGED, { cause: error });
  }
  return part.subarray(0, length);
}

function decoded(part: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(part);
  } catch (error) {
    throw new FileRefusal("This file has a part that is no readable text.", { cause: error });
  }
}
