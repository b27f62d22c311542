import type { Handlers, Subject } from '../../handler.ts';

export const searchHandlers: Handlers<Subject<'search'>> = {
  'search.all': ({ db, search, catalogue, today }, { text, limit, locale }) =>
    search.all(db, text, limit, { catalogue: catalogue(), today: today(), locale }),
};
