import type { Settings } from '../../../src-main/contract/calls/program/program.ts';
import { applyLanguage, type LanguageChoice } from '../format/language.ts';
import { Live } from '../service/live.svelte.ts';
import type { Saved } from '../service/edits.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';

export type Theme = Settings['theme'];
export const THEMES: readonly Theme[] = ['system', 'light', 'lamp-lit'];

/** Read before the first paint, so that the window never shows another theme or language first. */
export class SettingsState {
  #records: Records;
  #first: Settings;
  #live: Live<'settings.read'>;

  constructor(records: Records, first: Settings) {
    this.#records = records;
    this.#first = first;
    this.#live = new Live({
      client: records.client,
      ticks: records.settingsTicks,
      name: 'settings.read',
      args: () => ({}),
    });
    $effect(() => applyTheme(this.theme));
    $effect(() => applyLanguage(this.language));
  }

  get theme(): Theme {
    return (this.#live.value ?? this.#first).theme;
  }

  get language(): LanguageChoice {
    return (this.#live.value ?? this.#first).language;
  }

  async setLanguage(language: LanguageChoice): Saved {
    const done = await this.#records.edit('settings.update', { language });
    return done.ok ? null : fieldMessage(done.error);
  }

  async setTheme(theme: Theme): Promise<void> {
    await this.#records.edit('settings.update', { theme });
  }
}

export function applyTheme(theme: Theme): void {
  document.documentElement.dataset['theme'] = theme;
}
