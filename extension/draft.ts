import * as z from 'zod/mini';
import type { Draft } from '../widget/index.js';
import { onStored, readStored, store } from './browser.js';
import { draftSchema } from './draft-schema.js';

const KEY = 'draft';

/** This page of the extension, among those that keep the same draft. */
const HERE = crypto.randomUUID();

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
