/** *This page*: the kit lists and pot figures of the page that one looks at, to choose among. */
import { html, render } from 'lit';
import { currentTabId, message, thisWindow } from './browser.js';
import { byId } from './face.js';
import type { HandedSelection } from './handover.js';
import { offersIn, type Offer } from './offers.js';
import { seenIn } from './reading-page.js';

/** Makes the button look, and offer what it finds; `take` gets the one that is chosen. */
export function offerThisPage(take: (selection: HandedSelection) => void): void {
  const button = byId('this-page');
  button.textContent = message('thisPage');
  button.addEventListener('click', () => void look());

  async function look(): Promise<void> {
    const tabId = await currentTabId();
    const told = byId('told');
    let offers: Offer[];
    try {
      if (tabId === undefined) throw new Error('No page is open.');
      offers = offersIn((await seenIn(tabId)).flatMap(({ parts }) => parts));
    } catch {
      show([]);
      told.textContent = message('pageNotRead');
      return;
    }
    told.textContent = offers.length === 0 ? message('nothingFound') : message('found', String(offers.length));
    show(offers);
  }

  function show(offers: readonly Offer[]): void {
    const choose = async ({ entrance, text }: Offer) => {
      show([]);
      take({ windowId: (await thisWindow()).id, entrance, text, asTold: false });
    };
    render(
      html`<ul class="offers">
        ${offers.map(
          (offer) =>
            html`<li>
              <button type="button" @click=${() => void choose(offer)}>${nameOf(offer)}</button>
              ${offer.entrance === 'pot' ? message('offeredPot') : message('offeredList', String(offer.items))}
            </li>`,
        )}
      </ul>`,
      byId('offers'),
    );
    byId('offers').querySelector('button')?.focus();
  }
}

/** By its heading; without one, by how it begins. */
function nameOf({ heading, text }: Offer): string {
  return heading || text.slice(0, 60).replace(/\s+/g, ' ');
}
