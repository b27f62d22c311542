import type { CallAnswer } from '../../../src-main/contract/gate.ts';
import { shown, Wrong } from './target.ts';

/** What any answer of the gate must be: plain JSON, and no fault of ours. @throws Wrong */
export function checkAnswer(answer: CallAnswer, input: unknown): void {
  JSON.stringify(answer);
  if (answer.ok) return;
  const { kind, message, refusals = [] } = answer.error;
  if (kind === 'bug') throw new Wrong(`a fault of the program: ${shown(answer.error)}`, input);
  if (message.trim() === '') throw new Wrong('refused without a word', input);
  if (message.length > 20_000) throw new Wrong(`a message of ${String(message.length)} characters`, input);
  if (/\/(?:tmp|home|root)\/|\bat .+:\d+:\d+|node_modules/.test(message)) {
    throw new Wrong(`the inside shows: ${message}`, input);
  }
  for (const refusal of refusals) {
    for (const part of ['path', 'message', 'remedy'] as const) {
      if (refusal[part].trim() === '')
        throw new Wrong(`a refusal without its ${part}: ${shown(refusal)}`, input);
    }
  }
}
