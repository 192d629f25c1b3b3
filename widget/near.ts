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
    ask();
    void import('./index.js');
  },
  { rootMargin: '100%' },
);

/** Asks for the part that judges together with the elements, where it is sure to be wanted: else it would be asked for once they are there. */
function ask(): void {
  const judges = (part: Promise<unknown>) => void part.catch(() => undefined);
  if (document.querySelector('brimwise-check:not(:empty), brimwise-check[from], brimwise-check[list]') !== null) {
    judges(import('./judge.js'));
  } else if (document.querySelector('[capacity], [diameter]')?.matches('brimwise-pot, brimwise-verdict') === true) {
    judges(import('./judge-pot.js'));
  }
}

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
