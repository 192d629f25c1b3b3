/** Registers the elements. A page may load it twice, in two versions: the first one stays. */
import type { Report } from '../core/index.js';
import { BrimwiseCheck } from './check-element.js';
import type { Draft } from './draft.js';
import { BrimwisePot } from './pot-element.js';

const CLASSES = { 'brimwise-check': BrimwiseCheck, 'brimwise-pot': BrimwisePot };

for (const [name, element] of Object.entries(CLASSES)) {
  if (!customElements.get(name)) customElements.define(name, element);
}

declare global {
  interface HTMLElementEventMap {
    'brimwise-draft': CustomEvent<Draft>;
    'brimwise-report': CustomEvent<Report | null>;
  }
  interface HTMLElementTagNameMap {
    'brimwise-check': BrimwiseCheck;
    'brimwise-pot': BrimwisePot;
  }
}

export { BrimwiseCheck, BrimwisePot };
export { EMPTY_DRAFT } from './draft.js';
export type { Draft };
