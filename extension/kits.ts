/** Where the saved kits are kept. */
import * as z from 'zod/mini';
import { onStored, readStored, store } from './browser.js';
import { draftSchema } from './draft-schema.js';
import type { Kit } from './kit-list.js';

const KEY = 'kits';

const kitSchema = z.object({ name: z.string(), draft: draftSchema });

/** In the order of their names. It rejects where the browser's store cannot be read. */
export async function readKits(): Promise<readonly Kit[]> {
  return kitsIn(await readStored('local', KEY));
}

/** It rejects where the store is full or refused; then nothing has changed. */
export async function storeKits(kits: readonly Kit[]): Promise<void> {
  await store('local', KEY, kits);
}

export function onKits(take: (kits: readonly Kit[]) => void): void {
  onStored('local', KEY, (value) => take(kitsIn(value)));
}

/** One that another version wrote otherwise costs itself and no other. */
function kitsIn(value: unknown): Kit[] {
  const kits = (Array.isArray(value) ? value : []).flatMap((each) => {
    const kit = kitSchema.safeParse(each);
    return kit.success ? [kit.data] : [];
  });
  return kits.sort((a, b) => a.name.localeCompare(b.name, undefined, { numeric: true }));
}
