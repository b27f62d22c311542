import type { App } from 'electron';

/**
 * Files that macOS hands over by an event instead of an argument: a double click, or a drop on the dock. The event may
 * come before anything is ready, so it is listened for at once and paths wait for whoever takes them.
 */
export type FileEvents = {
  /** From now on; what came before comes at once. */
  onFile(take: (file: string) => void): void;
};

export function listenForFiles(app: Pick<App, 'on'>): FileEvents {
  const waiting: string[] = [];
  let take = (file: string): void => void waiting.push(file);
  app.on('open-file', (event, file) => {
    event.preventDefault();
    take(file);
  });
  return {
    onFile(taker) {
      take = taker;
      for (const file of waiting.splice(0)) taker(file);
    },
  };
}
