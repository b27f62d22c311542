import { createContext, tick } from 'svelte';
import type { Settings } from '../../src-main/contract/calls/program/program.ts';
import { printPage } from './window/print-page.ts';
import { Aim } from './window/aim.svelte.ts';
import { AnswerState } from './answer.svelte.ts';
import { AssumptionsState } from './settings/assumptions.svelte.ts';
import { BesideState } from './beside/beside.svelte.ts';
import { BagState } from './bag/bag.svelte.ts';
import { CatalogueState } from './prices/catalogue.svelte.ts';
import { DiarySearch } from './roster/diary-search.svelte.ts';
import { DiaryState } from './bag/diary.svelte.ts';
import type { Client } from './service/client.ts';
import { Drawer } from './window/drawer.svelte.ts';
import { FindState } from './find/find.svelte.ts';
import type { SettingsGroup } from './find/commands.ts';
import { BESIDE_AIM, leadTo, NEW_NOTE_AIM, NEW_PLAYER_AIM, settingsAim } from './find/lead.ts';
import type { Place } from './find/found.ts';
import { FlightsState } from './ladder/flights.svelte.ts';
import { createFormats, type Formats } from './format/formats.ts';
import { BatchState } from './handover/batch.svelte.ts';
import { HandoverState } from './handover/handover.svelte.ts';
import { History } from './window/history.svelte.ts';
import { Intake } from './files/intake.svelte.ts';
import { localeFor } from './format/language.ts';
import type { Page } from './window/places.ts';
import { PriceBookState } from './prices/price-book.svelte.ts';
import { Records } from './service/records.svelte.ts';
import { RosterState } from './roster/roster.svelte.ts';
import { RosterBatch } from './roster/roster-batch.svelte.ts';
import { Route } from './window/route.svelte.ts';
import { SettingsState } from './settings/settings.svelte.ts';
import { SideState } from './side/side.svelte.ts';
import { lineMessage } from './service/refusals.ts';
import { words } from '../words/index.ts';
import { stepText } from './window/step-text.ts';
import { Toasts } from './window/toasts.svelte.ts';
import { WatchState } from './prices/watch.svelte.ts';

/** All state of the window, made once by app.svelte. */
export class Program {
  readonly records: Records;
  readonly route = new Route();
  readonly toasts = new Toasts();
  readonly drawer = new Drawer();
  readonly aim = new Aim();
  readonly find: FindState;
  readonly history: History;
  readonly settings: SettingsState;
  readonly assumptions: AssumptionsState;
  readonly roster: RosterState;
  readonly rosterBatch: RosterBatch;
  readonly bag: BagState;
  readonly diary: DiaryState;
  readonly diarySearch: DiarySearch;
  readonly answer: AnswerState;
  readonly flights: FlightsState;
  readonly side: SideState;
  readonly beside: BesideState;
  readonly handover: HandoverState;
  readonly batch: BatchState;
  readonly catalogue: CatalogueState;
  readonly priceBook: PriceBookState;
  readonly watch: WatchState;
  readonly intake: Intake;
  readonly isMac = /^Mac/.test(navigator.platform);

