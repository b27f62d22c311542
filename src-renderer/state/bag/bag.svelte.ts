import type { BagFile, ClubFile } from '../../../src-main/contract/formats/bag-file.ts';
import type { ClubPatch } from '../../../src-main/contract/calls/records/bags.ts';
import type { CallArgs, CallName, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { newClubId, rowAfter, type ClubKind } from './club-rows.ts';
import type { Band, Saved } from '../service/edits.ts';
import { isoToday } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';
import type { Route } from '../window/route.svelte.ts';

/** The open bag as its file would have it, and its edits. Every edit is kept at once; there is no "save". */
export class BagState {
  #records: Records;
  #route: Route;
  #live: Live<'bags.read'>;

  constructor(records: Records, route: Route) {
    this.#records = records;
    this.#route = route;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'bags.read',
      args: () => (route.bagId === null ? null : { bagId: route.bagId }),
      subject: ({ bagId }) => String(bagId),
    });
  }

  get bag(): BagFile | undefined {
    return this.#live.value?.bag;
  }

  get playerId(): number | undefined {
    return this.#live.value?.playerId;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  updatePlayer(patch: CallArgs<'players.update'>['patch']): Saved {
    const { playerId } = this;
    if (playerId === undefined) return Promise.resolve(null);
    return this.#save('players.update', { playerId, patch });
  }

  updateClub(clubId: string, patch: ClubPatch): Saved {
    return this.#save('bags.updateClub', { bagId: this.#bagId, clubId, patch });
  }

  /** @returns the new club's id, or what to say. */
  async addClub(kind: ClubKind, label: string): Promise<{ id: string } | { message: string }> {
    const clubs = this.bag?.clubs ?? [];
    const club: ClubFile = { id: newClubId(kind, clubs), kind, label };
    const before = rowAfter(kind, clubs);
    const message = await this.#save('bags.addClub', {
      bagId: this.#bagId,
      club,
      ...(before === undefined ? {} : { before }),
    });
    return message === null ? { id: club.id } : { message };
  }

  removeClub(clubId: string): Saved {
    return this.#save('bags.removeClub', { bagId: this.#bagId, clubId });
  }

  sellSet(setId: string, sell: Band | null): Saved {
    return this.#save('bags.sellSet', { bagId: this.#bagId, setId, sell });
  }

  /** A price that is typed in today was seen today. */
  setPrice(archetype: string, band: Band | null): Saved {
    const bagId = this.#bagId;
    if (band === null) return this.#save('bags.setPrice', { bagId, archetype, band });
    return this.#save('bags.setPrice', { bagId, archetype, band, seen: isoToday() });
  }

  setBudget(budget: BagFile['budget'] | null): Saved {
    return this.#save('bags.setBudget', { bagId: this.#bagId, budget: budget ?? null });
  }

  /** Null takes one of the costs out. */
  setCost(key: keyof NonNullable<BagFile['costs']>, value: number | null): Saved {
    const { [key]: _before, ...others } = this.bag?.costs ?? {};
    return this.#save('bags.setCosts', {
      bagId: this.#bagId,
      costs: value === null ? others : { ...others, [key]: value },
    });
  }

  setChangePutter(changePutter: boolean): Saved {
    return this.#save('bags.setChoices', { bagId: this.#bagId, changePutter });
  }

  /** What of the bag is in its currency. @throws CallFailed */
  amounts(): Promise<CallResult<'bags.amounts'>> {
    return this.#records.client.call('bags.amounts', { bagId: this.#bagId });
  }

  setUnits(change: Omit<CallArgs<'bags.setUnits'>, 'bagId'>): Saved {
    return this.#save('bags.setUnits', { bagId: this.#bagId, ...change });
  }

  get #bagId(): number {
    const { bagId } = this.#route;
    if (bagId === null) throw new Error('An edit without an open bag: a fault in Loftledger.');
    return bagId;
  }

  async #save<K extends CallName>(name: K, args: CallArgs<K>): Saved {
    const edited = await this.#records.edit(name, args);
    return edited.ok ? null : fieldMessage(edited.error);
  }
}
