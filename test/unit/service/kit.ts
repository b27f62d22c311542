import { afterEach, beforeEach } from 'vitest';
import {
  calls,
  type CallArgs,
  type CallName,
  type CallResult,
} from '../../../src-main/contract/calls/index.ts';
import type { CallError, Gate } from '../../../src-main/contract/gate.ts';
import { createService, type ServiceOptions } from '../../../src-main/service/service.ts';
import { bagFile } from '../../support/bags.ts';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';

export type Service = {
  gate(): Gate;
  /** A call that must succeed; its result is checked against the contract. */
  call<K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>>;
  refused(name: string, args: unknown): Promise<CallError>;
  /** Takes a bag in; by default the usual one of `bagFile`. */
  open(file?: BagFile): Promise<{ playerId: number; bagId: number }>;
};

/** A service of its own for each test, on records in memory or where `dataDir` says. */
export function useService(
  dataDir: () => string = () => ':memory:',
  options: Pick<ServiceOptions, 'openPrinter'> = {},
): Service {
  let gate: Gate | null = null;
  const current = (): Gate => {
    if (gate === null) throw new Error('no service is open');
    return gate;
  };
  beforeEach(async () => {
    gate = await createService({ dataDir: dataDir(), version: '0.0.0-test', ...options });
  });
  afterEach(async () => {
    await current().close();
    gate = null;
  });
  const service: Service = {
    gate: current,
    async call<K extends CallName>(name: K, args: CallArgs<K>) {
      const answer = await current().call({ call: name, args });
      if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
      return calls[name].result.parse(answer.value) as CallResult<K>;
    },
    async refused(name, args) {
      const answer = await current().call({ call: name, args });
      if (answer.ok) throw new Error(`${name} was taken`);
      return answer.error;
    },
    open: (file = bagFile()) => service.call('players.importBag', { text: JSON.stringify(file) }),
  };
  return service;
}
