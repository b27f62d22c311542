import type { SeenOneWords } from './words.ts';

const inPlace = (clubs: string) =>
  clubs === '' ? 'zusätzlich zu den vorhandenen Schlägern' : `anstelle von ${clubs}`;

/** As the English ones; names of clubs may be of any gender and number. */
export const german: SeenOneWords = {
  'in-plan': ({ price, walkAway, clubs }) =>
    `Für ${price} kauft der Plan ihn, ${inPlace(clubs)}; bis ${walkAway} lohnt es sich.`,
  'no-ceiling': ({ price, clubs }) =>
    `Für ${price} kauft der Plan ihn, ${inPlace(clubs)}. Nichts anderes mit Preis erfüllt die Aufgabe: Das Budget ist die Grenze.`,
  near: ({ walkAway, clubs }) => `Für höchstens ${walkAway} kommt er in den Plan, ${inPlace(clubs)}.`,
  'too-dear': ({ price, walkAway }) =>
    `Für ${price} ist der Plan ohne ihn besser; er dürfte höchstens ${walkAway} kosten.`,
  'above-band': ({ price, walkAway }) =>
    `${price} ist mehr, als üblich verlangt wird. Nach Ihren Notizen ist einer für höchstens ${walkAway} zu haben.`,
  'not-even-free': ({ archetype }) => `Selbst geschenkt ist der Plan besser ohne: ${archetype}.`,
  'less-than-delivery': ({ archetype }) =>
    `${archetype}: In diesem Bag bringt das weniger, als Versand und Griff kosten.`,
  'not-usable': ({ archetype }) =>
    `${archetype} passt nicht: zu stark für dieses Tempo, über 60°, oder stärker als ein Schläger, der bleiben soll.`,
  'putter-stays': () => 'Der Putter bleibt. Darf er wechseln, wird auch mit Puttern gerechnet.',
  'too-little-known': () =>
    'Über diesen Spieler ist zu wenig bekannt: bitte zuerst ein Tempo oder einen Carry angeben.',
  stopped: () => 'Schmerzen sind angegeben: Vor ärztlichem Rat wird nichts gekauft.',
  'coach-first': () =>
    'Die Zahlen sprechen für den Trainer zuerst; ein Schläger würde die Ursache verdecken.',
  'ask-first': () =>
    'Eine offene Frage kann ändern, was gekauft wird. Bitte zuerst beantworten; der Preis kommt wieder.',
};
