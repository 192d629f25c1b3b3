import * as z from 'zod/mini';
import { readStored, store } from './browser.js';
const KEY = 'draft';
const draftSchema = z.looseObject({ text: z.string() });
export type Draft = z.infer<typeof draftSchema>;
export async function readDraft(): Promise<Draft | undefined> {
  const stored = draftSchema.safeParse(await readStored(KEY));
  return stored.success ? stored.data : undefined;
}
export async function keepDraft(draft: Draft): Promise<void> {
  await store(KEY, draft);
}
