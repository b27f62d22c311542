import { describe, expect, it } from 'vitest';
import { jpegSize, pngSize } from '../../../../src-main/service/handover/picture-size.ts';
import {
  MAX_PICTURE_BYTES,
  MAX_PICTURE_SIDE,
  pictureBytes,
  pictureData,
  PictureError,
} from '../../../../src-main/service/handover/picture.ts';
import { jpeg, png } from './pictures.ts';

describe('letterhead picture', () => {
  it('becomes a data address of what its bytes are, and back', () => {
    const bytes = png(3, 2);
    expect(pictureData(bytes)).toMatch(/^data:image\/png;base64,iVBORw0KGgo/);
    expect(pictureBytes(pictureData(bytes))).toEqual(bytes);
    expect(pictureData(jpeg(40, 30))).toMatch(/^data:image\/jpeg;base64,/);
  });

  it('its size is read from its header, past whatever stands before', () => {
    expect(pngSize(png(7, 5))).toEqual({ width: 7, height: 5 });
    // The segment before the frame holds what looks like one.
    expect(jpegSize(jpeg(640, 480))).toEqual({ width: 640, height: 480 });
    expect(jpegSize(jpeg(640, 480, 0xc2))).toEqual({ width: 640, height: 480 });
  });

  it('a header that is cut off is refused, wherever it is cut', () => {
    for (const [whole, header] of [
      [png(3, 2), 24],
      [jpeg(3, 2), 18],
    ] as const) {
      for (let end = 0; end < header; end++) {
        const cut = whole.subarray(0, end);
        expect(pngSize(cut)).toBeNull();
        expect(() => pictureData(cut)).toThrow(PictureError);
      }
    }
    expect(jpegSize(Buffer.from([0xff, 0xd8, 0xff, 0xda, 0, 4, 0, 0, 0, 0, 0, 0]))).toBeNull();
    expect(jpegSize(Buffer.alloc(40, 0xff))).toBeNull();
  });

  it('is refused when it is no picture, may hold script, or is too large to keep or to unpack', () => {
    expect(() => pictureData(Buffer.from('<svg onload="x"/>'))).toThrow(/no whole PNG or JPEG/);
    expect(() => pictureData(Buffer.from('GIF89a'))).toThrow(/no whole PNG or JPEG/);
    const large = Buffer.concat([png(2, 2), Buffer.alloc(MAX_PICTURE_BYTES)]);
    expect(() => pictureData(large)).toThrow(/701 kB.*at most 700/);
    const bomb = png(1, 1, { width: 100_000, height: 100_000 });
    expect(() => pictureData(bomb)).toThrow(/100000 × 100000 pixels; at most 4096/);
    expect(() => pictureData(png(0, 0))).toThrow(/0 × 0/);
    expect(() => pictureData(jpeg(MAX_PICTURE_SIDE + 1, 3))).toThrow(PictureError);
    expect(pictureData(jpeg(MAX_PICTURE_SIDE, 3))).toMatch(/^data:/);
  });
});
