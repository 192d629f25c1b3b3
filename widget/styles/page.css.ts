import { css } from './css.js';

/** What is there before anything is judged: page, rows, fields, the list. Narrow first. Logical properties throughout; the parts answer to the width of their column, not of the window. */
export const page = css`
  :host {
    display: block;
    min-block-size: 0 !important; /* what the page reserves for it is for the time until it is there */
    transition: color 1ms; /* told when the page's ink changes */
  }
  :host([hidden]) {
    display: none !important; /* outdoes the display of a snippet */
  }
  .bw,
  .bw *,
  .bw *::before,
  .bw *::after {
    box-sizing: border-box;
  }
  .bw {
    container: bw frame / inline-size; /* bw: the nearest column, for components; frame: the whole, for page layout */
    background: var(--paper);
    color: var(--ink);
    border-block: var(--edge);
    font-family: var(--words);
    font-size: var(--t-body);
    line-height: var(--line-h);
    font-variant-numeric: lining-nums;
    text-align: start;
    /* What a page may hand down, and no reading bears. */
    font-weight: 400;
    font-style: normal;
    letter-spacing: normal;
    word-spacing: normal;
    text-transform: none;
    text-indent: 0;
    text-shadow: none;
    white-space: normal;
    writing-mode: horizontal-tb;
    cursor: auto;
    overflow-wrap: break-word;
    -webkit-text-size-adjust: 100%;
    text-size-adjust: 100%;
  }
  :where(.bw) :where(h1, h2, h3, h4, h5, p, ul, ol, dl, dd, figure, fieldset, legend, table) {
    margin: 0;
    padding: 0;
    border: 0;
    min-inline-size: 0;
  }
  :where(.bw) :where(h1, h2, h3, h4, h5) {
    font-size: inherit;
    font-weight: inherit;
    text-wrap: balance;
  }
  :where(.bw) :where(ul, ol) {
    list-style: none;
  }
  :where(.bw) :where(p) {
    text-wrap: pretty;
  }
  :where(.bw) :where(input, select, textarea, button) {
    font: inherit;
    color: inherit;
    background: none;
    border: 0;
    border-radius: 0;
    margin: 0;
    padding: 0;
  }
  :where(.bw) :where(button, summary) {
    cursor: pointer;
  }
  .bw :focus-visible {
    outline: var(--focus);
    outline-offset: 2px;
  }
  .vh {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  .nb {
    white-space: nowrap;
  }
  .fg {
    font-family: var(--figures);
    font-variant-numeric: lining-nums tabular-nums;
  }

  /* ---- Page and head ------------------------------------------------------------------------------------------------------ */
  .page {
    padding: var(--s2) var(--pad) var(--s4);
    max-inline-size: var(--max);
    margin-inline: auto;
  }
  .mast {
    display: flex;
    align-items: center;
    gap: var(--s2) var(--s3);
    border-block-end: 1.5px solid var(--ink);
  }
  .mark {
    display: inline-flex;
    align-items: center;
    gap: 0.4em;
    font-weight: 600;
    font-size: 1.0625em;
    letter-spacing: -0.005em;
    color: inherit;
    text-decoration: none;
    min-block-size: var(--target);
  }
  .mark svg {
    inline-size: 1.15em;
    block-size: 1.15em;
    flex: none;
  }
  .tabs {
    display: flex;
    gap: var(--s3);
    margin-inline-start: auto;
    font-family: var(--figures);
    font-size: var(--t-small);
  }
  .tabs label {
    display: flex;
    align-items: center;
    min-block-size: var(--target);
    padding-block: 4px;
    color: var(--pen);
    margin-block-end: -1.5px;
    white-space: nowrap;
    cursor: pointer;
    position: relative;
  }
  .tabs label:hover span {
    text-decoration: underline;
    text-underline-offset: 0.25em;
  }
  .tabs label:has(:checked) {
    color: var(--ink);
    font-weight: 600;
    border-block-end: 4px solid var(--ink);
    padding-block-end: 0;
  }
  .tabs label:has(:focus-visible) {
    outline: var(--focus);
    outline-offset: 2px;
  }

  /* ---- The row: margin, line, words. The one layout of the product. ---------------------------------------------------------
   What stands before the line is a figure, a label or a mark; what stands after it is words. Narrow, the margin folds up into
   a line of its own above the words, and only findings keep the line. */
  .row {
    position: relative;
  }
  .m {
    font-family: var(--figures);
    font-variant-numeric: lining-nums tabular-nums;
  }
  .row > .m:has(> .t) {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 0.6em;
    font-size: var(--t-note);
    line-height: 1.4;
    color: var(--pencil);
  }
  .m .t {
    font-size: var(--t-small);
    font-weight: 600;
    color: var(--ink);
  }

  /* ---- Fields: a value on a ruled line under its label ------------------------------------------------------------------------ */
  .strip {
    display: grid;
    grid-template-columns: repeat(3, 1fr);
    column-gap: var(--s3);
    row-gap: var(--s1);
    padding-block: var(--s2) var(--s1);
  }
  .trip-line {
    font-family: var(--figures);
    font-size: var(--t-small);
    line-height: 1.9;
    padding-block-start: var(--s1);
  }
  .trip-line .val {
    font-weight: 600;
    text-decoration: underline solid var(--line) 1.25px;
    text-underline-offset: 0.24em;
    white-space: nowrap;
  }
  .trip-line .val.assumed {
    font-weight: 400;
    text-decoration: underline dotted var(--ink-2) 2px;
  }
  .field {
    display: block;
    font-family: var(--figures);
    min-inline-size: 0;
    position: relative;
  }
  .field > .l {
    display: block;
    font-size: var(--t-note);
    line-height: 1.3;
    color: var(--pencil);
    white-space: nowrap;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .field > .v {
    display: flex;
    align-items: center;
    border-block-end: 1px solid var(--line);
    position: relative;
  }
  .field > .v:hover {
    border-block-end-color: var(--pen);
    box-shadow: 0 1px 0 var(--pen);
  }
  .field :is(input, select) {
    min-inline-size: 0;
    inline-size: 100%;
    block-size: 2.125rem;
    line-height: 2.125rem;
    font-size: 1.0625em;
    font-weight: 600;
    font-variant-numeric: lining-nums tabular-nums;
    appearance: none;
    text-overflow: ellipsis;
  }
  .field .u {
    color: var(--pencil);
    font-size: var(--t-note);
    padding-inline-start: 0.3em;
    white-space: nowrap;
  }
  .field input[size] {
    inline-size: auto;
  }
  .field .v:has(select)::after {
    content: '';
    inline-size: 0.4em;
    block-size: 0.4em;
    border: solid var(--pencil);
    border-width: 0 1.5px 1.5px 0;
    transform: rotate(45deg);
    margin-inline: 0.25em 0.2em;
    align-self: center;
    flex: none;
    pointer-events: none;
    translate: 0 -0.1em;
  }
  .field :is(input, select):focus-visible {
    outline-width: 2px;
    outline-offset: 0;
  }
  .field .v.assumed {
    border-block-end-style: dotted;
    border-block-end-width: 2px;
  }
  .strip:not(:has(.field)) {
    display: none;
  }
  .set {
    padding-block: var(--s1);
  }
  .choice label:has(:disabled) {
    color: var(--ink-2);
    cursor: auto;
  }
  .field.bad > .v {
    border-block-end: 2px solid var(--alarm);
  }
  .field .err {
    display: block;
    font-size: var(--t-note);
    line-height: 1.35;
    color: var(--alarm);
    padding-block-start: 0.25em;
  }
  .under {
    font-family: var(--figures);
    font-size: var(--t-note);
    color: var(--pencil);
    line-height: 1.4;
  }
  .choice {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s3);
    font-family: var(--figures);
  }
  .choice label {
    display: inline-flex;
    align-items: center;
    gap: 0.5em;
    min-block-size: var(--target);
    cursor: pointer;
    color: var(--pen);
  }
  .choice input {
    appearance: none;
    inline-size: 1.05em;
    block-size: 1.05em;
    flex: none;
    border: 1.5px solid var(--pen);
    border-radius: 50%;
    display: grid;
    place-items: center;
    cursor: pointer;
  }
  .choice input:checked {
    border-color: var(--ink);
  }
  .choice input:checked::after {
    content: '';
    inline-size: 0.5em;
    block-size: 0.5em;
    border-radius: 50%;
    border: 0.25em solid var(--ink);
  }
  .choice input[type='checkbox']:checked::after {
    inline-size: 0.34em;
    block-size: 0.72em;
    border: solid var(--ink);
    border-width: 0 2px 2px 0;
    border-radius: 0;
    transform: rotate(40deg);
    translate: 0 -0.08em;
  }
  .choice svg {
    inline-size: 1.5rem;
    block-size: 1.25rem;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.5;
  }
  .choice input[type='checkbox'] {
    border-radius: 0;
  }
  /* Not said: neither yes nor no. */
  .choice input:indeterminate[type='checkbox'] {
    border-style: dotted;
  }
  .choice label:has(:checked) {
    color: var(--ink);
    font-weight: 600;
  }
  .choice label:hover span {
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }

  /* ---- The list as pasted: ruled lines, numbers in the margin, proof marks under what was read ----------------------------------
   The textarea is on top with the real text; the layer below repeats it unseen and carries numbers, ruling and marks. Both
   share one font, width and wrapping, so a mark stays under its words. */
  .sheet {
    --n: 2.5rem;
    --gap: 0.75rem;
    --lh: 1.625rem;
    position: relative;
    border-block-start: 1px solid var(--rule);
  }
  .sheet .lines,
  .sheet textarea {
    font: 400 var(--t-body)/var(--lh) var(--words);
    padding-inline: calc(var(--n) + var(--gap)) 0;
    white-space: pre-wrap;
    overflow-wrap: break-word;
    letter-spacing: 0;
    font-variant-numeric: lining-nums;
  }
  .sheet .lines {
    color: transparent;
    counter-reset: ln;
    user-select: none;
  }
  .sheet .lines {
    white-space: normal;
  }
  .sheet .lines > div {
    white-space: pre-wrap;
    position: relative;
    counter-increment: ln;
    min-block-size: var(--lh);
    border-block-end: 0;
    background: linear-gradient(var(--rule), var(--rule)) 0 100% / 100% 1px no-repeat;
    margin-inline: calc(-1 * (var(--n) + var(--gap))) 0;
    padding-inline-start: calc(var(--n) + var(--gap));
  }
  .sheet .lines > div::before {
    content: counter(ln);
    position: absolute;
    inset-inline-start: 0;
    inset-block-start: 0;
    inline-size: calc(var(--n) - 0.6rem);
    text-align: end;
    white-space: nowrap;
    color: var(--pencil);
    font-family: var(--figures);
    font-size: var(--t-note);
    font-variant-numeric: tabular-nums;
  }
  .sheet .lines > .no::before {
    content: '–\\2002 ' counter(ln);
  }
  .sheet .lines > .huh::before {
    content: '?\\2002 ' counter(ln);
    color: var(--ink);
    font-weight: 700;
  }
  .sheet::after {
    content: '';
    position: absolute;
    inset-block: 0;
    inset-inline-start: var(--n);
    border-inline-start: 1px solid var(--line);
    pointer-events: none;
  }
  .sheet textarea {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
    resize: none;
    overflow: hidden;
    outline-offset: 3px;
  }
  .sheet :is(b, i, u) {
    font: inherit;
    text-decoration: underline var(--ink-2) 1px;
    text-underline-offset: 0.26em;
    text-decoration-skip-ink: none;
  }
  .sheet b {
    text-decoration-color: var(--ink);
    text-decoration-thickness: 2.5px;
  }
  .sheet i.guess {
    text-decoration-style: dotted;
    text-decoration-thickness: 2px;
  }
  .sheet u {
    text-decoration: underline wavy var(--ink) 1.25px;
  }
  .sheet textarea::placeholder {
    color: var(--pencil);
    opacity: 1;
  }
  .bar {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 var(--s3);
    font-family: var(--figures);
    font-size: var(--t-note);
    color: var(--pencil);
  }
  .act {
    color: var(--pen);
    font-family: var(--figures);
    font-size: var(--t-note);
    text-decoration: underline 1px;
    text-underline-offset: 0.22em;
    min-block-size: var(--target);
    display: inline-flex;
    align-items: center;
  }
  .act.in {
    min-block-size: 1.5rem;
    font-size: inherit;
  }
  .act:hover {
    text-decoration-thickness: 2px;
  }
`;
