import type { Given } from '../../model/given.js';
import { stated } from '../items/draft.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { totalOf } from './company.js';

/** A longer row tells more than a count. */
const LONGEST = 12;

/** "Kids: 22" and on the next line "Leaders: 5": people who are counted row by row are one party. */
export class RollCall {
  private line = 0;
  private rows: { readonly value: number; readonly anyone: boolean }[] = [];
  private words: string[] = [];
  /** What the rows so far came to. */
  private given: Given<number> | undefined;

  /** Takes what a row tells of people; gives what it comes to with the rows right before it, and whether those were added. `known` is what the text has told so far. */
  hear(
    stretch: Stretch,
    people: Given<number> | undefined,
    known: Given<number> | undefined,
  ): { readonly given: Given<number> | undefined; readonly added: boolean } {
    const counted = termsOf(stretch, 'people')[0];
    const word = stretch.tokens[counted?.first ?? -1]?.fold;
    if (people?.grounds !== 'stated' || word === undefined || stretch.tokens.length > LONGEST) {
      this.given = undefined;
      return { given: people, added: false };
    }
    const goesOn =
      this.given !== undefined &&
      this.given === known &&
      stretch.row.line === this.line + 1 &&
      !this.words.includes(word);
    const anyone = termsOf(stretch, 'anyone').length > 0;
    const row = { value: people.value, anyone };
    this.rows = goesOn ? [...this.rows, row] : [row];
    this.words = goesOn ? [...this.words, word] : [word];
    this.line = stretch.row.line;
    this.given = goesOn ? stated(totalOf(this.rows), people.span ?? [0, 0]) : people;
    return { given: this.given, added: goesOn };
  }
}
