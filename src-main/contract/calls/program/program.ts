import { z } from 'zod';
import { stepSchema } from '../../step.ts';
import { read, write } from '../spec.ts';

/** And when, ISO time. */
const datedStep = stepSchema.extend({ at: z.string() });

export const settingsSchema = z.strictObject({
  theme: z.enum(['system', 'light', 'lamp-lit']),
  /** Of the window; system: the first that the machine's owner reads. */
  language: z.enum(['system', 'en', 'de']),
});
export type Settings = z.infer<typeof settingsSchema>;

export const programCalls = {
  /** What undo and redo would do next; null for nothing. */
  'history.state': read(
    z.strictObject({}),
    z.strictObject({ undo: stepSchema.nullable(), redo: stepSchema.nullable() }),
  ),
  /** All that can be taken back, and done again: the next one first. */
  'history.list': read(
    z.strictObject({}),
    z.strictObject({ undo: z.array(datedStep), redo: z.array(datedStep) }),
  ),
  /** What was taken back or done again; null when there was nothing. */
  'history.undo': write(z.strictObject({}), stepSchema.nullable()),
  'history.redo': write(z.strictObject({}), stepSchema.nullable()),
  'settings.read': read(z.strictObject({}), settingsSchema),
  'settings.update': write(settingsSchema.partial(), settingsSchema),
  'program.about': read(
    z.strictObject({}),
    z.strictObject({
      version: z.string(),
      dataFolder: z.string(),
      /** Which of the two hosts runs the window; none where something else asks the service. */
      host: z.enum(['electron', 'browser']).nullable(),
      /** The system has something to show the data folder with. */
      canOpenFolder: z.boolean(),
    }),
  ),
  /** Shows the data folder in the system's file manager; false where that did not work. Nothing is changed. */
  'program.openDataFolder': read(z.strictObject({}), z.strictObject({ opened: z.boolean() })),
};
