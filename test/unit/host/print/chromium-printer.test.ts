import { describe, expect, it } from 'vitest';
import { openChromiumPrinter } from '../../../../src-main/host/print/chromium-printer.ts';
import { headlessArguments } from '../../../../src-main/host/print/headless-arguments.ts';
import { PrintError } from '../../../../src-main/service/handover/printer.ts';

describe('chromium printer', () => {
  it('says what to install where there is no Chromium', () => {
    expect(() => openChromiumPrinter({ chromium: null })).toThrow(PrintError);
    expect(() => openChromiumPrinter({ chromium: null })).toThrow(
      /apt-get install chromium.*LOFTLEDGER_CHROMIUM/,
    );
  });
  it('runs without network, and without a sandbox only as root', () => {
    const words = headlessArguments({ profile: '/p', asRoot: false });
    expect(words).toContain('--proxy-server=http://127.0.0.1:1');
    expect(words).toContain('--disable-background-networking');
    expect(words).not.toContain('--no-sandbox');
    expect(headlessArguments({ profile: '/p', asRoot: true })).toContain('--no-sandbox');
  });
  it('fails with the program’s own words where it does not start', async () => {
    const printer = openChromiumPrinter({ chromium: '/no/such/chromium' });
    await expect(printer.print('x')).rejects.toThrow(/could not be made/);
    await printer.close();
  });
});
