/** Where a note waits for the window that begins anew. */
const KEY = 'loftledger.note';

/** Other records took the place of those that the window shows: it begins anew, on the roster, and says so. */
export function beginAnew(note: string): void {
  sessionStorage.setItem(KEY, note);
  history.replaceState(null, '', '#/players');
  location.reload();
}

/** What the window before left to say; null for nothing. */
export function takeNote(): string | null {
  const note = sessionStorage.getItem(KEY);
  sessionStorage.removeItem(KEY);
  return note;
}
