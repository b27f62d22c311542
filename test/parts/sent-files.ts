import type { WaitingFile } from '../../src-renderer/state/files/intake.svelte.ts';
import type { Client } from '../../src-renderer/state/service/client.ts';
import bag from '../../db/demo/invented-bag.json?raw';
import shots from '../../db/demo/shots-one-bag.csv?raw';
import { LONG } from './long.ts';

const renamed = (name: string) => bag.replace('Invented player: Rowan Ashdown', name);

/** A file of each kind, sent as the window sends it, with something wrong in each table. */
export async function sentFiles(client: Client) {
  let key = 0;
  const send = async (name: string, text: string): Promise<WaitingFile> => ({
    ...(await client.upload(new Blob([text]), name)),
    key: ++key,
    day: null,
  });
  return {
    bag: await send('a.json', renamed('Kay Invented')),
    longBag: await send(`${LONG.word}.json`, renamed(LONG.name)),
    wrongBag: await send('wrong.json', '{}'),
    prices: await send(
      'prices.csv',
      `archetype,price,currency,shelf\nhybrid-22-t3,45,GBP,1\n${LONG.word},1,GBP,2\n`,
    ),
    roster: await send('roster.csv', `name,handicap\n${LONG.name},1\nKay Invented,2\nBea,x\n`),
    shots: await send('shots.csv', shots.replace('270.8', '120.8').replace('262.3', 'x')),
    database: await send('other.loftledger', 'not a database at all'),
  };
}
