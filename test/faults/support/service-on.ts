import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import {
  calls,
  type CallArgs,
  type CallName,
  type CallResult,
} from '../../../src-main/contract/calls/index.ts';
import type { CallError, Gate } from '../../../src-main/contract/gate.ts';
import { DATABASE_NAME } from '../../../src-main/service/records/data-folder.ts';
import { createService } from '../../../src-main/service/service.ts';
import { bagFile } from '../../support/bags.ts';
import { stateOf } from '../kill/protocol.ts';

/** The service on a folder of its own, until the test ends. */
export async function serviceOn(folder: string) {
  const gate: Gate = await createService({ dataDir: folder, version: '0.0.0' });
  onTestFinished(() => gate.close());
  const file = join(folder, DATABASE_NAME);
  return {
    gate,
    file,
    state: () => stateOf(file).hash,
    async call<K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>> {
      const answer = await gate.call({ call: name, args });
      if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
      return calls[name].result.parse(answer.value) as CallResult<K>;
    },
    async refused(name: CallName, args: unknown): Promise<CallError> {
      const answer = await gate.call({ call: name, args });
      if (answer.ok) throw new Error(`${name} went through: ${JSON.stringify(answer.value)}`);
      return answer.error;
    },
  };
}

export type Service = Awaited<ReturnType<typeof serviceOn>>;

/** Through the gate, each with a long note. */
export async function addPlayers(service: Service, count: number): Promise<void> {
  for (let n = 0; n < count; n += 1) {
    const file = bagFile({}, { name: `Invented ${String(n)}`, missNote: 'n'.repeat(1900) });
    await service.call('players.importBag', { text: JSON.stringify(file) });
  }
}

/** Sends a file as the window does. @returns the id of the upload. */
export async function sendFile(gate: Gate, file: string, name = 'records.loftledger'): Promise<string> {
  const bytes = readFileSync(file);
  async function* stream() {
    yield bytes;
    await Promise.resolve();
  }
  const answer = await gate.upload(name, stream());
  if (!answer.ok) throw new Error(answer.error.message);
  return (answer.value as { upload: string }).upload;
}
