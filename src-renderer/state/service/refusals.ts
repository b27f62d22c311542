import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Refusal } from '../../../src-main/contract/refusal.ts';
import { words } from '../../words/index.ts';
import { refusedPlace, within } from './refused-place.ts';

/** What is wrong with a value, and the remedy. */
export function refusalText({ message, remedy }: Pick<Refusal, 'message' | 'remedy'>): string {
  const { said } = words.refused;
  return `${sentence(said(message))} ${said(remedy)}`;
}

/** What to say beside a field. */
export function fieldMessage(error: CallError): string {
  const first = error.refusals?.[0];
  return first ? refusalText(first) : words.refused.said(error.message);
}

/** What to say where no field is: the first line alone, since the places follow it as a list. */
export function headMessage(error: CallError): string {
  const { message, refusals = [] } = error;
  return words.refused.said(refusals.length > 0 ? (message.split('\n')[0] ?? '') : message);
}

/** What to say in one line away from any field: where, what is wrong, and the remedy. */
export function lineMessage(error: CallError): string {
  const place = error.refusals?.[0] ? refusedPlace(error.refusals[0]) : null;
  return place === null ? fieldMessage(error) : within(place, fieldMessage(error));
}

/** Refusals are written to follow a path and a colon: small first letter, no full stop. */
export function sentence(text: string): string {
  const first = text.charAt(0).toLocaleUpperCase() + text.slice(1);
  return /[.!?…]$/.test(first) ? first : `${first}.`;
}
