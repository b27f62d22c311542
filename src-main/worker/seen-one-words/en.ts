import type { SeenOneWords } from './words.ts';

const inPlace = (clubs: string) =>
  clubs === '' ? 'beside the clubs that are there' : `in place of ${clubs}`;

/** At most 30 words each. */
export const english: SeenOneWords = {
  'in-plan': ({ price, walkAway, clubs }) =>
    `At ${price} the plan buys it, ${inPlace(clubs)}; it stays worth buying up to ${walkAway}.`,
  'no-ceiling': ({ price, clubs }) =>
    `At ${price} the plan buys it, ${inPlace(clubs)}. Nothing else that is priced does its job: the budget is the limit.`,
  near: ({ walkAway, clubs }) => `At ${walkAway} or less it enters the plan, ${inPlace(clubs)}.`,
  'too-dear': ({ price, walkAway }) =>
    `At ${price} the plan does better without it; it would have to cost ${walkAway} or less.`,
  'above-band': ({ price, walkAway }) =>
    `${price} is above what is usually asked. Your notes say that one can be had for ${walkAway} or less.`,
  'not-even-free': ({ archetype }) => `Even as a gift, the plan does better without a ${archetype}.`,
  'less-than-delivery': ({ archetype }) =>
    `A ${archetype} would mend less in this bag than its delivery and grip cost.`,
  'not-usable': ({ archetype }) =>
    `A ${archetype} does not suit: too strong for this player's speed, above 60°, or stronger than a club to be kept.`,
  'putter-stays': () => 'The putter stays. Allow it to change first, and a putter is reckoned with.',
  'too-little-known': () => 'Too little is known of this player: give a speed or one carry first.',
  stopped: () => 'Pain was reported: nothing is bought before a medical professional has had a look.',
  'coach-first': () => 'The numbers ask for a coach first; a club would hide the cause.',
  'ask-first': () =>
    'An open question may change what is bought. Answer it first; the price will come again.',
};
