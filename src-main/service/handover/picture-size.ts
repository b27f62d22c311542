/** In pixels. */
export type Size = { width: number; height: number };

/** From the header chunk, which PNG has first (ISO/IEC 15948, 11.2.2). Null where there is none. */
export function pngSize(bytes: Uint8Array): Size | null {
  if (bytes.length < 24 || String.fromCharCode(...bytes.subarray(12, 16)) !== 'IHDR') return null;
  const view = viewOf(bytes);
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

/** Segments without a length: restart and temporary markers (ITU-T T.81, table B.1). */
const isBare = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);
/** Start of frame, of whatever coding; C4, C8 and CC are other segments. */
const isFrame = (marker: number) =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** From the first frame's header (ITU-T T.81, B.2.2). Null where there is none before the picture's data. */
export function jpegSize(bytes: Uint8Array): Size | null {
  const view = viewOf(bytes);
  let at = 2;
  while (at + 9 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) at += 1;
    else if (isBare(marker)) at += 2;
    else if (isFrame(marker)) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    else if (marker === 0xda || marker === 0xd9) return null;
    else at += 2 + Math.max(2, view.getUint16(at + 2));
  }
  return null;
}

const viewOf = ({ buffer, byteOffset, byteLength }: Uint8Array) =>
  new DataView(buffer, byteOffset, byteLength);
