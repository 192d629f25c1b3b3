import type { SectionMeaning } from '../data/words/words.js';
import { phrase } from '../model/phrase.js';
import type { LineUse } from '../model/reading.js';
import { termsOf, type Stretch } from './items/stretch.js';
import type { Role } from './text/lexicon.js';

/** Words that settle what a size belongs to, when it is none of ours. */
const SETTLED: ReadonlySet<Role> = new Set(['notKit', 'food', 'otherUse', 'rated', 'rate', 'water']);

/** What to say of a row from which nothing was read: that it is about something else, or that nobody could tell. */
export function unread(stretch: Stretch, section: SectionMeaning | undefined): { use: LineUse; because: string } {
  const ours = section === undefined || section === 'cook' || section === 'water' || section === 'fuel';
  const settled = stretch.tells(SETTLED);
  if (ours && !settled) {
    if (
      stretch.measures.some(
        (measure) => measure.unit.dimension === 'volume' && (section !== undefined || stretch.tokens.length < SHORT),
      )
    )
      return { use: 'not-understood', because: phrase`it gives a size, but names nothing that is known as cook kit` };
    if (section !== undefined && termsOf(stretch, 'container').some((term) => term.value === 'can'))
      return { use: 'not-understood', because: phrase`it does not say what the can holds` };
    if (section !== undefined && isEntry(stretch) && !stretch.tells(KNOWN))
      return { use: 'not-understood', because: phrase`it stands among the cook kit, and no word of it is known` };
  }
  return {
    use: 'not-cook-kit',
    because: stretch.byRole.has('kind') ? phrase`cook kit is only mentioned` : phrase`nothing here names cook kit`,
  };
}

/** Tokens of a line that is an entry rather than a sentence. */
const SHORT = 14;

/** Words that tell what a line is about: none of them, and nobody could tell. */
const KNOWN: ReadonlySet<Role> = new Set([
  'kind',
  'container',
  'notKit',
  'tails',
  'heads',
  'food',
  'water',
  'fuelTypes',
  'otherUse',
  'section',
  'totals',
  'away',
  'no',
]);

/** "The Wexby thing from Tilda", "zorbo 400 g": an entry of the list, not a sentence beside it. */
function isEntry({ row, tokens, words }: Stretch): boolean {
  if (row.type === 'heading' || words === 0 || tokens.length >= SHORT) return false;
  return row.bullet || row.cells.length > 1 || (words <= MOST_WORDS && tokens.at(-1)?.fold !== '.');
}

/** Words of an entry that shows no mark. */
const MOST_WORDS = 6;
