/* global document */
/** Puts the list that stands in the element into its field, as a page that keeps drafts would. */
for (const element of document.querySelectorAll('brimwise-check')) {
  element.draft = { text: element.querySelector('pre')?.textContent.trim() ?? '' };
}
