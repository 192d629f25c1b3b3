/** Registers `<brimwise-check>`. A page may load it twice. */
import { BrimwiseCheck } from './check-element.js';

if (!customElements.get('brimwise-check')) customElements.define('brimwise-check', BrimwiseCheck);

declare global {
  interface HTMLElementTagNameMap {
    'brimwise-check': BrimwiseCheck;
  }
}

export { BrimwiseCheck };
export { EMPTY_DRAFT, type Draft } from './draft.js';
