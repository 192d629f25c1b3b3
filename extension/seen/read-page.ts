/** Runs in each frame of a page when *This page* is pressed; what it comes to is what the browser hands back. */
import { pageSeen } from './page.js';

export const result = pageSeen();
