import * as z from 'zod/mini';
import { UNIT_SYSTEMS } from '../core/index.js';
import { correctionSchema } from '../core/schema.js';
import { readStored, store } from './browser.js';

const KEY = 'draft';

/** Fields as typed; what cannot be used among them is told beside the field, as it is while typing. */
const fields = z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]));

const draftSchema = z.strictObject({
  entrance: z.enum(['list', 'pot']),
  text: z.string(),
  corrections: z.readonly(z.array(correctionSchema)),
  trip: fields,
  pot: fields,
  stove: fields,
  units: z.nullable(z.enum(UNIT_SYSTEMS)),
});

/** What was typed, as it was kept; nothing where nothing was, or where it comes from another version and no longer fits. */
export async function readDraft(): Promise<z.infer<typeof draftSchema> | undefined> {
  const kept = draftSchema.safeParse(await readStored(KEY));
  return kept.success ? kept.data : undefined;
}

/** It rejects where the browser's store is full or refused. */
export async function keepDraft(draft: z.infer<typeof draftSchema>): Promise<void> {
  await store(KEY, draft);
}
