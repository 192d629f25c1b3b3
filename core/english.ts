/** The public door with the English words alone. Those of other languages are loaded from beside it when a text or its page wants them. */
import { en } from './data/words/en.js';
import { learn } from './reading/text/lexicon.js';

learn([en]);

export * from './door.js';
export * from './later.js';
