/** The door for one typed pot: it reads no list, and of English knows the measures alone. */
import { MEASURES } from './data/english-measures.js';
import { learn } from './reading/text/lexicon.js';

learn([MEASURES]);

export * from './typed-door.js';
export * from './later.js';
