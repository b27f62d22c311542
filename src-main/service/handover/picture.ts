/** The letterhead's picture must be small: it is in every document. */
export const MAX_PICTURE_BYTES = 2 * 1024 * 1024;

/** First bytes of what a browser shows and no script can hide in (so no SVG). */
const KINDS: readonly { type: string; starts: readonly number[]; at?: number }[] = [
  { type: 'image/png', starts: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
  { type: 'image/jpeg', starts: [0xff, 0xd8, 0xff] },
  { type: 'image/gif', starts: [0x47, 0x49, 0x46, 0x38] },
  { type: 'image/webp', starts: [0x57, 0x45, 0x42, 0x50], at: 8 },
];

/** A picture was refused; says what is taken. */
export class PictureError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'PictureError';
  }
}

/**
 * Bytes of a PNG, JPEG, GIF or WebP → a `data:` address for the page. What it is, its first bytes say, not its name.
 * @throws PictureError
 */
export function pictureData(bytes: Uint8Array): string {
  if (bytes.length > MAX_PICTURE_BYTES) {
    throw new PictureError(
      `The picture has ${(bytes.length / 1024 / 1024).toFixed(1)} MB; a letterhead's has at most 2. Make it smaller.`,
    );
  }
  const kind = KINDS.find(({ starts, at = 0 }) => starts.every((byte, i) => bytes[at + i] === byte));
  if (!kind) throw new PictureError('The picture is no PNG, JPEG, GIF or WebP. Save it as one of these.');
  return `data:${kind.type};base64,${Buffer.from(bytes).toString('base64')}`;
}
