const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest >>> 0;
});

/** The checksum that a zip keeps of each part (ISO 3309, as the zip format's published note takes it). */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (let index = 0; index < bytes.length; index++) rest = (rest >>> 8) ^ table[(rest ^ bytes[index]!) & 0xff]!;
  return (rest ^ 0xffffffff) >>> 0;
}
