import {
  OPENED_EVENT,
  type CallAnswer,
  type CallRequest,
  type Gate,
  type HostEvent,
} from '../contract/gate.ts';
import { createAfterAnswer } from './answers/after-answer.ts';
import { createAnswerer } from './answers/answerer.ts';
import { readCatalogue } from './records/catalogue.ts';
import { dispatcher } from './dispatch.ts';
import type { Context, HostServices } from './handler.ts';
import { createPages } from './handover/pages.ts';
import { PrintError, type OpenPrinter } from './handover/printer.ts';
import { createWarmPrinter } from './handover/warm-printer.ts';
import { createJobs } from './answers/jobs.ts';
import { createSearch } from './search/index.ts';
import { createOpened } from './files/opened.ts';
import { createUploads } from './files/uploads.ts';
import { openRecords } from './records/records.ts';
import { takeUpload } from './files/upload.ts';

export type ServiceOptions = {
  /** The data folder, or ':memory:'. */
  dataDir: string;
  version: string;
  /** The built worker, where it is not the source file beside this one. */
  workerFile?: URL;
  /** How the host prints; without it nothing can be printed. */
  openPrinter?: OpenPrinter;
  /** Told of faults of the program, whose cause no answer carries. `what` is the call, or what else was being done. */
  onFault?: (error: unknown, what: string) => void;
  host?: HostServices;
};

/** The program without its window: records, answers, undo. Both hosts mount what it returns. */
export async function createService(options: ServiceOptions): Promise<Gate> {
  const { dataDir, version, workerFile, openPrinter = noPrinter, host, onFault = () => undefined } = options;
  const records = openRecords(dataDir);
  const uploads = createUploads(dataDir);
  const upload = (name: string, stream: AsyncIterable<Uint8Array>) => takeUpload(name, stream, uploads);
  const opened = createOpened(upload);
  const answerer = createAnswerer(workerFile ?? new URL('../worker/solve-worker.ts', import.meta.url));
  const listeners = new Set<(event: HostEvent) => void>();
  const emit = (event: HostEvent) => {
    for (const listener of listeners) {
      try {
        listener(event);
      } catch (error) {
        // The edit is kept, whoever could not be told of it.
        onFault(error, 'events');
      }
    }
  };
  const context: Context = {
    get db() {
      return records.db;
    },
    records,
    uploads,
    opened,
    answerer,
    jobs: createJobs(emit),
    afterAnswer: createAfterAnswer(),
    search: createSearch(),
    printer: createWarmPrinter(openPrinter),
    pages: createPages(),
    version,
    dataFolder: dataDir,
    host,
    catalogue: () => readCatalogue(records.db),
    now: () => new Date().toISOString(),
    today: localDay,
  };
  const dispatch = dispatcher(context, emit, onFault);
  return {
    call: (request: CallRequest): Promise<CallAnswer> => dispatch(request),
    upload,
    async open(file) {
      await opened.add(file);
      emit({ event: OPENED_EVENT, data: {} });
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    page: (id) => Promise.resolve(context.pages.find(id)),
    async close() {
      listeners.clear();
      await context.printer.close();
      await answerer.close();
      context.afterAnswer.settle();
      uploads.close();
      records.close();
    },
  };
}

function noPrinter(): never {
  throw new PrintError('This start of the program cannot print. Save another format.');
}

function localDay(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
