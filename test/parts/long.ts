/** Texts that are longer than anybody would like. */
export const LONG = {
  name: 'Bartholomew Featherstonehaugh-Cholmondeley of the Lower Meadow and the Old Quarry',
  sentence:
    'Whatever is written here goes on for longer than one line of the page has room for, since somebody, somewhere, will have a sentence of that kind.',
  /** Nothing in it to break at. */
  word: 'Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichenverleihung',
};
