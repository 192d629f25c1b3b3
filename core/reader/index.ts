/** The next reader, beside the one in use: claims over flat tokens. DEVELOPERS.md tells how far it is. */
export { createReader } from './read.js';
export { RULES } from './claims/index.js';
export { tell } from './items/tell.js';
