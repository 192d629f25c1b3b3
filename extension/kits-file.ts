/** The file that saved kits are exported to and imported from. A person can read it, and write one. */
import * as z from 'zod/mini';
import { UNIT_SYSTEMS } from '../core/index.js';
import { correctionSchema } from '../core/schema.js';
import { EMPTY_DRAFT, type Draft } from '../widget/draft.js';
import { fieldsSchema } from './draft-schema.js';
import { parseJsonWithLines } from './json-lines.js';
import type { Kit } from './kit-list.js';

const VERSION = 1;

const kitSchema = z.strictObject({
  name: z.string().check(z.minLength(1)),
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

/**
 * The kits in a file: all of them, or none.
 * @throws NoJson, DamagedFile
 */
export function readKitsFile(text: string): readonly Kit[] {
  const { value, lineOf } = parseJsonWithLines(text.replace(/^\uFEFF/, ''));
  const file = fileSchema.safeParse(value);
  if (file.success) return file.data.kits.map(fromFile);
  const [issue] = file.error.issues;
  // A key that is not known is told with the object it stands in.
  const path = [...issue!.path, ...(issue!.code === 'unrecognized_keys' ? [issue.keys[0]!] : [])];
  throw new DamagedFile(lineOf(path), path.map(String).join('.'));
}

/** JSON Schema (draft 2020-12) of the file. */
export function kitsFileJsonSchema(): object {
  return z.toJSONSchema(fileSchema);
}

/** What is empty is left out. */
function toFile({ name, draft }: Kit): z.infer<typeof kitSchema> {
  const { entrance, text, corrections, units } = draft;
  const filled = (['trip', 'pot', 'stove'] as const).filter((part) => Object.keys(draft[part]).length > 0);
  return {
    name,
    entrance,
    ...(text === '' ? {} : { lines: text.split('\n') }),
    ...(corrections.length === 0 ? {} : { corrections: [...corrections] }),
    ...Object.fromEntries(filled.map((part) => [part, draft[part]])),
    ...(units === null ? {} : { units }),
  };
}

function fromFile({ name, lines = [], ...parts }: z.infer<typeof kitSchema>): Kit {
  const given = Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined)) as Partial<Draft>;
  return { name, draft: { ...EMPTY_DRAFT, ...given, text: lines.join('\n') } };
}
