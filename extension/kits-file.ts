/** The file that saved kits are exported to and imported from. A person can read it, and write one. */
import * as z from 'zod/mini';
import { UNIT_SYSTEMS } from '../core/index.js';
import { correctionSchema } from '../core/schema.js';
import { EMPTY_DRAFT, type Draft } from '../widget/draft.js';
import { fieldsSchema } from './draft-schema.js';
import { NoJson, parseJsonWithLines } from './json-lines.js';
import type { Kit } from './kit-list.js';

const VERSION = 1;

const kitSchema = z.strictObject({
  name: z.string().check(z.minLength(1)),
  notes: z.optional(z.string()),
  tags: z.optional(z.array(z.string())),
  /** The day it was saved, as YYYY-MM-DD. */
  saved: z.optional(z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/))),
  entrance: z.optional(z.enum(['list', 'pot'])),
  /** The kit list, line by line. */
  lines: z.optional(z.array(z.string())),
  corrections: z.optional(z.array(correctionSchema)),
  trip: z.optional(fieldsSchema),
  pot: z.optional(fieldsSchema),
  stove: z.optional(fieldsSchema),
  units: z.optional(z.enum(UNIT_SYSTEMS)),
});

const fileSchema = z.strictObject({
  brimwise: z.literal('kits'),
  version: z.literal(VERSION),
  kits: z.array(kitSchema),
});

/** A file that is not taken, because of this line (1-based) and, where it is JSON, this value in it. */
export class DamagedFile extends Error {
  readonly line: number;
  readonly place: string;

  constructor(line: number, place: string) {
    super(`Line ${line} is wrong: ${place}`);
    this.line = line;
    this.place = place;
  }
}

export function writeKitsFile(kits: readonly Kit[]): string {
  return `${JSON.stringify({ brimwise: 'kits', version: VERSION, kits: kits.map(toFile) }, null, 2)}\n`;
}

/** A file that a later version of this program wrote. */
export class LaterFile extends Error {}

/**
 * The kits in a file: all of them, or none.
 * @throws NoJson, DamagedFile, LaterFile
 */
export function readKitsFile(text: string): readonly Kit[] {
  const steps = stepsOfKitsFile(text);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** How far the reading of a file is. */
export interface FileProgress {
  readonly done: number;
  readonly all: number;
}

const KITS_A_STEP = 500;

/**
 * The same in steps, so that a page can tell how far it is, and stop.
 * @throws NoJson, DamagedFile, LaterFile
 */
export function* stepsOfKitsFile(file: string): Generator<FileProgress, readonly Kit[]> {
  const text = file.replace(/^\uFEFF/, '');
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    // Slower, and tells where.
    parseJsonWithLines(text);
    throw new NoJson(1);
  }
  const outer = outerSchema.safeParse(value);
  if (!outer.success) {
    const later = laterSchema.safeParse(value);
    if (later.success) throw new LaterFile(`Version ${later.data.version}`);
    throw damaged(text, outer.error.issues[0]!, []);
  }
  const { kits } = outer.data;
  const read: Kit[] = [];
  for (const [at, each] of kits.entries()) {
    if (at % KITS_A_STEP === 0) yield { done: at, all: kits.length };
    const kit = kitSchema.safeParse(each);
    if (!kit.success) throw damaged(text, kit.error.issues[0]!, ['kits', at]);
    read.push(fromFile(kit.data));
  }
  return read;
}

const outerSchema = z.strictObject({ ...fileSchema.shape, kits: z.array(z.unknown()) });
const laterSchema = z.object({ brimwise: z.literal('kits'), version: z.int().check(z.minimum(VERSION + 1)) });

function damaged(text: string, issue: z.core.$ZodIssue, around: readonly PropertyKey[]): DamagedFile {
  // A key that is not known is told with the object it stands in.
  const path = [...around, ...issue.path, ...(issue.code === 'unrecognized_keys' ? [issue.keys[0]!] : [])];
  return new DamagedFile(parseJsonWithLines(text).lineOf(path), path.map(String).join('.'));
}

/** A text file as it is written: UTF-8, or UTF-16 where it says so or has the zeros of it. */
export function textOfBytes(bytes: Uint8Array): string {
  const [first = 0, second = 0] = bytes;
  const little = (first === 0xff && second === 0xfe) || (first !== 0 && second === 0 && bytes.length > 1);
  const big = (first === 0xfe && second === 0xff) || (first === 0 && second !== 0);
  return new TextDecoder(little ? 'utf-16le' : big ? 'utf-16be' : 'utf-8').decode(bytes);
}

/** JSON Schema (draft 2020-12) of the file. */
export function kitsFileJsonSchema(): object {
  return z.toJSONSchema(fileSchema);
}

/** What is empty is left out. */
function toFile({ name, draft, notes, tags, saved }: Kit): z.infer<typeof kitSchema> {
  const { entrance, text, corrections, units } = draft;
  const filled = (['trip', 'pot', 'stove'] as const).filter((part) => Object.keys(draft[part]).length > 0);
  return {
    name,
    ...(notes ? { notes } : {}),
    ...(tags?.length ? { tags: [...tags] } : {}),
    ...(saved ? { saved } : {}),
    entrance,
    ...(text === '' ? {} : { lines: text.split('\n') }),
    ...(corrections.length === 0 ? {} : { corrections: [...corrections] }),
    ...Object.fromEntries(filled.map((part) => [part, draft[part]])),
    ...(units === null ? {} : { units }),
  };
}

function fromFile({ name, lines = [], notes, tags, saved, ...parts }: z.infer<typeof kitSchema>): Kit {
  const given = Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined)) as Partial<Draft>;
  return {
    name,
    draft: { ...EMPTY_DRAFT, ...given, text: lines.join('\n') },
    ...(notes ? { notes } : {}),
    ...(tags?.length ? { tags } : {}),
    ...(saved ? { saved } : {}),
  };
}
