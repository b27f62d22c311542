import { join } from 'node:path';
import { extractFile, getRawHeader, type DirectoryRecord, type FileRecord } from '@electron/asar';

/** One file of the archive. `hash` is what the archive's header says that it is: SHA-256 in hex. */
export type PackedFile = { unpacked: boolean; hash: string | null; read: () => Buffer };

/** A packed program's archive: its files by name from the archive's root, with '/'. */
export type Packed = ReadonlyMap<string, PackedFile>;

/** @param resources the folder that app.asar is in */
export function readPacked(resources: string): Packed {
  const archive = join(resources, 'app.asar');
  const files = new Map<string, PackedFile>();
  addFolder(files, archive, '', getRawHeader(archive).header);
  return files;
}

function addFolder(
  files: Map<string, PackedFile>,
  archive: string,
  prefix: string,
  folder: DirectoryRecord,
): void {
  for (const [entry, record] of Object.entries(folder.files)) {
    const name = prefix === '' ? entry : `${prefix}/${entry}`;
    if ('files' in record) addFolder(files, archive, name, record);
    else files.set(name, packedFile(archive, name, record));
  }
}

function packedFile(archive: string, name: string, record: Partial<FileRecord>): PackedFile {
  return {
    unpacked: record.unpacked === true,
    hash: record.integrity?.hash ?? null,
    read: () => extractFile(archive, name),
  };
}

/** The packages in it, by name. */
export function packagesIn(packed: Packed): string[] {
  const names = [...packed.keys()].flatMap(
    (name) => /^(?:.*\/)?node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(name)?.[1] ?? [],
  );
  return [...new Set(names)].sort();
}
