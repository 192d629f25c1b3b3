/** Runs in a page when the menu item is picked; what it comes to is what the browser hands back. */
import { selected } from './selection.js';

export const result = selected() ?? null;
