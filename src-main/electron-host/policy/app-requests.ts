import type { CallAnswer, Gate } from '../../contract/gate.ts';
import { ANSWER_HEADERS, pageHeaders } from '../../host/headers.ts';
import { readUploadName } from '../../host/requests.ts';
import type { StaticFile } from '../../host/static-files.ts';
import { APP_ORIGIN, isOwnUrl } from './urls.ts';

export type AppParts = {
  gate: Gate;
  files: ReadonlyMap<string, StaticFile>;
  onPainted: () => void;
  onFault: (error: unknown) => void;
};

/** 200 MiB, as on the browser host. */
const MOST_UPLOAD_BYTES = 200 * 1024 * 1024;

/**
 * What app:// answers: the files of the window, and the requests that both hosts take by address (/page, /upload and
 * /painted). Calls and events come by IPC instead.
 */
export async function answerAppRequest(request: Request, parts: AppParts): Promise<Response> {
  if (!isOwnUrl(request.url)) return refusal(404, 'There is no such page.');
  const { pathname, searchParams } = new URL(request.url);
  if (request.method === 'POST') {
    const origin = request.headers.get('origin');
    if (origin !== null && origin !== APP_ORIGIN) return refusal(403, 'Another origin may not ask this.');
    if (pathname === '/painted') {
      parts.onPainted();
      return answer(204, null, {});
    }
    if (pathname === '/upload') return answerUpload(request, searchParams, parts);
    return refusal(405, 'This method is not answered here.');
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refusal(405, 'This method is not answered here.');
  }
  if (pathname === '/page') {
    const page = await parts.gate.page(searchParams.get('id') ?? '');
    if (page === null) return refusal(404, 'This page is no more. Turn to Hand-over again.');
    return answer(200, request.method === 'HEAD' ? null : new Uint8Array(page.bytes), pageHeaders(page));
  }
  // The path is only ever a key of the table, so that no spelling of it leads elsewhere.
  const file = parts.files.get(pathname);
  if (file === undefined) return refusal(404, 'There is no such page.');
  const body = request.method === 'HEAD' ? null : new Uint8Array(file.bytes);
  return answer(200, body, { 'Content-Type': file.type });
}

async function answerUpload(request: Request, query: URLSearchParams, parts: AppParts): Promise<Response> {
  const name = readUploadName(query.get('name'));
  if (name === null) return refusal(400, 'Give the plain name of the file as ?name=….');
  if (request.headers.get('content-type') !== 'application/octet-stream') {
    return refusal(415, 'Send this as application/octet-stream.');
  }
  const tooLarge = new Error('over the limit');
  let isTooLarge = false;
  async function* counted(): AsyncGenerator<Uint8Array> {
    let read = 0;
    for await (const chunk of request.body ?? []) {
      read += chunk.length;
      if (read > MOST_UPLOAD_BYTES) {
        isTooLarge = true;
        throw tooLarge;
      }
      yield chunk;
    }
  }
  try {
    const result = await parts.gate.upload(name, counted());
    if (!isTooLarge) return json(200, result);
  } catch (error) {
    if (!isTooLarge) {
      parts.onFault(error);
      return json(500, {
        ok: false,
        error: { kind: 'bug', message: 'A fault in Loftledger. Nothing was kept.' },
      });
    }
  }
  return refusal(413, `At most ${String(MOST_UPLOAD_BYTES)} bytes are taken here.`);
}

function refusal(status: number, message: string): Response {
  return json(status, { ok: false, error: { kind: 'refused', message } });
}

function json(status: number, value: CallAnswer): Response {
  return answer(status, JSON.stringify(value), { 'Content-Type': 'application/json; charset=utf-8' });
}

function answer(
  status: number,
  body: string | Uint8Array<ArrayBuffer> | null,
  headers: Record<string, string>,
): Response {
  return new Response(body, { status, headers: { ...ANSWER_HEADERS, ...headers } });
}
