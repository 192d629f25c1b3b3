/** Registers the elements. A page may load it twice, in two versions: the first one stays. */
import type { Report } from '../core/index.js';
import { BrimwiseCheck } from './check-element.js';
import type { Draft } from './draft.js';
import { keepHeights } from './element.js';
import { BrimwisePot } from './pot-element.js';
import { BrimwiseVerdict } from './verdict-element.js';

const CLASSES = { 'brimwise-check': BrimwiseCheck, 'brimwise-pot': BrimwisePot, 'brimwise-verdict': BrimwiseVerdict };

keepHeights(Object.keys(CLASSES));
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
    'brimwise-verdict': BrimwiseVerdict;
  }
}

export { BrimwiseCheck, BrimwisePot, BrimwiseVerdict };
export { EMPTY_DRAFT } from './draft.js';
export type { Draft };
