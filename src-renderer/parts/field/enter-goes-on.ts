export type EnterKey = Pick<
  KeyboardEvent,
  'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey' | 'isComposing'
>;

/**
 * Enter goes on through the fields of a form and Shift+Enter back, as down a column of the ledger, so that nothing is
 * sent before the rest was seen; in the last field it sends, and with Ctrl or ⌘ in any.
 * @param at place of the field that has the focus, of so many `fields`; −1 where none has it
 * @returns the place to go to; null leaves the key to the browser
 */
export function enterGoesOn(event: EnterKey, at: number, fields: number): number | 'send' | null {
  const { key, shiftKey, ctrlKey, metaKey, altKey, isComposing } = event;
  if (key !== 'Enter' || isComposing || altKey || at < 0) return null;
  if (ctrlKey || metaKey) return 'send';
  if (shiftKey) return Math.max(0, at - 1);
  return at + 1 < fields ? at + 1 : 'send';
}
