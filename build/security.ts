import { LOOPBACK_POLICY } from '../src-main/browser-host/loopback-policy.ts';
import { SECURITY_POLICY } from '../src-main/electron-host/policy/security-policy.ts';

// `npm run security`: both tables of what is done against whom, and what proves it.
type Proof = { tested: string; test: string } | { stated: string };

const proofText = (proof: Proof): string =>
  'stated' in proof ? `not tested: ${proof.stated}` : `${proof.tested}, "${proof.test}"`;

const lines = [
  'Electron’s published security checklist, 20 points',
  ...SECURITY_POLICY.map(
    ({ point, asks, met, proof }) =>
      `${String(point).padStart(4)}  ${asks}\n        ${met}\n        ${proofText(proof)}`,
  ),
  '',
  'The loopback host',
  ...LOOPBACK_POLICY.map(
    ({ attacker, met, proof }, i) =>
      `${String(i + 1).padStart(4)}  ${attacker}\n        ${met}\n        ${proofText(proof)}`,
  ),
];
process.stdout.write(`${lines.join('\n')}\n`);
