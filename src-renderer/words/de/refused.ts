import type { refused as english } from '../en/refused.ts';
import { said } from './refusals/said.ts';

export const refused: typeof english = {
  refused: {
    inFile: (key) => `in der Datei: ${key}`,
    club: (number) => `Schläger ${number}`,
    set: (set) => `Satz ${set}`,
    price: (archetype) => `Preis von ${archetype}`,
    hole: (number) => `Loch ${number}`,
    line: (number) => `Zeile ${number}`,
    textPlace: (line, column) => `Zeile ${line}, Zeichen ${column}`,
    end: 'Das Ende der Datei',
    file: 'Die Datei',
    id: 'Seine Kennung in der Datei',
    format: 'Was für eine Datei sie zu sein angibt',
    version: 'Die Version der Datei',
    units: 'Einheiten',
    course: 'Platz',
    holes: 'Löcher',
    costs: 'Kosten',
    choices: 'Was frei ist',
    archetype: 'Schläger des Katalogs',
    said,
  },
};
