import { deflateSync, crc32 } from 'node:zlib';

function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/** A whole PNG of one grey, which a browser can show. @param claimed what its header says instead of the truth */
export function png(width: number, height: number, claimed = { width, height }): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(claimed.width, 0);
  header.writeUInt32BE(claimed.height, 4);
  header.set([8, 0, 0, 0, 0], 8);
  const rows = Buffer.alloc(height * (width + 1), 0x80);
  for (let y = 0; y < height; y++) rows[y * (width + 1)] = 0;
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** The headers of a JPEG: an application segment, then the frame (progressive or not). */
export function jpeg(width: number, height: number, frame = 0xc0): Buffer {
  const size = Buffer.alloc(4);
  size.writeUInt16BE(height, 0);
  size.writeUInt16BE(width, 2);
  return Buffer.concat([
    Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0x00, 0x04, 0xff, 0xc0]),
    Buffer.from([0xff, 0xff, frame, 0x00, 0x0b, 0x08]),
    size,
    Buffer.from([0x01, 0x01, 0x11, 0x00]),
  ]);
}

export const address = (bytes: Buffer, type = 'image/png') =>
  `data:${type};base64,${bytes.toString('base64')}`;
