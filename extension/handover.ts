import * as z from 'zod/mini';
import { onStored, readStored, removeStored, store, thisWindow } from './browser.js';
import { keyOf } from './windows.js';

const selectionSchema = z.strictObject({
  /** The window it was selected in: the panel of another leaves it alone. */
  windowId: z.int(),
  entrance: z.enum(['list', 'pot']),
  text: z.string(),
  /** As the browser told it, because the page could not be read. */
  asTold: z.boolean(),
  /** The heads of a table came along with some of its rows. */
  headed: z.optional(z.boolean()),
  /** The page shows some rows of a table only. */
  partial: z.optional(z.boolean()),
  /** It is a file of this computer, which some browsers let an extension read only when told to. */
  isFile: z.optional(z.boolean()),
});

/** A selection on its way from the page to the panel. */
export type HandedSelection = z.infer<typeof selectionSchema>;

export async function handOver(selection: HandedSelection): Promise<void> {
  await store('session', keyOf('selection', selection.windowId), selection);
}

/** Calls back with each selection that is handed over in this window, one that waits already included, and takes it away. */
export async function onHandedOver(take: (selection: HandedSelection) => void): Promise<void> {
  const { id } = await thisWindow();
  const key = keyOf('selection', id);
  onStored('session', key, () => void pick());
  await pick();

  async function pick(): Promise<void> {
    const stored = selectionSchema.safeParse(await readStored('session', key));
    if (!stored.success) return;
    await removeStored('session', key);
    take(stored.data);
  }
}
