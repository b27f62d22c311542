import { count } from './plural.ts';

const REASONS: Record<string, string> = {
  'by-hand': 'made by hand',
  'before-import': 'before an import',
  'before-restore': 'before a restore',
  'before-upgrade': 'before an update',
};

/** Records, backups, and erasing, in the Settings drawer. */
export const keeping = {
  records: {
    folder: 'Data folder',
    folderNote: 'Everything is kept in this folder of this machine, and nothing leaves it.',
    openFolder: 'Open the folder',
    cannotOpen: 'It could not be opened from here. Copy its path instead.',
    copy: 'Copy the path',
    copied: 'The path is copied.',
    cannotCopy: 'It could not be copied. Select it and press Ctrl+C.',
    backups: 'Backups',
    backupsNote: 'The newest five are kept. One is made before every update, import and restore.',
    make: 'Back up now',
    made: 'A backup was made.',
    none: 'There is no backup yet.',
    columns: { when: 'When', why: 'Why', size: 'Size', more: 'More' },
    reasons: REASONS,
    size: (megabytes: string) => `${megabytes} MB`,
    restore: (when: string) => `Restore the backup of ${when}`,
    restoreShort: 'Restore',
    remove: (when: string) => `Delete the backup of ${when}`,
    removeShort: 'Delete',
    removed: 'The backup is deleted.',
    confirmRestore: {
      heading: (when: string) => `Go back to ${when}?`,
      text: 'All that was entered since is put aside: a backup of today is made first, and you can go back to it the same way.',
      restart: 'The window then begins anew, on the roster.',
      confirm: 'Restore it',
    },
    confirmRemove: {
      heading: (when: string) => `Delete the backup of ${when}?`,
      text: 'It is gone for good. The records of today stay as they are.',
      confirm: 'Delete it',
    },
    cancel: 'Cancel',
    restored: (when: string) => `The records are those of ${when} again.`,
    exportAll: 'Save all records as one file',
    exportNote:
      'A .loftledger file in the folder “exports”, without the undo history. It can be taken in on another machine.',
    exported: (file: string) => `Saved as ${file}.`,
    inMemory: 'These records are only in memory: they have no folder and no backups.',
  },

  erase: {
    note: 'Archiving keeps everything. Erasing takes a player’s bags, shots, plans and notes away, and the undo history of everybody.',
    player: 'Player',
    none: 'Nobody is on the roster.',
    choose: 'choose a player',
    archived: (name: string) => `${name} (archived)`,
    start: 'Erase …',
    confirm: {
      heading: (name: string) => `Erase ${name} for good?`,
      text: 'This cannot be taken back, not even by undo. Pain and notes are health data, so no trace is left in the records.',
      backups: (n: number) =>
        n === 0
          ? 'There is no backup that still holds this player.'
          : `${count(n, 'backup', 'backups')} made before may still hold this player:`,
      exports: 'Files that were saved or handed over are not touched.',
      withBackups: 'Delete these backups too',
      confirm: (name: string) => `Erase ${name}`,
      cancel: 'Keep the player',
    },
    done: (name: string) => `${name} is erased.`,
    left: (n: number) => `${count(n, 'backup is', 'backups are')} kept; see “Records and backups”.`,
    logKept: 'Another program is reading the records; the last traces go when it ends.',
  },
};
