import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright';
import { findChromium } from '../find/find-chromium.mjs';

/** `node build/icons/draw.ts`: icon.png from icon.svg, after the drawing has been changed. */
const SIDE_PX = 512;
const svg = readFileSync(join(import.meta.dirname, 'icon.svg'), 'utf8');
const executablePath = findChromium();
if (executablePath === null) throw new Error('No Chromium was found: npm test installs it where it may.');

// Chromium's own sandbox does not work as root.
const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
const browser = await chromium.launch({ executablePath, args });
const page = await browser.newPage({ viewport: { width: SIDE_PX, height: SIDE_PX } });
await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`);
await page.screenshot({ path: join(import.meta.dirname, 'icon.png'), omitBackground: true });
await browser.close();
