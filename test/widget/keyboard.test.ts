import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BrimwiseCheck, BrimwisePot, BrimwiseVerdict } from '../../widget/index.js';
import '../../widget/index.js';

type Own = BrimwiseCheck | BrimwisePot | BrimwiseVerdict;

const POT = 'diameter="130" height="95" stove="alcohol" burner="60"';
const STATES = {
  'a list':
    '<brimwise-check>Pot 1.3 L\nGas stove, screws on the canister\nGas 230 g\nfoil windscreen\nqwertz</brimwise-check>',
  'nothing yet': '<brimwise-check></brimwise-check>',
  'one pot': `<brimwise-pot ${POT}></brimwise-pot>`,
  'one pot with locked fields': `<brimwise-pot people="2" locked="people diameter stove" ${POT}></brimwise-pot>`,
  'a verdict': `<brimwise-verdict ${POT} capacity="1.1 L"></brimwise-verdict>`,
};

/** What the keys reach from the button before the element to the one after it. */
async function walk(source: string): Promise<{ element: Own; stops: HTMLElement[] }> {
  document.body.innerHTML = `<main><button id="before">Before</button>${source}<button id="after">After</button></main>`;
  const element = document.querySelector<Own>('brimwise-check, brimwise-pot, brimwise-verdict')!;
  await element.updateComplete;
  document.querySelector<HTMLElement>('#before')!.focus();
  const stops: HTMLElement[] = [];
  for (let pressed = 0; pressed < 200; pressed++) {
    await sendKeys({ press: 'Tab' });
    if (document.activeElement?.id === 'after') return { element, stops };
    stops.push(element.shadowRoot!.activeElement as HTMLElement);
  }
  throw new Error('The keys do not get out of the element.');
}

/** The name that a screen reader says: of the field, of its label, or the words on it. */
function nameOf(stop: HTMLElement): string {
  const labels = (stop as HTMLInputElement).labels ?? [];
  return (stop.ariaLabel ?? [...labels].map((label) => label.textContent).join(' ')) || stop.textContent.trim();
}

afterEach(() => document.body.replaceChildren());

describe('by keyboard alone', () => {
  for (const [state, source] of Object.entries(STATES)) {
    it(`everything is reached in the order it is read, has a name, shows its focus, and lets go again: ${state}`, async () => {
      const { element, stops } = await walk(source);
      const all = [
        ...element.shadowRoot!.querySelectorAll<HTMLElement>('input, select, textarea, button, summary'),
      ].filter(
        (one) =>
          one.checkVisibility() &&
          !(one as HTMLInputElement).disabled &&
          one.closest('details:not([open]) > :not(summary)') === null,
      );
      // Of a group of radio buttons the keys reach the chosen one.
      const wanted = all.filter(
        (one) => (one as HTMLInputElement).type !== 'radio' || (one as HTMLInputElement).checked,
      );
      expect(stops.length).to.be.greaterThan(0);
      expect(wanted.filter((one) => !stops.includes(one)).map(nameOf)).to.deep.equal([]);
      expect(stops.filter((one) => nameOf(one) === '').map(({ outerHTML }) => outerHTML)).to.deep.equal([]);
      const inOrder = stops.every(
        (stop, i) => i === 0 || (stops[i - 1]!.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0,
      );
      expect(inOrder).to.equal(true);
      for (const stop of stops) {
        stop.focus();
        const { outlineStyle, outlineWidth } = getComputedStyle(
          stop.classList.contains('vh') ? stop.parentElement! : stop,
        );
        expect([outlineStyle, Number.parseFloat(outlineWidth) >= 2], nameOf(stop)).to.deep.equal(['solid', true]);
      }
    });
  }

  it('no focus is taken when an element appears', async () => {
    document.body.innerHTML = `<main><button id="before">Before</button></main>`;
    document.querySelector<HTMLElement>('#before')!.focus();
    for (const source of Object.values(STATES)) document.querySelector('main')!.insertAdjacentHTML('beforeend', source);
    await Promise.all(
      [...document.querySelectorAll<Own>(':is(brimwise-check, brimwise-pot, brimwise-verdict)')].map(
        (one) => one.updateComplete,
      ),
    );
    expect(document.activeElement!.id).to.equal('before');
  });
});
