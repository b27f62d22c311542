// A process of its own for the tests of locks, first opening and kills: node db-child.ts <what> <path>.
// It prints one JSON line a thing done.
import { backupFolderOf, makeBackup } from '../../../db/files/backup.ts';
import { openDatabase } from '../../../db/open.ts';
import { createPlayer, updatePlayer } from '../../../db/repositories/bags/players.ts';
import { tryLock } from '../../../db/files/lock.ts';
import { undoable } from '../../../db/undo/undo.ts';
import { sayLine } from '../kill/protocol.ts';

const NOW = '2026-11-26T04:20:00.000Z';
const [what, path = ''] = process.argv.slice(2);
const stay = () => setInterval(() => undefined, 1000);

if (what === 'lock') {
  sayLine({ held: tryLock(path) !== null });
  stay();
} else if (what === 'open' || what === 'open-and-stay') {
  const { db, ...report } = openDatabase({ file: path, now: NOW });
  createPlayer(db, { name: String(process.pid), handicap: 1, handed: 'left', ground: 'firm' }, NOW);
  sayLine(report);
  if (what === 'open') db.close();
  else stay();
} else if (what === 'back-up') {
  const { db } = openDatabase({ file: path, now: NOW });
  sayLine(makeBackup(db, { dir: backupFolderOf(path), now: new Date().toISOString(), reason: 'by-hand' }));
  db.close();
} else if (what === 'write' || what === 'write-slowly') {
  const { db } = openDatabase({ file: path, now: NOW });
  // Each line stands for a commit that returned: what was said must be there afterwards.
  for (let n = 0; ; n += 1) {
    const step = { label: `add ${n}`, at: NOW };
    const id = undoable(db, step, () => {
      const player = createPlayer(db, { name: `p${n}`, handicap: 1, handed: 'left', ground: 'firm' }, NOW);
      updatePlayer(db, player, { missNote: 'x'.repeat(n % 3000) });
      return player;
    });
    sayLine({ id, notes: n % 3000 });
    if (what === 'write-slowly') Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 3);
  }
}
