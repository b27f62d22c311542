/** Of values that were not taken: where they stand, and what is wrong. Labels of fields are those of their own pages. */
export const refused = {
  refused: {
    inFile: (key: string) => `in the file: ${key}`,
    club: (number: string) => `Club ${number}`,
    set: (set: string) => `Set ${set}`,
    price: (archetype: string) => `Price of ${archetype}`,
    hole: (number: string) => `Hole ${number}`,
    line: (number: string) => `Line ${number}`,
    textPlace: (line: string, column: string) => `Line ${line}, letter ${column}`,
    end: 'The end of the file',
    file: 'The file',
    id: 'Its id in the file',
    format: 'What kind of file it says it is',
    version: 'The version of the file',
    units: 'Units',
    course: 'Course',
    holes: 'Holes',
    costs: 'Costs',
    choices: 'Choices',
    archetype: 'Club of the catalogue',
    /** What the service says, in this language; in English it is said already. */
    said: (text: string): string => text,
  },
};
