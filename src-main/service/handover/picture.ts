import { jpegSize, pngSize, type Size } from './picture-size.ts';

/** The letterhead's picture must be small: it is in every document, and in the history of undo. */
export const MAX_PICTURE_BYTES = 700_000;
/** Pixels either way. A small file may unpack to gigabytes; 45 × 16 mm of paper need about 1,100. */
export const MAX_PICTURE_SIDE = 4_096;

/** First bytes of the kinds that are taken. No SVG: a script could hide in it. */
const KINDS: readonly {
  type: string;
  starts: readonly number[];
  size: (bytes: Uint8Array) => Size | null;
}[] = [
  { type: 'image/png', starts: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], size: pngSize },
  { type: 'image/jpeg', starts: [0xff, 0xd8, 0xff], size: jpegSize },
];

/** A picture was refused; says what is taken. */
export class PictureError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'PictureError';
  }
}

/**
 * Bytes of a PNG or JPEG → a `data:` address for the page. What it is, its first bytes say, not its name.
 * @throws PictureError
 */
export function pictureData(bytes: Uint8Array): string {
  if (bytes.length > MAX_PICTURE_BYTES) {
    throw new PictureError(
      `The picture has ${String(Math.ceil(bytes.length / 1000))} kB; a letterhead’s has at most ${String(MAX_PICTURE_BYTES / 1000)}. Make it smaller.`,
    );
  }
  const kind = KINDS.find(({ starts }) => starts.every((byte, i) => bytes[i] === byte));
  const size = kind?.size(bytes) ?? null;
  if (!kind || size === null) {
    throw new PictureError('The picture is no whole PNG or JPEG. Save it as one of these.');
  }
  const { width, height } = size;
  if (width < 1 || height < 1 || width > MAX_PICTURE_SIDE || height > MAX_PICTURE_SIDE) {
    throw new PictureError(
      `The picture is ${String(width)} × ${String(height)} pixels; at most ${String(MAX_PICTURE_SIDE)} either way are taken. Make it smaller.`,
    );
  }
  return `data:${kind.type};base64,${Buffer.from(bytes).toString('base64')}`;
}

/** The bytes of a `data:` address in base64. */
export function pictureBytes(address: string): Uint8Array {
  return Buffer.from(address.slice(address.indexOf(',') + 1), 'base64');
}
