import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { openChromiumPipe } from '../../../../src-main/host/chromium/chromium-pipe.ts';

const open = () => {
  const [to, from] = [new PassThrough(), new PassThrough()];
  const sent: string[] = [];
  to.setEncoding('utf8').on('data', (text: string) => sent.push(text));
  return { pipe: openChromiumPipe(to, from), from, sent };
};
const tick = () => new Promise<void>((resolve) => setImmediate(resolve));

describe('chromium pipe', () => {
  it('matches answers to commands, in whatever order and pieces they come', async () => {
    const { pipe, from, sent } = open();
    const first = pipe.send('A.one', { x: 1 });
    const second = pipe.send('A.two', {}, 'tab');
    await tick();
    expect(sent.join('')).toBe(
      '{"id":1,"method":"A.one","params":{"x":1}}\0{"id":2,"method":"A.two","params":{},"sessionId":"tab"}\0',
    );
    from.write('{"method":"Some.event"}\0{"id":2,"result":{"b"');
    from.write(':2}}');
    from.write('\0{"id":1,"result":{"a":"ü"}}\0');
    expect(await second).toEqual({ b: 2 });
    expect(await first).toEqual({ a: 'ü' });
  });
  it('puts a letter together that was cut between two pieces', async () => {
    const { pipe, from } = open();
    const answer = pipe.send('A');
    const bytes = Buffer.from('{"id":1,"result":{"a":"°"}}\0');
    const cut = bytes.indexOf(0xc2) + 1;
    from.write(bytes.subarray(0, cut));
    await tick();
    from.write(bytes.subarray(cut));
    expect(await answer).toEqual({ a: '°' });
  });
  it('fails what Chromium refuses, and everything once it is gone', async () => {
    const { pipe, from } = open();
    const refused = pipe.send('A');
    const open2 = pipe.send('B');
    from.write('{"id":1,"error":{"message":"no such method"}}\0');
    await expect(refused).rejects.toThrow('no such method');
    from.destroy();
    await expect(open2).rejects.toThrow('Chromium has ended.');
    await expect(pipe.send('C')).rejects.toThrow('Chromium has ended.');
  });
});
