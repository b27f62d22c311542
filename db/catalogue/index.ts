import type { Archetype } from '../../src-main/contract/formats/catalogue.ts';
import drivers from './drivers.json' with { type: 'json' };
import fairwayWoods from './fairway-woods.json' with { type: 'json' };
import hybrids from './hybrids.json' with { type: 'json' };
import ironSets from './iron-sets.json' with { type: 'json' };
import { joinCatalogueFiles } from './parse.ts';
import putters from './putters.json' with { type: 'json' };
import singleIrons from './single-irons.json' with { type: 'json' };
import wedges from './wedges.json' with { type: 'json' };

/**
 * The shipped archetypes from driver to putter, each file in its own order; a fresh list at every call.
 * Loft in degrees, length in inches. Throws an Error naming file, entry, value and remedy when one is wrong.
 */
export function loadCatalogue(): Archetype[] {
  return joinCatalogueFiles([
    ['drivers.json', drivers],
    ['fairway-woods.json', fairwayWoods],
    ['hybrids.json', hybrids],
    ['iron-sets.json', ironSets],
    ['single-irons.json', singleIrons],
    ['wedges.json', wedges],
    ['putters.json', putters],
  ]);
}
