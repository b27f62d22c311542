import type { CallRequest } from '../contract/gate.ts';

/** What both hosts check of a request before the gate sees it. */

/** The call's name is a short text, args are the service's to judge. */
export function asCallRequest(value: unknown): CallRequest | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return null;
  const { call, args, ...rest } = value as Record<string, unknown>;
  if (typeof call !== 'string' || !/^[A-Za-z][A-Za-z0-9._-]{0,79}$/.test(call)) return null;
  return Object.keys(rest).length === 0 ? { call, args } : null;
}

/** A file's own name, of no folder: it is only shown, but nobody should have to remember that. */
export function readUploadName(name: string | null): string | null {
  if (name === null || name === '' || name.length > 255 || !name.isWellFormed()) return null;
  // eslint-disable-next-line no-control-regex
  return /[\u0000-\u001f\u007f/\\]/.test(name) || /^\.+$/.test(name) ? null : name;
}

/** A name from the disk made into one that an upload may have; its ending stays. */
export function showableName(name: string): string {
  // eslint-disable-next-line no-control-regex
  const plain = name.toWellFormed().replace(/[\u0000-\u001f\u007f/\\]/g, '_');
  return readUploadName(plain.length > 255 ? `${plain.slice(0, 200)}…${plain.slice(-50)}` : plain) ?? 'file';
}
