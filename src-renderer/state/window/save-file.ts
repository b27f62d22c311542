/** Hands a text to the person as a file, through the browser's own download. */
export function saveFile(name: string, text: string, type = 'application/json'): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  saveFrom(url, name);
  // The download has begun by the next turn, and the text need not be held longer.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}

/** Hands what stands at an address of our own to the person as a file. */
export function saveFrom(address: string, name: string): void {
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
}
