/** *This page*: all that the page is for, and each of its kit lists and pot figures, to take or to add. */
import { html, nothing, render, type TemplateResult } from 'lit';
import { currentTab, mayReadFiles, message, thisWindow } from './browser.js';
import { byId } from './face.js';
import type { HandedSelection } from './handover.js';
import { offersIn, wholeOf, withTripWords, type Offer } from './offers.js';
import { seenIn } from './reading-page.js';

/** Makes the button look, and offer what it finds; `take` gets the one that is chosen, to stand alone or below what is there. */
export function offerThisPage(take: (selection: HandedSelection, adds: boolean) => void): void {
  const button = byId('this-page');
  /** All that was seen when the button was pressed. */
  let page = '';
  let added = new Set<Offer>();
  button.textContent = message('thisPage');
  button.addEventListener('click', () => void look());

  async function look(): Promise<void> {
    const tab = await currentTab();
    const told = byId('told');
    let offers: readonly Offer[];
    let partial: boolean;
    try {
      if (tab === undefined) throw new Error('No page is open.');
      const seen = await seenIn(tab.id);
      page = seen.map(({ text }) => text).join('\n\n');
      partial = seen.some((frame) => frame.partial);
      const single = offersIn(seen.flatMap(({ parts }) => parts));
      const whole = wholeOf(page, single);
      offers = whole ? [whole, ...single] : single;
    } catch {
      show([]);
      const isFile = !(await mayReadFiles()) && (tab?.url === undefined || tab.url.startsWith('file:'));
      told.textContent = [message('pageNotRead'), ...(isFile ? [message('fileNotRead')] : [])].join(' ');
      return;
    }
    added = new Set();
    const count = offers.length === 0 ? message('nothingFound') : message('found', String(offers.length));
    told.textContent = [count, ...(partial ? [message('partlyShown')] : [])].join(' ');
    show(offers);
    byId('offers').querySelector('button')?.focus();
  }

  async function choose(offer: Offer, offers: readonly Offer[], adds: boolean): Promise<void> {
    const text = offer.entrance === 'list' && !adds ? withTripWords(offer.text, page) : offer.text;
    if (adds) added.add(offer);
    show(adds ? offers : []);
    take({ windowId: (await thisWindow()).id, entrance: offer.entrance, text, asTold: false }, adds);
  }

  function show(offers: readonly Offer[]): void {
    const row = (offer: Offer): TemplateResult =>
      html`<li>
        <button type="button" class="offer" @click=${() => void choose(offer, offers, false)}>${nameOf(offer)}</button>
        <span>${sortOf(offer)}</span>
        ${
          offer.entrance === 'pot'
            ? nothing
            : html`<button
                type="button"
                class="add"
                ?disabled=${added.has(offer)}
                aria-label=${message('addLabel', nameOf(offer))}
                @click=${() => void choose(offer, offers, true)}
              >
                ${message('add')}
              </button>`
        }
      </li>`;
    render(
      offers.length === 0
        ? nothing
        : html`<ul class="offers">
            ${offers.map(row)}
          </ul>`,
      byId('offers'),
    );
  }
}

/** What it is, and where on the page it stands where that is beside what the page is for. */
function sortOf({ entrance, items, zone }: Offer): string {
  const sort = entrance === 'pot' ? message('offeredPot') : message('offeredList', String(items));
  const place = zone === 'main' ? '' : zone === 'comments' ? message('inComments') : message('besidePage');
  return place === '' ? sort : `${sort} · ${place}`;
}

/** By its heading; without one, by how it begins. */
function nameOf({ heading, text, whole }: Offer): string {
  return whole ? message('allOfPage') : heading || text.slice(0, 60).replace(/\s+/g, ' ');
}
