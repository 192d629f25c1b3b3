/** The reader with every language. */
import { LANGUAGES } from '../data/words/index.js';
import { learn } from './text/lexicon.js';

learn(LANGUAGES);

export { readList } from './read.js';
