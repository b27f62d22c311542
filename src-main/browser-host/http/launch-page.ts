import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Carries the token to Chromium: a file that only this user can read, instead of an argument that every user of the
 * machine can read in the process list. The page goes on by itself.
 * @param folder private to the user (0700).
 * @returns the file.
 */
export function writeLaunchPage(folder: string, openUrl: string): string {
  const file = join(folder, 'launch.html');
  writeFileSync(file, movingPage(openUrl, 'Opening Loftledger'), { mode: 0o600, flag: 'wx' });
  return file;
}

/**
 * What /open answers: it sets the cookie and moves on to the window. A page and not a redirect: a Strict cookie would
 * be withheld on a redirect that a file or another site began, while a page of our own that moves on is same-site. By
 * meta refresh, which replaces the token's address in the history and needs no script.
 */
export function openedPage(): string {
  // Without an icon link Chromium asks for /favicon.ico, which nobody serves.
  return movingPage('/', 'Opening Loftledger', '<link rel="icon" href="/icon.svg">');
}

/** @param url of our own making: digits, letters and URL punctuation, nothing that HTML could misread. */
function movingPage(url: string, title: string, head = ''): string {
  if (!/^[A-Za-z0-9:/.?=_-]+$/.test(url))
    throw new Error('The launch address has a character that it never has.');
  return [
    '<!doctype html>',
    '<html lang="en">',
    `<meta charset="utf-8"><meta name="referrer" content="no-referrer">`,
    `<meta http-equiv="refresh" content="0;url=${url}">`,
    `<title>${title}</title>${head}`,
    `<p><a href="${url}">${title}</a></p>`,
    '</html>',
    '',
  ].join('\n');
}
