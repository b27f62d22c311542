export function findChromium(place?: {
  env?: NodeJS.ProcessEnv;
  platform?: NodeJS.Platform;
  canRun?: (file: string) => boolean;
}): string | null;
