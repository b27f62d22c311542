import { settingsSchema, type Settings } from '../../../contract/calls/program/program.ts';
import type { Step } from '../../../contract/step.ts';
import { getSetting, setSetting } from '../../../../db/repositories/settings.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { history, redo, undo } from '../../../../db/undo/undo.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { stepOf } from '../../records/steps.ts';

export const programHandlers: Handlers<Subject<'history'> | Subject<'settings'> | Subject<'program'>> = {
  'history.state': ({ db }) => {
    const steps = history(db);
    return { undo: named(steps.undo[0]), redo: named(steps.redo[0]) };
  },
  'history.list': ({ db }) => {
    const steps = history(db);
    const dated = (step: { label: string; at: string }) => ({ ...stepOf(step.label), at: step.at });
    return { undo: steps.undo.map(dated), redo: steps.redo.map(dated) };
  },
  'history.undo': ({ db }) => named(undo(db)),
  'history.redo': ({ db }) => named(redo(db)),
  'settings.read': ({ db }) => readSettings(db),
  'settings.update': ({ db }, changes) => {
    for (const [key, value] of Object.entries(changes)) {
      if (value !== undefined) setSetting(db, `window.${key}`, value);
    }
    return readSettings(db);
  },
  'program.about': ({ version, dataFolder, host }) => ({
    version,
    dataFolder,
    host: host?.name ?? null,
    canOpenFolder: host?.openDataFolder != null,
  }),
  'program.openDataFolder': async ({ host }) => ({ opened: (await host?.openDataFolder?.()) ?? false }),
};

function named(step: { label: string } | null | undefined): Step | null {
  return step ? stepOf(step.label) : null;
}

function readSettings(db: Db): Settings {
  const { theme, language } = settingsSchema.shape;
  return {
    theme: theme.catch('system').parse(getSetting(db, 'window.theme')),
    language: language.catch('system').parse(getSetting(db, 'window.language')),
  };
}
