import { MOST_BYTES, type IncomingKind } from '../../../src-main/contract/formats/incoming-kinds.ts';

/** The most that a file of such a name may hold, bytes: what is refused anyway need not be sent first. */
export function mostBytes(name: string): number {
  const ending = /\.([a-z]+)$/i.exec(name)?.[1]?.toLowerCase();
  const kind: IncomingKind =
    ending === 'json' ? 'bag' : ['csv', 'tsv', 'txt'].includes(ending ?? '') ? 'prices' : 'database';
  return MOST_BYTES[kind];
}

/** A name that both hosts take: of no folder, without control characters, at most 255 long; its ending stays. */
export function sentName(name: string): string {
  // eslint-disable-next-line no-control-regex
  const plain = name.toWellFormed().replace(/[\u0000-\u001f\u007f/\\]/g, '_');
  const short = plain.length > 255 ? `${plain.slice(0, 200)}…${plain.slice(-50)}` : plain;
  return /^\.*$/.test(short) ? 'file' : short;
}
