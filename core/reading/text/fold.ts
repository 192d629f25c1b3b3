import { ENTITIES, LONGER, SAME } from './characters.js';

/**
 * Folded codes of one stretch of text: lower case, no accents, ASCII digits and quotes, entities decoded. `from` and `to`
 * lead each code back to the UTF-16 offsets it was read from, so that every span is one into the text as pasted.
 * The buffers are shared and good until the next call of `fold`.
 */
export interface Folded {
  codes: Uint16Array;
  from: Uint32Array;
  to: Uint32Array;
  length: number;
}

/** Stands where a tag was: parts words, is no word itself. */
export const TAG = 1;

/** Stands for emoji and other pictures. */
export const PICTURE = 2;

const DIAMETER = 'ø'.charCodeAt(0);

const TO = table();

/** One folded code for each UTF-16 unit; 0 drops it. */
function table(): Uint16Array {
  const codes = new Uint16Array(65536);
  for (let code = 0; code < 65536; code++) codes[code] = code;
  const fold = (from: number, to: number) => {
    for (let code = from; code <= to; code++) {
      const char = String.fromCharCode(code);
      const plain = char.normalize('NFKD').toLowerCase();
      if (plain.length > 0 && !plain.startsWith(' ')) codes[code] = plain.charCodeAt(0);
    }
  };
  for (let code = 0; code < 32; code++) codes[code] = 32;
  fold(65, 90);
  fold(0xc0, 0x24f);
  fold(0x370, 0x52f);
  fold(0x1e00, 0x1eff);
  fold(0xff01, 0xff5e);
  codes[0x00d8] = codes[0x00f8] = 111;
  for (const [to, froms] of SAME) for (const from of froms) codes[from.charCodeAt(0)] = to.charCodeAt(0);
  codes[0xff5e] = 126;
  for (const [from, to] of [
    [0x300, 0x36f],
    [0x200b, 0x200f],
    [0x202a, 0x202e],
    [0x2060, 0x2064],
    [0xfe00, 0xfe0f],
    [0xad, 0xad],
    [0xfeff, 0xfeff],
    [0x20e3, 0x20e3],
  ] as const)
    codes.fill(0, from, to + 1);
  for (const [from, to] of [
    [0xd800, 0xdfff],
    [0x2600, 0x26ff],
    [0x2700, 0x2712],
    [0x2717, 0x27bf],
    [0x2190, 0x21ff],
    [0x2b00, 0x2bff],
    [0x1f, 0x1f],
  ] as const)
    codes.fill(PICTURE, from, to + 1);
  codes[0x2716] = codes[0x2715] = '×'.charCodeAt(0);
  return codes;
}

export function isLetter(code: number): boolean {
  return (
    (code >= 97 && code <= 122) ||
    (code > 191 && code !== 215 && code !== 247 && code !== DIAMETER && code < 0x2000) ||
    code >= 0x2e80
  );
}

/** Characters of the scripts that are written without spaces: each counts as a word. */
export function isUnspaced(code: number): boolean {
  return code >= 0x2e80 && code <= 0x9fff;
}

const buffer: Folded = {
  codes: new Uint16Array(1024),
  from: new Uint32Array(1024),
  to: new Uint32Array(1024),
  length: 0,
};

/** One character becomes no more than so many codes. */
const LONGEST_FOLD = 3;
/** After the last code stand so many noughts: who looks ahead sees the end, not what an earlier text left behind. */
const END_CODES = 4;

function makeRoom(characters: number): void {
  const room = characters * LONGEST_FOLD + END_CODES;
  if (room <= buffer.codes.length) return;
  buffer.codes = new Uint16Array(room);
  buffer.from = new Uint32Array(room);
  buffer.to = new Uint32Array(room);
}

function put(code: number, from: number, to: number): void {
  const at = buffer.length++;
  buffer.codes[at] = code;
  buffer.from[at] = from;
  buffer.to[at] = to;
}

const TILDE = '~'.charCodeAt(0);
const STRIKES = /^[<[]\/?(?:s|del|strike)[\s>\]]/i;
/** Characters that tell whether a tag strikes through. */
const LONGEST_STRIKE = 10;

