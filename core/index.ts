/** The public door, with every language of the reader. */
import { LANGUAGES } from './data/words/index.js';
import { learn } from './reading/text/lexicon.js';

learn(LANGUAGES);

export * from './door.js';
