import { z } from 'zod';
import { idSchema, localeSchema, textSchema } from '../../primitives.ts';
import { planStatusSchema } from '../../formats/plan-file.ts';
import { rowId } from '../records/players.ts';
import { read, undoable, write } from '../spec.ts';

/** Languages that a document is written in. */
export const documentLanguageSchema = z.enum(['en', 'de']);
export type DocumentLanguage = z.infer<typeof documentLanguageSchema>;

export const paperSchema = z.enum(['a4', 'letter']);
export type Paper = z.infer<typeof paperSchema>;

/** A document: of the plan as it is now, or with `record` of what was picked. */
const documentArgs = { bagId: rowId, record: rowId.optional(), locale: localeSchema.optional() };

/** PNG or JPEG, base64, small enough for a call. */
const pictureSchema = z
  .string()
  .max(950_000)
  .regex(
    /^data:image\/(?:png|jpeg);base64,[A-Za-z0-9+/]+={0,2}$/,
    'must be a PNG or JPEG as a data: address',
  );

const letterheadSchema = z.strictObject({
  name: textSchema(200),
  contact: textSchema(400),
  /** Null: what is usual in the window's country. */
  paper: paperSchema.nullable(),
});

const addedSchema = z.strictObject({
  /** Paragraphs are parted by an empty line. */
  coverNote: textSchema(4000).nullable(),
  /** Null: the window's. */
  language: documentLanguageSchema.nullable(),
  /** Null: the usual half year. */
  retestOn: z.iso.date().nullable(),
});

export type LetterheadPatch = Partial<z.infer<typeof letterheadSchema>>;
export type AddedPatch = Partial<z.infer<typeof addedSchema>>;

const formSchema = z.strictObject({
  letterhead: letterheadSchema.extend({
    /** Size of the picture in bytes; null for none. */
    pictureBytes: z.int().nullable(),
  }),
  added: addedSchema,
  /** What holds where nothing was chosen; `retest` is a month, YYYY-MM. */
  usual: z.strictObject({ language: documentLanguageSchema, paper: paperSchema, retest: z.string() }),
});
export type HandOverForm = z.infer<typeof formSchema>;

const batchSchema = z.strictObject({
  /** Where the documents are; null where none was saved. */
  folder: z.string().nullable(),
  saved: z.array(z.strictObject({ bagId: rowId, name: z.string() })),
  failed: z.array(z.strictObject({ bagId: rowId, name: z.string(), message: z.string() })),
  cancelled: z.boolean(),
});
export type HandOverBatch = z.infer<typeof batchSchema>;

export const handoverCalls = {
  /** What a coach adds: the letterhead for everybody, the rest for one bag. */
  'handover.form': read(z.strictObject({ bagId: rowId, locale: localeSchema.optional() }), formSchema),
  'handover.setLetterhead': undoable(letterheadSchema.partial(), z.null()),
  /** Null takes the picture out. What the bytes are is looked at, not what the address says. */
  'handover.setPicture': undoable(z.strictObject({ picture: pictureSchema.nullable() }), z.null()),
  'handover.setAdded': undoable(z.strictObject({ bagId: rowId, patch: addedSchema.partial() }), z.null()),
  /**
   * Sets the very document for a look: `page` is what the host answers at `/page?id=…` for a while. `job` lets it be
   * cancelled and heard of.
   */
  'handover.preview': read(
    z.strictObject({ ...documentArgs, job: idSchema.optional() }),
    z.strictObject({ page: z.string(), title: z.string(), status: planStatusSchema }),
  ),
  /** `json` is the plan file, `html` the print page on its own. */
  'handover.text': read(
    z.strictObject({ ...documentArgs, format: z.enum(['md', 'csv', 'json', 'html']) }),
    z.strictObject({ name: z.string(), text: z.string() }),
  ),
  /** Prints into the data folder's `exports`; `page` is the same file at `/page?id=…` for a while. */
  'handover.pdf': write(
    z.strictObject(documentArgs),
    z.strictObject({ file: z.string(), name: z.string(), bytes: z.int(), page: z.string() }),
  ),
  /**
   * Prints the plan of now of many bags into a folder of their own in `exports`. One that fails does not stop the
   * others. `job` tells how far it is and lets it be cancelled; what is saved then stays.
   */
  'handover.batch': write(
    z.strictObject({
      bagIds: z.array(rowId).min(1).max(1000),
      job: idSchema,
      locale: localeSchema.optional(),
    }),
    batchSchema,
  ),
};
