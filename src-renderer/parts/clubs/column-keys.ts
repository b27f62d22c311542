/**
 * Enter goes down a column of the ledger and Shift+Enter up, as in a spreadsheet.
 * @returns the field to go to, or null where the column ends or the key is another.
 */
export function nextInColumn(event: KeyboardEvent, table: HTMLElement): HTMLElement | null {
  const from = event.target;
  if (event.key !== 'Enter' || !(from instanceof HTMLElement)) return null;
  const { column } = from.dataset;
  if (column === undefined) return null;
  const fields = [...table.querySelectorAll<HTMLElement>(`[data-column="${CSS.escape(column)}"]`)];
  return fields[fields.indexOf(from) + (event.shiftKey ? -1 : 1)] ?? null;
}
