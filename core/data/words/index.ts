import { da } from './da.js';
import { de } from './de.js';
import { en } from './en.js';
import { es } from './es.js';
import { fr } from './fr.js';
import { it } from './it.js';
import { ja } from './ja.js';
import { nl } from './nl.js';
import { no } from './no.js';
import { pl } from './pl.js';
import { pt } from './pt.js';
import { ru } from './ru.js';
import { sv } from './sv.js';
import type { Words } from './words.js';

/** Every language the reader knows. A further one is a file beside this, a line here and a line in on-demand.ts. */
export const LANGUAGES: readonly Words[] = [en, de, fr, es, it, pt, sv, no, da, nl, pl, ru, ja];
