export function ensureBuilt(say: (line: string) => void): Promise<boolean>;
export function sourcesStamp(): string;
