/** Where the saved kits are kept. */
import * as z from 'zod/mini';
import { EMPTY_DRAFT } from '../widget/draft.js';
import { onStored, readStored, store } from './browser.js';
import { draftSchema } from './draft-schema.js';
import type { Kit } from './kit-list.js';

const KEY = 'kits';

const kitSchema = z.object({
  name: z.string(),
  draft: draftSchema,
  notes: z.catch(z.optional(z.string()), undefined),
  tags: z.catch(z.optional(z.array(z.string())), undefined),
  saved: z.catch(z.optional(z.string()), undefined),
});

/** As they were saved. It rejects where the browser's store cannot be read. */
export async function readKits(): Promise<readonly Kit[]> {
  return kitsIn(await readStored('local', KEY));
}

/** It rejects where the store is full or refused; then nothing has changed. */
export async function storeKits(kits: readonly Kit[]): Promise<void> {
  await store('local', KEY, kits.map(withoutEmpty));
}

/**
 * Changes what is kept, as another page may have left it in between, and gives what was kept before. It rejects where the store is full or refused; then
 * nothing has changed.
 */
export async function changeKits(
  change: (kits: readonly Kit[]) => readonly Kit[],
): Promise<{ before: readonly Kit[]; after: readonly Kit[] }> {
  const before = await readKits();
  const after = change(before);
  await storeKits(after);
  return { before, after };
}

export function onKits(take: (kits: readonly Kit[]) => void): void {
  onStored('local', KEY, (value) => take(kitsIn(value)));
}

/** One that another version wrote otherwise costs itself and no other. */
function kitsIn(value: unknown): Kit[] {
  return (Array.isArray(value) ? value : []).flatMap((each) => {
    const kit = kitSchema.safeParse(each);
    if (!kit.success) return [];
    const { name, draft, notes, tags, saved } = kit.data;
    return [
      { name, draft, ...(notes ? { notes } : {}), ...(tags?.length ? { tags } : {}), ...(saved ? { saved } : {}) },
    ];
  });
}

/** What a draft leaves empty takes no room in the store. */
function withoutEmpty({ draft, ...kit }: Kit): object {
  const empty = Object.entries(EMPTY_DRAFT);
  const filled = Object.entries(draft).filter(
    ([name, part]) => JSON.stringify(part) !== JSON.stringify(empty.find(([each]) => each === name)?.[1]),
  );
  return { ...kit, draft: Object.fromEntries(filled) };
}
