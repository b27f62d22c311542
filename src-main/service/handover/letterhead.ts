import { z } from 'zod';
import type { Paper } from '../../contract/calls/answers/handover.ts';
import { deleteSetting, getSetting, setSetting } from '../../../db/repositories/settings.ts';
import type { Db } from '../../../db/sqlite.ts';
import { pictureBytes, pictureData, PictureError } from './picture.ts';

/** What stands above every document. Texts may be empty. `picture` is a `data:` address. */
export type Letterhead = { name: string; contact: string; paper: Paper | null; picture: string | null };

const KEY = 'handover.letterhead';
/** Apart from the texts, so that a change of these does not keep the picture in the history once more. */
const PICTURE_KEY = 'handover.picture';

const stored = z.object({
  name: z.string().catch(''),
  contact: z.string().catch(''),
  paper: z.enum(['a4', 'letter']).nullable().catch(null),
});

/** What was never set is empty; what an imported file set wrongly is as if it never was. */
export function readLetterhead(db: Db): Letterhead {
  const { name, contact, paper } = stored
    .catch({ name: '', contact: '', paper: null })
    .parse(getSetting(db, KEY));
  return { name, contact, paper, picture: checkedPicture(getSetting(db, PICTURE_KEY)) };
}

/** What is left out stays as it is. */
export function updateLetterhead(db: Db, patch: Partial<Omit<Letterhead, 'picture'>>): void {
  const { picture: _picture, ...before } = readLetterhead(db);
  const after = { ...before, ...patch };
  setSetting(db, KEY, { ...after, name: after.name.trim(), contact: after.contact.trim() });
}

/** @param address as `data:`; null for none. @throws PictureError */
export function setPicture(db: Db, address: string | null): void {
  if (address === null) deleteSetting(db, PICTURE_KEY);
  else setSetting(db, PICTURE_KEY, pictureData(pictureBytes(address)));
}

function checkedPicture(value: unknown): string | null {
  if (typeof value !== 'string' || !value.startsWith('data:')) return null;
  try {
    return pictureData(pictureBytes(value));
  } catch (error) {
    if (error instanceof PictureError) return null;
    throw error;
  }
}