/** Folds `text` from `start` to `end`; with `html`, tags, those of forums too, fall away and entities are decoded. */
export function fold(text: string, start: number, end: number, html = false): Folded {
  makeRoom(end - start);
  buffer.length = 0;
  const { codes, from, to } = buffer;
  for (let at = start; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code < 128 && (!html || (code !== 60 && code !== 38 && code !== 91))) {
      const i = buffer.length++;
      codes[i] = TO[code] ?? code;
      from[i] = at;
      to[i] = at + 1;
      continue;
    }
    if (html && (code === 60 || code === 91)) {
      const close = code === 60 ? tagEnd(text, at, end) : forumTagEnd(text, at, end);
      if (close > 0) {
        // What is struck through stands between doubled tildes in plain text.
        const marks = STRIKES.test(text.slice(at, Math.min(close, at + LONGEST_STRIKE))) ? [TILDE, TILDE] : [TAG];
        for (const mark of marks) put(mark, at, close);
        at = close - 1;
        continue;
      }
    }
    if (html && code === 38) {
      const semicolon = semicolonAfter(text, at, end);
      const char = semicolon > 0 ? entity(text.slice(at + 1, semicolon)) : undefined;
      if (char !== undefined) {
        putChar(char.charCodeAt(0), at, semicolon + 1, text.charCodeAt(at - 1), text.charCodeAt(semicolon + 1));
        at = semicolon;
        continue;
      }
    }
    putChar(code, at, at + 1, text.charCodeAt(at - 1), text.charCodeAt(at + 1));
  }
  codes.fill(0, buffer.length, buffer.length + END_CODES);
  return buffer;
}

/** The semicolon that ends an entity: close by, or there is none (0). */
function semicolonAfter(text: string, at: number, end: number): number {
  for (let i = at + 1; i < end && i < at + 10; i++) if (text.charCodeAt(i) === 59) return i;
  return 0;
}

function putChar(code: number, from: number, to: number, before: number, after: number): void {
  const longer = code > 127 ? LONGER.get(code) : undefined;
  if (longer !== undefined) {
    for (let i = 0; i < longer.length; i++) put(longer.charCodeAt(i), from, to);
  } else if (code === 0xd8 || code === 0xf8) {
    put(isWord(before) || isWord(after) ? 111 : DIAMETER, from, to);
  } else {
    const folded = TO[code] ?? code;
    if (folded !== 0) put(folded, from, to);
  }
}

function isWord(code: number): boolean {
  return isLetter(TO[code] ?? 0);
}

/** Where the tag that opens at `at` ends; 0 where `<` opens none ("pot < 1 l"). */
export function tagEnd(text: string, at: number, end: number): number {
  const next = text.charCodeAt(at + 1);
  if (!(next === 47 || next === 33 || (next >= 97 && next <= 122) || (next >= 65 && next <= 90))) return 0;
  const limit = Math.min(end, at + 2000);
  for (let i = at + 1; i < limit; i++) if (text.charCodeAt(i) === 62) return i + 1;
  return 0;
}

const FORUM_TAGS = new Set(
  '* b i u s li ul ol td th tr url img list size code font color colour quote table center'.split(' '),
);
const LONGEST_FORUM_TAG = 300;

/** Where a tag as forums write them ends: "[b]", "[/list]", "[url=…]"; 0 where the bracket opens none. */
export function forumTagEnd(text: string, at: number, end: number): number {
  const from = text[at + 1] === '/' ? at + 2 : at + 1;
  let to = from;
  while (to < end && to - from < 7 && !']= '.includes(text[to]!)) to++;
  if (!FORUM_TAGS.has(text.slice(from, to).toLowerCase())) return 0;
  if (text[to] === ']') return to + 1;
  if (text[to] !== '=') return 0;
  const limit = Math.min(end, to + LONGEST_FORUM_TAG);
  for (let i = to; i < limit; i++) if (text[i] === ']') return i + 1;
  return 0;
}

function entity(name: string): string | undefined {
  if (name.startsWith('#')) {
    const code = name[1] === 'x' || name[1] === 'X' ? parseInt(name.slice(2), 16) : parseInt(name.slice(1), 10);
    return code > 0 && code < 65536 ? String.fromCharCode(code) : undefined;
  }
  return ENTITIES.get(name);
}

/** A word or phrase as the lexicon keeps it: folded, its words parted by one space, hyphens counting as spaces. */
export function foldPhrase(phrase: string): string[] {
  const { codes, length } = fold(phrase, 0, phrase.length);
  const words: string[] = [];
  let word = '';
  const flush = () => {
    if (word !== '') words.push(word);
    word = '';
  };
  for (let i = 0; i < length; i++) {
    const code = codes[i] ?? 0;
    if (isUnspaced(code)) {
      flush();
      words.push(String.fromCharCode(code));
    } else if (isLetter(code)) word += String.fromCharCode(code);
    else if (code === 39 && word !== '' && isLetter(codes[i + 1] ?? 0)) word += "'";
    else {
      flush();
      if (code !== 32 && code !== 45 && code !== 95) words.push(String.fromCharCode(code));
    }
  }
  flush();
  return words;
}
