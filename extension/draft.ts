import * as z from 'zod/mini';
import type { Draft } from '../widget/index.js';
import { onStored, readStored, store } from './browser.js';
import { draftSchema } from './draft-schema.js';

const KEY = 'draft';

/** This page of the extension, among those that keep the same draft. */
const HERE = crypto.randomUUID();

const keptSchema = z.object({ by: z.string(), stroke: z._default(z.number(), 0), draft: draftSchema });
type Kept = z.infer<typeof keptSchema>;

/** Strokes count on from page to page, so that of two drafts the later is known. */
let stroke = 0;

/** What was typed, as it was kept; nothing where nothing was. It rejects where the browser's store cannot be read. */
export async function readDraft(): Promise<Draft | undefined> {
  const kept = keptSchema.safeParse(await readStored('local', KEY)).data;
  const last = readLastStroke();
  const later = last !== undefined && (kept === undefined || last.stroke > kept.stroke) ? last : kept;
  stroke = later?.stroke ?? 0;
  return later?.draft;
}

/** It rejects where the browser's store is full or refused. */
export async function keepDraft(draft: Draft): Promise<void> {
  const kept = { by: HERE, stroke: ++stroke, draft };
  noteLastStroke(kept);
  await store('local', KEY, kept);
}

/** Calls back with each draft that another page of the extension keeps. */
export function onDraftElsewhere(take: (draft: Draft) => void): void {
  onStored('local', KEY, (value) => {
    const kept = keptSchema.safeParse(value);
    if (!kept.success || kept.data.by === HERE) return;
    stroke = Math.max(stroke, kept.data.stroke);
    take(kept.data.draft);
  });
}

/** A popup that closes within the stroke takes its unfinished writes with it: the page's own store, which waits for nothing, has the stroke all the same. */
function noteLastStroke(kept: Kept): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(kept));
  } catch {
    // Full or forbidden: the browser's store has the draft, or says that it has not.
  }
}

function readLastStroke(): Kept | undefined {
  try {
    return keptSchema.safeParse(JSON.parse(localStorage.getItem(KEY) ?? 'null')).data;
  } catch {
    return undefined;
  }
}
