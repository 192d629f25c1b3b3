/** What the Tab key should reach, from links to fields; a text that scrolls by keys says so itself. */
const STOPS = 'a[href], input, select, textarea, button, summary, [tabindex="0"]';

/** All elements in the order they are read, those in shadow roots where their hosts stand. */
export function everythingIn(root: ParentNode): Element[] {
  return [...root.querySelectorAll('*')].flatMap((element) => [
    element,
    ...(element.shadowRoot === null ? [] : everythingIn(element.shadowRoot)),
  ]);
}

/** Where Tab stopped. */
export interface Stop {
  readonly element: HTMLElement;
  readonly showsFocus: boolean;
}

/** Where the focus is, within shadow roots too; null where it is nowhere. */
export function stopNow(): Stop | null {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  if (at === null || at === document.body) return null;
  const { outlineStyle, outlineWidth } = getComputedStyle(at.classList.contains('vh') ? at.parentElement! : at);
  return { element: at as HTMLElement, showsFocus: outlineStyle === 'solid' && Number.parseFloat(outlineWidth) >= 2 };
}

/** What is wrong with the way that Tab took through all this: what it missed, what has no name, what stands out of order, whose focus is not seen. */
export function faultsOf(stops: readonly Stop[], all: readonly Element[]): string[] {
  const reached = stops.map(({ element }) => element);
  const missed = all.filter((one) => one instanceof HTMLElement && takesTab(one) && !reached.includes(one));
  const nameless = reached.filter((element) => nameOf(element) === '');
  const early = reached.filter((element, i) => i > 0 && all.indexOf(element) <= all.indexOf(reached[i - 1]!));
  const unseen = stops.filter(({ showsFocus }) => !showsFocus).map(({ element }) => element);
  return Object.entries({ missed, nameless, early, unseen }).flatMap(([fault, where]) =>
    where.map(({ outerHTML }) => `${fault}: ${outerHTML}`),
  );
}

function takesTab(one: HTMLElement): boolean {
  if (!one.matches(STOPS) || !one.checkVisibility() || (one as HTMLInputElement).disabled) return false;
  // Of a group of radio buttons the keys reach the chosen one.
  if ((one as HTMLInputElement).type === 'radio' && !(one as HTMLInputElement).checked) return false;
  return one.closest('details:not([open]) > :not(summary)') === null;
}

/** The name that a screen reader says: of the field, of its label, or the words on it. */
function nameOf(stop: HTMLElement): string {
  const labels = (stop as HTMLInputElement).labels ?? [];
  return (stop.ariaLabel ?? [...labels].map((label) => label.textContent).join(' ')) || stop.textContent.trim();
}
