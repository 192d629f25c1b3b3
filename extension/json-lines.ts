/** A text that is no JSON, from this line on (1-based). */
export class NoJson extends Error {
  readonly line: number;

  constructor(line: number) {
    super(`Line ${line} is no JSON.`);
    this.line = line;
  }
}

/** A value read from JSON, and the line on which each value within it begins. */
export interface JsonWithLines {
  readonly value: unknown;
  /** 1-based; the line of the nearest value around where there is none at the path. */
  readonly lineOf: (path: readonly PropertyKey[]) => number;
}

/** Deeper than any file of ours; a reader that calls itself must stop somewhere. */
const DEEPEST = 40;

/**
 * Reads JSON as JSON.parse does, and remembers the lines, which JSON.parse tells in some browsers and for some faults only.
 * @throws NoJson
 */
export function parseJsonWithLines(text: string): JsonWithLines {
  const starts = new Map<string, number>();
  let at = 0;

  const value = read([]);
  skipSpace();
  if (at < text.length) fail();
  return {
    value,
    lineOf(path) {
      for (let length = path.length; length > 0; length -= 1) {
        const start = starts.get(keyOf(path.slice(0, length)));
        if (start !== undefined) return lineAt(start);
      }
      return 1;
    },
  };

  function read(path: readonly PropertyKey[]): unknown {
    skipSpace();
    starts.set(keyOf(path), at);
    if (path.length > DEEPEST) fail();
    switch (text[at]) {
      case '{':
        return readObject(path);
      case '[':
        return readArray(path);
      case '"':
        return readString();
      default:
        return readWord();
    }
  }

  function readObject(path: readonly PropertyKey[]): object {
    const entries: [string, unknown][] = [];
    readMembers('}', () => {
      if (text[at] !== '"') fail();
      const name = readString();
      skipSpace();
      take(':');
      entries.push([name, read([...path, name])]);
    });
    return Object.fromEntries(entries);
  }

  function readArray(path: readonly PropertyKey[]): unknown[] {
    const values: unknown[] = [];
    readMembers(']', () => values.push(read([...path, values.length])));
    return values;
  }

  function readMembers(end: string, readOne: () => void): void {
    at += 1;
    skipSpace();
    if (text[at] === end) {
      at += 1;
      return;
    }
    for (;;) {
      skipSpace();
      readOne();
      skipSpace();
      if (text[at] === end) break;
      take(',');
    }
    at += 1;
  }

  function readString(): string {
    let end = at + 1;
    while (end < text.length && text[end] !== '"' && text[end] !== '\n') end += text[end] === '\\' ? 2 : 1;
    return readPiece(end + 1) as string;
  }

  /** A number, true, false or null. */
  function readWord(): unknown {
    const [word = ''] = /^[-+.\w]{1,400}/.exec(text.slice(at, at + 400)) ?? [];
    return readPiece(at + word.length);
  }

  function readPiece(end: number): unknown {
    let piece: unknown;
    try {
      piece = JSON.parse(text.slice(at, end));
    } catch {
      fail();
    }
    at = end;
    return piece;
  }

  function take(mark: string): void {
    if (text[at] !== mark) fail();
    at += 1;
  }

  function skipSpace(): void {
    while (at < text.length && ' \t\n\r'.includes(text[at]!)) at += 1;
  }

  function fail(): never {
    throw new NoJson(lineAt(at));
  }

  function lineAt(offset: number): number {
    return text.slice(0, offset).split('\n').length;
  }
}

function keyOf(path: readonly PropertyKey[]): string {
  return path.map(String).join('\n');
}
