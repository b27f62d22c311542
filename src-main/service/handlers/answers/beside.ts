import type { BesideBag } from '../../../contract/calls/answers/beside.ts';
import { findBag } from '../../../../db/repositories/bags/bags.ts';
import { readPlayer } from '../../../../db/repositories/bags/players.ts';
import { besideChoices } from '../../answers/beside-choices.ts';
import { questionOf } from '../../answers/question.ts';
import type { Handlers, Subject } from '../../handler.ts';

export const besideHandlers: Handlers<Subject<'beside'>> = {
  'beside.bags': async (context, { bagId, otherId, locale }) => {
    const { distance, speed } = questionOf(context, bagId, locale).file.units;
    const shownIn = { distance, speed };
    const besideOf = async (id: number): Promise<BesideBag> => {
      const question = questionOf(context, id, locale);
      const { playerId, name, state } = findBag(context.db, id);
      const of = {
        bagId: id,
        playerId,
        player: question.file.player.name,
        archived: readPlayer(context.db, playerId).archivedAt !== undefined,
        bag: name ?? null,
        state,
      };
      return { ...of, ...(await context.answerer.beside({ ...question, shownIn })) };
    };
    const [first, other] = await Promise.all([besideOf(bagId), besideOf(otherId)]);
    return { units: shownIn, bags: [first, other] };
  },
  'beside.choices': (context, { bagId, text, limit }) => besideChoices(context, bagId, text, limit),
};
