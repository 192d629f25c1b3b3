import * as z from 'zod/mini';
import { onStored, readStored, removeStored, store } from './browser.js';

const KEY = 'selection';

const selectionSchema = z.strictObject({
  text: z.string(),
  /** As the browser told it, with its line breaks perhaps lost: the page could not be read. */
  asTold: z.boolean(),
});

/** A selection on its way from the page to the panel. */
export type HandedSelection = z.infer<typeof selectionSchema>;

export async function handOver(selection: HandedSelection): Promise<void> {
  await store('session', KEY, selection);
}

/** Calls back with each selection that is handed over, one that waits already included, and takes it away. */
export async function onHandedOver(take: (selection: HandedSelection) => void): Promise<void> {
  onStored('session', KEY, () => void pick());
  await pick();

  async function pick(): Promise<void> {
    const stored = selectionSchema.safeParse(await readStored('session', KEY));
    if (!stored.success) return;
    await removeStored('session', KEY);
    take(stored.data);
  }
}
