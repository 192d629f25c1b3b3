/** What a panel does with a selection that comes in from the page. */
import { html, nothing, render } from 'lit';
import type { BrimwiseCheck, Draft } from '../widget/index.js';
import { message } from './browser.js';
import { isEmpty, replacedDraft } from './draft.js';
import { byId, keep } from './face.js';
import { onHandedOver, type HandedSelection } from './handover.js';
import { potFigures } from './pot-figures.js';

/** A draft with a selection in it, and what must be said of that. */
interface Arrival {
  readonly draft: Draft;
  readonly told: readonly string[];
  /** What was selected, where the draft shows only what was understood of it. */
  readonly selected?: string;
}

/** Puts each selection that comes in into the element; what stood there can be brought back. */
export async function takeArrivals(check: BrimwiseCheck): Promise<void> {
  await onHandedOver(taker(check));
}

/** What puts a selection into the element. */
export function taker(check: BrimwiseCheck): (selection: HandedSelection, adds?: boolean) => void {
  show([], undefined, replacedDraft());
  return (selection, adds = false) => {
    const before = check.draft;
    const { draft, told, selected } = adds ? added(selection, before) : arrived(selection, before);
    take(draft);
    show(told, selected, isEmpty(before) || draft === before ? undefined : before);
    if (adds) return;
    // A pick by keys leaves the focus in the page.
    window.focus();
    if (draft === before) check.focus();
    else void check.focusResult();
  };

  function take(draft: Draft): void {
    check.draft = draft;
    void keep(draft);
  }

  function show(told: readonly string[], selected?: string, before?: Draft): void {
    const bringBack = (draft: Draft) => {
      const now = check.draft;
      take(draft);
      // The other way round again: neither is lost.
      show([], undefined, isEmpty(now) ? undefined : now);
      check.focus();
    };
    byId('told').textContent = told.join(' ');
    render(
      html`${
        selected === undefined
          ? nothing
          : html`<details>
              <summary>${message('selected')}</summary>
              <pre>${selected}</pre>
            </details>`
      }${
        before === undefined
          ? nothing
          : html`<p>
              <button id="bring-back" type="button" @click=${() => bringBack(before)}>${message('bringBack')}</button>
            </p>`
      }`,
      byId('arrived'),
    );
  }
}

/** Below what stands there as a list. */
function added({ text }: HandedSelection, before: Draft): Arrival {
  const all = before.text.trim() === '' ? text : `${before.text.trimEnd()}\n\n${text}`;
  return { draft: { ...before, entrance: 'list', text: all }, told: [message('added')] };
}

function arrived(selection: HandedSelection, before: Draft): Arrival {
  const { entrance, text, asTold, headed, partial, isFile } = selection;
  const file = asTold && isFile ? [message('fileNotRead')] : [];
  if (text.trim() === '') return { draft: before, told: [...(file.length > 0 ? file : [message('nothingRead')])] };
  const lost = [
    ...file,
    ...(asTold ? [text.includes('\n') ? message('cellsLost') : message('linesLost')] : []),
    ...(headed ? [message('headsCame')] : []),
    ...(partial ? [message('partlyShown')] : []),
  ];
  const list = { ...before, entrance: 'list', text, corrections: [] } as const;
  if (entrance === 'list') return { draft: list, told: lost };
  const figures = potFigures(text);
  if (!figures) return { draft: list, told: [message('noPot'), ...lost] };
  const { pot, stove, guesses } = figures;
  const told = [message('potTaken'), ...guesses.map((guess) => message('guessed', guess))];
  return { draft: { ...before, entrance: 'pot', pot, stove }, told, selected: text };
}
