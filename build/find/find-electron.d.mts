export function findElectron(electronPackage: string): string | null;
