import { html, type TemplateResult } from 'lit';

/** A heading of the level that the page around leaves free, 1 to 6. */
export function heading(level: number, kind: string, content: unknown): TemplateResult {
  switch (Math.min(6, level)) {
    case 1:
      return html`<h1 class=${kind}>${content}</h1>`;
    case 2:
      return html`<h2 class=${kind}>${content}</h2>`;
    case 3:
      return html`<h3 class=${kind}>${content}</h3>`;
    case 4:
      return html`<h4 class=${kind}>${content}</h4>`;
    case 5:
      return html`<h5 class=${kind}>${content}</h5>`;
    default:
      return html`<h6 class=${kind}>${content}</h6>`;
  }
}
