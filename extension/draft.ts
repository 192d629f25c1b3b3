import * as z from 'zod/mini';
import { UNIT_SYSTEMS } from '../core/index.js';
import { correctionSchema } from '../core/schema.js';
import { EMPTY_DRAFT, type Draft } from '../widget/index.js';
import { onStored, readStored, store } from './browser.js';

const KEY = 'draft';

/** This page of the extension, among those that keep the same draft. */
const HERE = crypto.randomUUID();

/** Fields as typed; what cannot be used among them is told beside the field, as it is while typing. */
const fields = z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]));

/** Each part stands alone: one that another version wrote otherwise costs itself, and never the text. */
const draftSchema = z.object({
  entrance: z.catch(z.enum(['list', 'pot']), EMPTY_DRAFT.entrance),
  text: z.catch(z.string(), EMPTY_DRAFT.text),
  corrections: z.catch(z.readonly(z.array(correctionSchema)), EMPTY_DRAFT.corrections),
  trip: z.catch(fields, EMPTY_DRAFT.trip),
  pot: z.catch(fields, EMPTY_DRAFT.pot),
  stove: z.catch(fields, EMPTY_DRAFT.stove),
  units: z.catch(z.nullable(z.enum(UNIT_SYSTEMS)), EMPTY_DRAFT.units),
});

const keptSchema = z.object({ by: z.string(), draft: draftSchema });

/** What was typed, as it was kept; nothing where nothing was. It rejects where the browser's store cannot be read. */
export async function readDraft(): Promise<Draft | undefined> {
  const kept = keptSchema.safeParse(await readStored('local', KEY));
  return kept.success ? kept.data.draft : undefined;
}

/** It rejects where the browser's store is full or refused. */
export async function keepDraft(draft: Draft): Promise<void> {
  await store('local', KEY, { by: HERE, draft });
}

/** Calls back with each draft that another page of the extension keeps. */
export function onDraftElsewhere(take: (draft: Draft) => void): void {
  onStored('local', KEY, (value) => {
    const kept = keptSchema.safeParse(value);
    if (kept.success && kept.data.by !== HERE) take(kept.data.draft);
  });
}
