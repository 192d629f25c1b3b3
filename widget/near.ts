import { reserve } from './reserve.js';

/**
 * For a post that should cost nothing until a reader comes to the widget: loads the elements from beside this file once one of them is
 * within a screen of being seen. Until then the text in the element stands.
 */
const near = new IntersectionObserver(
  (entries) => {
    if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
    near.disconnect();
    added.disconnect();
    void import('./index.js');
  },
  { rootMargin: '100%' },
);

function wait(): void {
  for (const element of document.querySelectorAll<HTMLElement>('brimwise-check, brimwise-pot, brimwise-verdict')) {
    reserve(element);
    near.observe(element);
  }
}

/** A site that changes posts without a new page brings the element after this file. */
const added = new MutationObserver(wait);
added.observe(document, { childList: true, subtree: true });
wait();
