import type { FileSource } from '../../contract/calls/program/incoming.ts';
import { csvText } from './csv.ts';
import type { Uploads } from './uploads.ts';

/** @throws StorageError 'missing' for an upload that is gone. */
export function bytesOf(uploads: Uploads, source: FileSource): Uint8Array {
  return 'text' in source ? new TextEncoder().encode(source.text) : uploads.read(source.upload);
}

/** A table's text. @throws RefusedInput for bytes that are none; StorageError 'missing' */
export function tableTextOf(uploads: Uploads, source: FileSource, what: string): string {
  return 'text' in source ? source.text : csvText(uploads.read(source.upload), what);
}
