import type { Archetype } from '../../contract/formats/catalogue.ts';
import { readCatalogue } from '../../service/records/catalogue.ts';
import { readFlags, type Command } from '../args.ts';
import { EXIT } from '../exit.ts';
import { withStore } from '../store.ts';
import { textTable } from '../text/table.ts';

export const catalogueCommand: Command = {
  name: 'catalogue',
  summary: 'the generic clubs that can be priced and planned',
  usage: `
npm run --silent catalogue -- [--json]

Lists the archetypes: generic clubs without brand, by kind, loft, forgiveness tier and spin tier.
A set has kind "irons", the loft of its 7-iron and its members.

  --json       print [{id, kind, loftDeg, forgiveness, spinTier, lengthIn, members?}]
  --data DIR   another data folder (your own archetypes are kept there)`,

  async run(words) {
    const { values } = readFlags(words, { json: { type: 'boolean' }, data: { type: 'string' } });
    const archetypes = withStore(values.data, readCatalogue);
    if (values.json === true) process.stdout.write(`${JSON.stringify(archetypes)}\n`);
    else process.stdout.write(`${catalogueText(archetypes)}\n`);
    return EXIT.ok;
  },
};

const TIERS = ["players'", "players' distance", 'game improvement', 'super game improvement'];

function catalogueText(archetypes: readonly Archetype[]): string {
  return textTable(
    [
      { head: 'id' },
      { head: 'kind' },
      { head: 'loft °', align: 'right' },
      { head: 'forgiveness' },
      { head: 'spin' },
      { head: 'length in', align: 'right' },
      { head: 'members' },
    ],
    archetypes.map((one) => [
      one.id,
      one.kind,
      String(one.loftDeg),
      TIERS[one.forgiveness - 1] ?? String(one.forgiveness),
      one.spinTier,
      String(one.lengthIn),
      (one.members ?? []).map((member) => `${member.number} ${String(member.loftDeg)}°`).join(', '),
    ]),
  );
}
