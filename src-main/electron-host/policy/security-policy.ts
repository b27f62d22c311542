/**
 * Electron's published security checklist (docs/tutorial/security, "Checklist: Security recommendations", 20 points)
 * and how each is met here. `proof` says where: a test of ours, or why it needs none.
 */
export type PolicyPoint = {
  point: number;
  asks: string;
  met: string;
  /** `test` stands in a title of that file, or in the table that its tests are made of. */
  proof: { tested: string; test: string } | { stated: string };
};

const OPTIONS = 'test/unit/electron-host/window/window-options.test.ts';
const LOCKDOWN = 'test/unit/electron-host/policy/lockdown.test.ts';
const REQUESTS = 'test/unit/electron-host/policy/app-requests.test.ts';
const GATE = 'test/unit/electron-host/ipc-gate.test.ts';
const POLICY = 'test/unit/electron-host/policy/security-policy.test.ts';

export const SECURITY_POLICY: readonly PolicyPoint[] = [
  {
    point: 1,
    asks: 'Load only secure content',
    met: 'Nothing is loaded but app://loftledger from our own files; every other request is cancelled.',
    proof: { tested: LOCKDOWN, test: 'cancels a request of %s' },
  },
  {
    point: 2,
    asks: 'No Node.js integration for remote content',
    met: 'Off for the window, its frames and its workers; and there is no remote content.',
    proof: { tested: OPTIONS, test: "['nodeIntegration', false]" },
  },
  {
    point: 3,
    asks: 'Context isolation',
    met: 'On.',
    proof: { tested: OPTIONS, test: "['contextIsolation', true]" },
  },
  {
    point: 4,
    asks: 'Process sandboxing',
    met: 'On for the window, and app.enableSandbox() for whatever else there might be.',
    proof: { tested: OPTIONS, test: "['sandbox', true]" },
  },
  {
    point: 5,
    asks: 'Handle session permission requests',
    met: 'All refused: requests, look-ups, devices, screen capture.',
    proof: { tested: LOCKDOWN, test: 'refuses every permission' },
  },
  {
    point: 6,
    asks: 'Keep webSecurity on',
    met: 'On.',
    proof: { tested: OPTIONS, test: "['webSecurity', true]" },
  },
  {
    point: 7,
    asks: 'Content security policy',
    met: "default-src 'none' and 'self' per kind, as a header on every answer of app://.",
    proof: { tested: REQUESTS, test: 'serves the files of the window with all headers' },
  },
  {
    point: 8,
    asks: 'No allowRunningInsecureContent',
    met: 'Off.',
    proof: { tested: OPTIONS, test: "['allowRunningInsecureContent', false]" },
  },
  {
    point: 9,
    asks: 'No experimental features',
    met: 'Off.',
    proof: { tested: OPTIONS, test: "['experimentalFeatures', false]" },
  },
  {
    point: 10,
    asks: 'No enableBlinkFeatures',
    met: 'None.',
    proof: { tested: OPTIONS, test: "['enableBlinkFeatures', '']" },
  },
  {
    point: 11,
    asks: 'No allowpopups on webviews',
    met: 'The webview tag is off, and attaching one is prevented.',
    proof: { tested: LOCKDOWN, test: 'no webview is attached' },
  },
  {
    point: 12,
    asks: 'Verify webview options before creation',
    met: 'None can be created: will-attach-webview is always prevented.',
    proof: { tested: LOCKDOWN, test: 'no webview is attached' },
  },
  {
    point: 13,
    asks: 'Limit navigation',
    met: 'Only to app://loftledger, for top frames, other frames and redirects.',
    proof: { tested: LOCKDOWN, test: 'leads to no other page' },
  },
  {
    point: 14,
    asks: 'Limit creation of new windows',
    met: 'Always denied.',
    proof: { tested: LOCKDOWN, test: 'no window is opened' },
  },
  {
    point: 15,
    asks: 'No shell.openExternal with untrusted content',
    met: 'Only addresses of a fixed list, letter for letter; the list is empty.',
    proof: { tested: LOCKDOWN, test: 'nothing handed to the system' },
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
    proof: { tested: GATE, test: 'refuses %s without asking the gate' },
  },
  {
    point: 18,
    asks: 'A custom protocol instead of file://',
    met: 'app://, whose paths are keys of a table; file:// requests are cancelled.',
    proof: { tested: REQUESTS, test: 'answers no other host' },
  },
  {
    point: 19,
    asks: 'Check which fuses to change',
    met: 'FUSES below, set when packaging.',
    proof: { tested: POLICY, test: 'has the fuses as the design has them' },
  },
  {
    point: 20,
    asks: 'Expose no Electron APIs to untrusted web content',
    met: 'The preload exposes two functions of ours, and hands on no event object of Electron.',
    proof: {
      tested: 'test/unit/electron-host/preload.test.ts',
      test: 'exposes one object with two functions',
    },
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
