// The program under load, to be killed: node child.ts <data folder> <seed>. Says each commit before the next begins.
import { join } from 'node:path';
import { createService } from '../../../src-main/service/service.ts';
import { DATABASE_NAME } from '../../../src-main/service/records/data-folder.ts';
import { mulberry32 } from '../../support/random.ts';
import { filesOf, pickOp, type Load } from './load.ts';
import { say, stateOf } from './protocol.ts';

const [folder = '', seed = '0'] = process.argv.slice(2);
const file = join(folder, DATABASE_NAME);
const gate = await createService({ dataDir: folder, version: '0.0.0' });
const load: Load = { gate, folder, file, random: mulberry32(Number(seed)) };

const left = ['', 'backups', 'exports', 'incoming']
  .flatMap((name) => filesOf(join(folder, name)))
  .filter((name) => /\.(part|restore|import|new)(-wal|-shm|-journal)?$|\.looked-at-|\/incoming\//.test(name));
say({ is: 'opened', ...stateOf(file), left });

for (;;) {
  const op = pickOp(load.random());
  const edit = await op.find(load);
  if (edit === null) continue;
  const { back, saves, run } = edit;
  say({ is: 'doing', op: op.name, back, ...(saves === undefined ? {} : { saves }) });
  await run();
  say({ is: 'done', op: op.name, ...stateOf(file) });
}
