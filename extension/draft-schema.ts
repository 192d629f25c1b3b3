/** The shape of a draft that comes out of a store. */
import * as z from 'zod/mini';
import { UNIT_SYSTEMS } from '../core/index.js';
import { correctionSchema } from '../core/schema.js';
import { EMPTY_DRAFT } from '../widget/draft.js';

/** Fields as typed; what cannot be used among them is told beside the field, as it is while typing. */
export const fieldsSchema = z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]));

/** Each part stands alone: one that another version wrote otherwise costs itself, and never the text. */
export const draftSchema = z.object({
  entrance: z.catch(z.enum(['list', 'pot']), EMPTY_DRAFT.entrance),
  text: z.catch(z.string(), EMPTY_DRAFT.text),
  corrections: z.catch(z.readonly(z.array(correctionSchema)), EMPTY_DRAFT.corrections),
  trip: z.catch(fieldsSchema, EMPTY_DRAFT.trip),
  pot: z.catch(fieldsSchema, EMPTY_DRAFT.pot),
  stove: z.catch(fieldsSchema, EMPTY_DRAFT.stove),
  letter: z.catch(fieldsSchema, EMPTY_DRAFT.letter),
  units: z.catch(z.nullable(z.enum(UNIT_SYSTEMS)), EMPTY_DRAFT.units),
});
