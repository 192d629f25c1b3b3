/** Registers `<brimwise-check>`. A page may load it twice. */
import { BrimwiseCheck } from './check-element.js';
import type { Draft } from './draft.js';

if (!customElements.get('brimwise-check')) customElements.define('brimwise-check', BrimwiseCheck);

declare global {
  interface HTMLElementEventMap {
    'brimwise-draft': CustomEvent<Draft>;
  }
  interface HTMLElementTagNameMap {
    'brimwise-check': BrimwiseCheck;
  }
}

export { BrimwiseCheck };
export { EMPTY_DRAFT } from './draft.js';
export type { Draft };
