import { html, type PropertyDeclarations, type TemplateResult } from 'lit';
import { BrimwiseElement, settingProperties } from './element.js';
import { isAsked } from './draft.js';
import { loadJudge, judgeAtHand } from './judging.js';
import type { ElementName } from './settings.js';
import { verdict } from './views/verdict.js';

/** `<brimwise-verdict>`: a fixed verdict on the pot of a review: attributes in, sentence and drawing out, nothing to type. */
export class BrimwiseVerdict extends BrimwiseElement {
  static override properties: PropertyDeclarations = settingProperties('brimwise-verdict');

  protected get tag(): ElementName {
    return 'brimwise-verdict';
  }

  protected override settledChanged(): void {
    this.judged = judgeAtHand()?.judge(this.settled.draft, this.words) ?? null;
    if (judgeAtHand() === null && isAsked(this.settled.draft)) void this.#judgeLater();
  }

  async #judgeLater(): Promise<void> {
    await loadJudge('pot');
    if (judgeAtHand() !== null) this.settleAnew();
  }

  override render(): TemplateResult {
    const { judged, settled } = this;
    // Where there is nothing to judge, what the writer put into the element stands.
    if (judged === null) return html`<slot></slot>`;
    return this.frame(this.words.verdict.region, verdict(judged, settled.level, settled.rows, this.words));
  }
}
