/**
 * For a post that should cost nothing until a reader comes to the widget: loads the elements from beside this file once one of them is
 * within a screen of being seen. Until then the text in the element stands.
 */
const waiting = document.querySelectorAll('brimwise-check, brimwise-pot, brimwise-verdict');

const observer = new IntersectionObserver(
  (entries) => {
    if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
    observer.disconnect();
    void import('./index.js');
  },
  { rootMargin: '100%' },
);
for (const element of waiting) observer.observe(element);