  #formats = $derived.by(() => {
    const language = words.language;
    return createFormats(localeFor(language, navigator.languages), language);
  });

  constructor(client: Client, settings: Settings) {
    const formats = () => this.formats;
    this.records = new Records(client);
    // Asked for first after a change, since it takes longest.
    this.answer = new AnswerState(this.records, this.route, formats);
    this.catalogue = new CatalogueState(this.records, formats);
    this.history = new History(this.records, this.toasts, (step) =>
      stepText(step, this.formats, (archetype) => this.catalogue.name(archetype)),
    );
    this.find = new FindState(this.records, this.route, formats);
    this.settings = new SettingsState(this.records, settings);
    this.assumptions = new AssumptionsState(this.records, this.drawer);
    this.roster = new RosterState(this.records, this.route, formats);
    this.rosterBatch = new RosterBatch(this.records);
    this.bag = new BagState(this.records, this.route);
    this.diary = new DiaryState(this.records, this.route, this.bag);
    this.diarySearch = new DiarySearch(this.records, this.route, this.roster);
    this.flights = new FlightsState(this.records, this.route, formats);
    this.side = new SideState(this.records, this.route, this.answer, formats);
    this.beside = new BesideState(this.records, this.route, formats);
    this.handover = new HandoverState(this.records, this.route, formats);
    this.batch = new BatchState(this.records, this.route, formats);
    this.priceBook = new PriceBookState(this.records, this.route, formats);
    this.watch = new WatchState(this.records, this.route, formats);
    this.intake = new Intake(this.records, this.route);
  }

  /** Of the language that is set now. */
  get formats(): Formats {
    return this.#formats;
  }

  /** Turns to a player's page and notes that it was looked at. */
  open({ playerId, bagId }: { playerId: number; bagId: number }, screen: Page): void {
    void this.turn(screen, bagId);
    void this.roster.look({ playerId });
  }

  /** By shortcut, tab or command: the new page's heading takes the focus, so that reading goes on there. */
  async turn(page: Page, bagId?: number | null): Promise<void> {
    this.aim.drop();
    this.route.go(page, bagId);
    await tick();
    document.getElementById('page-heading')?.focus({ preventScroll: true });
    scrollTo({ top: 0 });
  }

  /** Turns to something that was found. */
  lead(place: Place): Promise<void> {
    return leadTo(place, {
      bagId: this.route.bagId,
      turn: (page, bagId) => this.turn(page, bagId),
      look: (playerId) => void this.roster.look({ playerId }),
      showOnRoster: (name, archived) => {
        this.roster.search = name;
        this.roster.archived = archived;
      },
      showInBook: (archetype) => this.priceBook.show(archetype, this.catalogue.name(archetype)),
      showDiary: (playerId) => {
        this.diary.unfold(playerId);
        this.diary.showAll(playerId);
      },
      aim: (at) => this.aim.take(at),
    });
  }

  /** A player's diary, to write into. */
  async noteOn({ playerId, bagId }: { playerId: number; bagId: number }): Promise<void> {
    this.diary.unfold(playerId);
    void this.roster.look({ playerId });
    await this.turn('bag', bagId);
    this.aim.take(NEW_NOTE_AIM);
  }

  /** Turns to a bag's page "Side by side", where another is chosen to stand beside it. */
  async compare(bagId: number): Promise<void> {
    this.beside.turnOn(bagId);
    await this.turn('side', bagId);
    this.aim.take(BESIDE_AIM);
  }

  async newPlayer(): Promise<void> {
    await this.turn('players');
    this.roster.isNew = true;
    this.aim.take(NEW_PLAYER_AIM);
  }

  /** The drawer, and in it one of its groups, unfolded. */
  async openSettings(group?: SettingsGroup): Promise<void> {
    if (group !== undefined) this.drawer.show(group, true);
    this.drawer.open();
    await tick();
    if (group === undefined) document.getElementById('settings-heading')?.focus({ preventScroll: true });
    else this.aim.take(settingsAim(group));
  }

  /** The list of keys at the foot of every page. */
  showKeys(): void {
    const keys = document.querySelector<HTMLDetailsElement>('[data-keys]');
    if (keys === null) return;
    keys.open = true;
    keys.scrollIntoView({ block: 'nearest' });
    keys.querySelector('summary')?.focus({ preventScroll: true });
  }

  /** Prints the page that is open, or the document on it where it has one. */
  print(): void {
    if (!this.handover.print()) void printPage();
  }

  async openDemo(demo: 'invented-bag' | 'range-bag'): Promise<void> {
    const opened = await this.roster.openDemo(demo);
    if (opened.ok) this.open(opened.value, 'ladder');
    else this.toasts.say(lineMessage(opened.error));
  }
}

export const [getProgram, setProgram] = createContext<Program>();
