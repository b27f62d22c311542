/**
 * Electron's published security checklist (docs/tutorial/security, "Checklist: Security recommendations", 20 points)
 * and how each is met here. `proof` says where: a test of ours, or why it needs none.
 */
export type PolicyPoint = {
  point: number;
  asks: string;
  met: string;
  proof: { tested: string } | { stated: string };
};

const OPTIONS = 'test/unit/electron-host/window-options.test.ts';
const LOCKDOWN = 'test/unit/electron-host/lockdown.test.ts';
const REQUESTS = 'test/unit/electron-host/app-requests.test.ts';
const GATE = 'test/unit/electron-host/ipc-gate.test.ts';
const POLICY = 'test/unit/electron-host/security-policy.test.ts';

export const SECURITY_POLICY: readonly PolicyPoint[] = [
  {
    point: 1,
    asks: 'Load only secure content',
    met: 'Nothing is loaded but app://loftledger from our own files; every other request is cancelled.',
    proof: { tested: LOCKDOWN },
  },
  {
    point: 2,
    asks: 'No Node.js integration for remote content',
    met: 'Off for the window, its frames and its workers; and there is no remote content.',
    proof: { tested: OPTIONS },
  },
  { point: 3, asks: 'Context isolation', met: 'On.', proof: { tested: OPTIONS } },
  {
    point: 4,
    asks: 'Process sandboxing',
    met: 'On for the window, and app.enableSandbox() for whatever else there might be.',
    proof: { tested: OPTIONS },
  },
  {
    point: 5,
    asks: 'Handle session permission requests',
    met: 'All refused: requests, look-ups, devices, screen capture.',
    proof: { tested: LOCKDOWN },
  },
  { point: 6, asks: 'Keep webSecurity on', met: 'On.', proof: { tested: OPTIONS } },
  {
    point: 7,
    asks: 'Content security policy',
    met: "default-src 'none' and 'self' per kind, as a header on every answer of app://.",
    proof: { tested: REQUESTS },
  },
  { point: 8, asks: 'No allowRunningInsecureContent', met: 'Off.', proof: { tested: OPTIONS } },
  { point: 9, asks: 'No experimental features', met: 'Off.', proof: { tested: OPTIONS } },
  { point: 10, asks: 'No enableBlinkFeatures', met: 'None.', proof: { tested: OPTIONS } },
  {
    point: 11,
    asks: 'No allowpopups on webviews',
    met: 'The webview tag is off, and attaching one is prevented.',
    proof: { tested: LOCKDOWN },
  },
  {
    point: 12,
    asks: 'Verify webview options before creation',
    met: 'None can be created: will-attach-webview is always prevented.',
    proof: { tested: LOCKDOWN },
  },
  {
    point: 13,
    asks: 'Limit navigation',
    met: 'Only to app://loftledger, for top frames, other frames and redirects.',
    proof: { tested: LOCKDOWN },
  },
  {
    point: 14,
    asks: 'Limit creation of new windows',
    met: 'Always denied.',
    proof: { tested: LOCKDOWN },
  },
  {
    point: 15,
    asks: 'No shell.openExternal with untrusted content',
    met: 'Only addresses of a fixed list, letter for letter; the list is empty.',
    proof: { tested: LOCKDOWN },
  },
  {
    point: 16,
    asks: 'A current version of Electron',
    met: 'Exact version in package.json, raised with each release of ours.',
    proof: { stated: 'What is current changes by the day and is looked up at a release, not in a test.' },
  },
  {
    point: 17,
    asks: 'Validate the sender of all IPC messages',
    met: 'One channel; only the top frame of app://loftledger is answered.',
    proof: { tested: GATE },
  },
  {
    point: 18,
    asks: 'A custom protocol instead of file://',
    met: 'app://, whose paths are keys of a table; file:// requests are cancelled.',
    proof: { tested: REQUESTS },
  },
  {
    point: 19,
    asks: 'Check which fuses to change',
    met: 'FUSES below, set when packaging.',
    proof: { tested: POLICY },
  },
  {
    point: 20,
    asks: 'Expose no Electron APIs to untrusted web content',
    met: 'The preload exposes two functions of ours, and hands on no event object of Electron.',
    proof: { tested: 'test/unit/electron-host/preload.test.ts' },
  },
];

/** For the packaging. Cookie encryption is off because there are no cookies and it would ask for the keychain. */
export const FUSES = {
  RunAsNode: false,
  EnableCookieEncryption: false,
  EnableNodeOptionsEnvironmentVariable: false,
  EnableNodeCliInspectArguments: false,
  EnableEmbeddedAsarIntegrityValidation: true,
  OnlyLoadAppFromAsar: true,
  GrantFileProtocolExtraPrivileges: false,
} as const;
