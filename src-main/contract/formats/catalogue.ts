import { z } from 'zod';
import { clubKindSchema, forgivenessSchema, spinTierSchema } from '../primitives.ts';

/**
 * The catalogue's entries: generic clubs without a brand, as the `catalogue` command prints them.
 * Loft in degrees, length in inches. Shipped entries and a player's own archetypes share this shape.
 */

/** The bag's kinds, and `irons` for a set that is bought and sold whole. */
export const archetypeKindSchema = z.enum([...clubKindSchema.options, 'irons']);

/** Bounds of the bag file's clubs (bag-file.ts): what can be typed in, not what is usual. */
const loftDeg = z.number().min(-15).max(80);
const lengthIn = z.number().min(18).max(60);

export const archetypeMemberSchema = z.strictObject({
  kind: z.enum(['iron', 'wedge']),
  /** What is stamped on the sole: "5", "PW". Without a colon, which parts an item id (`buy:<archetype>:<number>`). */
  number: z
    .string()
    .regex(/^[0-9A-Z]{1,3}$/, 'must be one to three digits or capital letters, such as "5" or "PW"'),
  loftDeg,
});

/** Readable, and safe inside `buy:<archetype>`: small letters, digits and dots, parted by hyphens. */
const archetypeIdSchema = z
  .string()
  .max(60)
  .regex(
    /^[a-z0-9.]+(-[a-z0-9.]+)*$/,
    'must be small letters, digits and dots parted by hyphens, such as "hybrid-22-t3"',
  );

/**
 * One archetype. A set has members, at least two, longest first, each number once, and the loft of its
 * 7-iron, by which sets are told apart; a single club has no members.
 */
export const archetypeSchema = z
  .strictObject({
    id: archetypeIdSchema,
    kind: archetypeKindSchema,
    loftDeg,
    forgiveness: forgivenessSchema,
    spinTier: spinTierSchema,
    lengthIn,
    members: z.array(archetypeMemberSchema).exactOptional(),
  })
  .superRefine((archetype, context) => {
    const refuse = (message: string) => {
      context.addIssue({ code: 'custom', path: ['members'], message });
    };
    const { kind, members } = archetype;
    if (kind !== 'irons') {
      if (members !== undefined)
        refuse(`a single ${kind} has no members: leave them out, or make it a set of kind "irons"`);
      return;
    }
    if (members === undefined || members.length < 2) {
      refuse('a set needs at least two members: list them, or make it a single club of kind "iron"');
      return;
    }
    for (const [index, member] of members.entries()) {
      const next = members[index + 1];
      if (next !== undefined && next.loftDeg <= member.loftDeg)
        refuse(
          `${next.number} at ${String(next.loftDeg)}° follows ${member.number} at ${String(member.loftDeg)}°: list members by rising loft`,
        );
      if (members.findIndex((other) => other.number === member.number) !== index)
        refuse(`${member.number} is listed twice: keep one`);
    }
    const seven = members.find((member) => member.number === '7');
    if (seven === undefined)
      refuse('there is no 7 among the members: a set is known by its 7-iron, so add it');
    else if (seven.loftDeg !== archetype.loftDeg)
      refuse(
        `loftDeg ${String(archetype.loftDeg)} is not the 7-iron's ${String(seven.loftDeg)}: make them equal`,
      );
  });

export type ArchetypeKind = z.infer<typeof archetypeKindSchema>;
export type ArchetypeMember = z.infer<typeof archetypeMemberSchema>;
export type Archetype = z.infer<typeof archetypeSchema>;
