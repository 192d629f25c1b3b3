import * as z from 'zod/mini';
import { currentWindowId, onStored, readStored, removeStored, store } from './browser.js';

const KEY = 'selection';

const selectionSchema = z.strictObject({
  /** The window it was selected in: the panel of another leaves it alone. */
  windowId: z.int(),
  entrance: z.enum(['list', 'pot']),
  text: z.string(),
  /** As the browser told it, because the page could not be read. */
  asTold: z.boolean(),
});

/** A selection on its way from the page to the panel. */
export type HandedSelection = z.infer<typeof selectionSchema>;

export async function handOver(selection: HandedSelection): Promise<void> {
  await store('session', KEY, selection);
}

/** Calls back with each selection that is handed over in this window, one that waits already included, and takes it away. */
export async function onHandedOver(take: (selection: HandedSelection) => void): Promise<void> {
  const windowId = await currentWindowId();
  onStored('session', KEY, () => void pick());
  await pick();

  async function pick(): Promise<void> {
    const stored = selectionSchema.safeParse(await readStored('session', KEY));
    if (!stored.success || stored.data.windowId !== windowId) return;
    await removeStored('session', KEY);
    take(stored.data);
  }
}
