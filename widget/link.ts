import { UNIT_SYSTEMS } from '../core/figures.js';
import type { Correction } from '../core/index.js';
import { EMPTY_DRAFT, type Draft, type Fields } from './draft.js';

/** The form of the state; a later form has another number. */
const FORM = '1';
/** Longer than any question that a person types, in bytes: what unpacks to more is not read on. */
const MOST_BYTES = 2_000_000;

const DAMAGED = 'The link is cut short or damaged: what it carried cannot be read. Ask for it again.';
const FROM_LATER = 'The link was made by a later version of this page, and cannot be read here.';

/** What a link brought: the question, or the sentence that says why there is none. */
export type Carried = { readonly draft: Draft } | { readonly problem: string };

/** The whole question as it stands in a link: `1.` and the draft, deflated. It goes into the hash, which no server is sent. */
export async function stateOf(draft: Draft): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(draft));
  return `${FORM}.${base64Url(await all(bytes, new CompressionStream('deflate'), Infinity))}`;
}

/** The question of a state. Never rejects, on any string. */
export async function carriedBy(state: string): Promise<Carried> {
  const [form, packed, ...more] = state.split('.');
  if (form !== FORM) return { problem: /^[1-9]\d{0,3}$/.test(form ?? '') ? FROM_LATER : DAMAGED };
  if (packed === undefined || more.length > 0) return { problem: DAMAGED };
  try {
    const bytes = await all(bytesOf(packed), new DecompressionStream('deflate'), MOST_BYTES);
    const draft = asDraft(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
    return draft === null ? { problem: DAMAGED } : { draft };
  } catch {
    return { problem: DAMAGED };
  }
}

/** @throws RangeError where more comes out than `most` bytes; TypeError where what goes in is no such stream */
async function all(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  let length = 0;
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    chunks.push(next.value);
    length += next.value.length;
    if (length > most) {
      await reader.cancel();
      throw new RangeError('Too long.');
    }
  }
  return new Uint8Array(await new Blob(chunks).arrayBuffer());
}

function base64Url(bytes: Uint8Array): string {
  const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
}

/** A draft with nothing in it that a draft does not have; null where it is none. */
function asDraft(value: unknown): Draft | null {
  if (!isRecord(value)) return null;
  const { entrance, text, corrections, trip, pot, stove, letter, units } = { ...EMPTY_DRAFT, ...value } as Record<
    string,
    unknown
  >;
  const usable =
    (entrance === 'list' || entrance === 'pot') &&
    typeof text === 'string' &&
    Array.isArray(corrections) &&
    corrections.every(isCorrection) &&
    [trip, pot, stove, letter].every(isFields) &&
    (units === null || (UNIT_SYSTEMS as readonly unknown[]).includes(units));
  return usable ? ({ entrance, text, corrections, trip, pot, stove, letter, units } as Draft) : null;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isPlain(value: unknown): value is string | number | boolean {
  return ['string', 'number', 'boolean'].includes(typeof value);
}

function isFields(value: unknown): value is Fields {
  return isRecord(value) && Object.values(value).every(isPlain);
}

/** Of a correction that names no place or no field known, the core says so. */
function isCorrection(value: unknown): value is Correction {
  if (!isRecord(value)) return false;
  const { quote, occurrence, item, field, vessel, value: corrected } = value;
  const counts = [occurrence, item, vessel ?? 0];
  return (
    typeof quote === 'string' &&
    typeof field === 'string' &&
    counts.every((count) => Number.isInteger(count) && Number(count) >= 0) &&
    (corrected === null || isPlain(corrected))
  );
}
