import { css } from 'lit';

/** The parts, narrow first. Logical properties throughout; they answer to the width of their column, not of the window. */
export const parts = css`
  :host {
    display: block;
    transition: color 1ms; /* told when the page's ink changes */
  }
  :host([hidden]) {
    display: none;
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

  /* ---- The reading ---------------------------------------------------------------------------------------------------------------- */
  .fold > summary {
    list-style: none;
    display: flex;
    align-items: center;
    gap: 0.5em;
  }
  .fold > summary::-webkit-details-marker {
    display: none;
  }
  .fold > summary::before,
  .tog::before {
    content: '';
    flex: none;
    inline-size: 0.42em;
    block-size: 0.42em;
    border: solid var(--pen);
    border-width: 0 1.75px 1.75px 0;
    transform: rotate(-45deg);
  }
  .bw:dir(rtl) :is(.fold > summary, .tog)::before {
    transform: rotate(135deg);
  }
  .bw .fold[open] > summary::before,
  .bw .tog[aria-expanded='true']::before {
    transform: rotate(45deg);
    translate: 0 -0.12em;
  }
  .tog {
    display: inline-flex;
    align-items: center;
    gap: 0.5em;
    color: var(--pen);
    font-family: var(--figures);
    font-size: var(--t-small);
    min-block-size: var(--target);
    text-align: start;
  }
  .reading {
    border-block-start: 1px solid var(--rule);
  }
  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.1em var(--s2);
    font-family: var(--figures);
    font-size: var(--t-note);
    color: var(--pencil);
    padding-block: var(--s1);
  }
  .key .val {
    min-block-size: 0;
  }
  .read {
    font-family: var(--figures);
    font-size: var(--t-small);
  }
  .read li {
    display: grid;
    grid-template-columns: 1.75rem minmax(0, 1fr);
    column-gap: 0.5rem;
    padding-block: 0.3rem;
    border-block-start: 1px solid var(--rule);
    line-height: 1.6;
  }
  .read .ln {
    color: var(--pencil);
    font-size: var(--t-note);
    text-align: end;
    font-variant-numeric: tabular-nums;
    padding-block-start: 0.1em;
  }
  .read .k {
    font-family: var(--words);
    font-weight: 600;
    font-size: var(--t-body);
    margin-inline-end: 0.35em;
  }
  .val {
    color: inherit;
    font-family: var(--figures);
    text-decoration: underline solid var(--line) 1.25px;
    text-underline-offset: 0.24em;
    text-decoration-skip-ink: none;
    white-space: nowrap;
    min-block-size: 1.5rem;
    font-variant-numeric: lining-nums tabular-nums;
  }
  .bw button.val {
    font-family: var(--figures);
    text-decoration: underline solid var(--line) 1.25px;
    text-underline-offset: 0.24em;
  }
  .bw .val.worked {
    text-decoration-style: double;
  }
  .bw .val.assumed {
    text-decoration: underline dotted var(--ink-2) 2px;
    color: var(--ink-2);
  }
  .bw button.val:hover {
    text-decoration-color: var(--pen);
    color: var(--pen);
  }
  .val del {
    text-decoration: line-through var(--ink) 1.5px;
    color: var(--pencil);
    margin-inline-end: 0.35em;
  }
  .val ins {
    text-decoration: none;
    color: var(--pen);
    font-weight: 600;
  }
  .edit {
    display: inline-flex;
    align-items: baseline;
    gap: 0.5em;
    border-block-end: 2px solid var(--pen);
  }
  .edit input {
    inline-size: 4.5em;
    block-size: 1.75em;
    font-family: var(--figures);
    font-weight: 600;
    color: var(--pen);
  }
  .note {
    font-family: var(--figures);
    font-size: var(--t-small);
    line-height: 1.45;
    border-inline-start: 2px dashed var(--line);
    padding: 0.1rem 0 0.1rem 0.8rem;
    color: var(--ink-2);
  }
  .slot {
    display: inline-flex;
    align-items: baseline;
    gap: 0.25em;
    white-space: nowrap;
  }
  .slot input {
    inline-size: 3.25em;
    block-size: 1.6em;
    border-block-end: 1.5px solid var(--line);
    text-align: center;
    font-family: var(--figures);
  }
  .slot input::placeholder {
    color: var(--pencil);
    opacity: 1;
  }
  .read .off {
    color: var(--pencil);
  }
  .read .sep {
    color: var(--pencil);
    padding-inline: 0.3em;
  }

  /* ---- Headline and tally -------------------------------------------------------------------------------------------------------------- */
  .head {
    padding-block: var(--s4) var(--s3);
    border-block-start: 1.5px solid var(--ink);
  }
  .headline {
    font-size: var(--brim-head, calc(var(--size) * 1.4375));
    line-height: 1.26;
    letter-spacing: -0.012em;
  }
  .tally {
    display: flex;
    flex-wrap: wrap;
    gap: 0.15em var(--s3);
    padding-block-start: var(--s2);
    font-family: var(--figures);
    font-size: var(--t-small);
    font-variant-numeric: tabular-nums;
  }
  .tally button {
    color: inherit;
    text-decoration: none;
    display: inline-flex;
    align-items: center;
    min-block-size: 1.875rem;
    padding-inline-start: 0.7em;
    position: relative;
  }
  .tally button::before {
    content: '';
    position: absolute;
    inset-inline-start: 0;
    inset-block: 0.45em;
    border-inline-start: var(--g, 1px solid var(--line));
  }
  .tally button[data-grade='can-hurt'] {
    padding-inline-start: 1em;
  }
  .tally button[data-grade='falls-short'] {
    padding-inline-start: 0.8em;
  }
  .tally button:hover {
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }

  /* ---- Findings ------------------------------------------------------------------------------------------------------------------------------ */
  [data-grade='can-hurt'] {
    --g: var(--g-can-hurt);
  }
  [data-grade='falls-short'] {
    --g: var(--g-falls-short);
  }
  [data-grade='costs-you'] {
    --g: var(--g-costs-you);
  }
  [data-grade='cant-tell'] {
    --g: var(--g-cant-tell);
  }
  [data-grade='holds-up'] {
    --g: var(--g-holds-up);
  }

  .finding {
    border-block-start: 1px solid var(--rule);
    padding-block: var(--s3) var(--s4);
    position: relative;
    padding-inline-start: 1.25rem;
  }
  .finding::before {
    content: '';
    position: absolute;
    inset-inline-start: 0;
    inset-block: 0;
    border-inline-start: var(--g);
  }
  .finding > .m,
  details.finding > summary .m {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    align-items: baseline;
    gap: 0.75em;
    padding-block-end: 0.35rem;
  }
  .grade {
    font-family: var(--figures);
    font-size: var(--t-small);
    line-height: 1.4;
    font-weight: 700;
    white-space: nowrap;
  }
  [data-grade='can-hurt'] .grade {
    background: var(--alarm);
    color: var(--paper);
    padding-inline: 0.45em;
    border: 1px solid var(--alarm);
  }
  [data-grade='cant-tell'] .grade {
    font-style: italic;
    font-weight: 600;
  }
  [data-grade='holds-up'] .grade {
    font-weight: 400;
  }
  .fig {
    font-size: var(--t-note);
    line-height: 1.35;
    color: var(--ink-2);
    text-align: end;
  }
  .fig b {
    font-size: calc(var(--size) * 1.1875);
    font-weight: 700;
    color: var(--ink);
    line-height: 1.2;
    letter-spacing: -0.01em;
  }
  .fig b i {
    font-style: normal;
    font-weight: 400;
    font-size: 0.68em;
    letter-spacing: 0;
  }
  .say {
    font-size: var(--t-find);
    line-height: 1.34;
    font-weight: 600;
  }
  .fix {
    color: var(--pen);
    display: grid;
    grid-template-columns: 1.375em 1fr;
    margin-block-start: var(--s2);
    line-height: 1.42;
  }
  .fix::before {
    content: '';
    inline-size: 0.95em;
    block-size: 0.71em;
    margin-block-start: 0.36em;
    background: currentColor;
    /* An arrow cut from its own ground: an image, were it inline, is refused by strict content policies. */
    clip-path: polygon(0 43%, 75% 43%, 52% 15%, 59% 5%, 98% 50%, 59% 95%, 52% 85%, 75% 57%, 0 57%);
  }
  .bw:dir(rtl) .fix::before {
    scale: -1 1;
  }
  .caution {
    border: 1.5px solid var(--ink);
    padding: 0.55em 0.8em 0.6em;
    margin-block-start: var(--s2);
    line-height: 1.42;
    font-size: var(--t-small);
  }
  .caution b,
  .runin {
    font-family: var(--figures);
    font-weight: 700;
    font-size: 0.94em;
    margin-inline-end: 0.3em;
  }

  /* Figures keep their own direction, so that "1.3 L" stays so in a right-to-left page. */
  .fig b,
  .sum td,
  .val,
  .slot,
  .nb {
    direction: ltr;
    unicode-bidi: isolate;
  }
  .field input,
  .edit input {
    unicode-bidi: plaintext;
  }

  /* The sum: set as one does it by hand. Operands right-aligned, a rule, the result; what each is, and from where, beside it. */
  .sum {
    border-collapse: collapse;
    font-family: var(--figures);
    font-size: var(--t-small);
    line-height: 1.4;
    margin-block-start: var(--s2);
    font-variant-numeric: lining-nums tabular-nums;
  }
  .sum td {
    text-align: end;
    white-space: nowrap;
    padding: 0.14em 0 0.14em 1.25em;
    position: relative;
    vertical-align: baseline;
  }
  .sum td .o {
    position: absolute;
    inset-inline-start: 0;
    color: var(--pencil);
  }
  .sum th {
    text-align: start;
    font-weight: 400;
    padding: 0.14em 0 0.14em 0.9em;
    color: var(--ink-2);
    vertical-align: baseline;
    line-height: 1.35;
  }
  .sum .res td {
    border-block-start: 1.5px solid var(--ink);
    font-weight: 700;
  }
  .sum .res th {
    color: var(--ink);
  }
  .sum .vs td {
    color: var(--ink-2);
  }

  .src {
    font-size: var(--t-note);
    white-space: nowrap;
    color: var(--pencil);
  }
  .src.pub {
    border-block-end: 1px solid var(--line);
  }
  .src.cp {
    font-style: italic;
  }
  .from {
    font-family: var(--figures);
    font-size: var(--t-note);
    line-height: 1.5;
    color: var(--ink-2);
    margin-block-start: var(--s2);
  }
  .from q {
    font-family: var(--words);
    font-size: calc(var(--size) * 0.875);
    color: var(--ink);
    quotes: none;
    text-decoration: underline var(--line) 1.25px;
    text-underline-offset: 0.22em;
  }
  .from .act {
    color: var(--pen);
    text-decoration: none;
    padding-block: 0.4em;
  }
  .from .act:hover {
    text-decoration: underline;
  }
  .from b {
    font-weight: 600;
    color: var(--ink);
  }
  .ev {
    margin-block-start: var(--s2);
  }
  .why {
    margin-block-start: 0.25rem;
  }
  .why > summary {
    font-family: var(--figures);
    font-size: var(--t-small);
    color: var(--pen);
    min-block-size: 2.25rem;
  }
  .why > .sum {
    margin-block-start: 0.25rem;
  }

  /* A folded finding keeps its grade, figure and sentence. */
  details.finding {
    padding-block: 0;
  }
  details.finding > summary {
    cursor: pointer;
    list-style: none;
    padding-block: 0.8rem;
    min-block-size: var(--target);
  }
  details.finding > summary::-webkit-details-marker {
    display: none;
  }
  details.finding > summary .say {
    font-size: var(--t-body);
    font-weight: 400;
  }
  details.finding > summary .say::after {
    content: '';
    display: inline-block;
    inline-size: 0.42em;
    block-size: 0.42em;
    border: solid var(--pen);
    border-width: 0 1.75px 1.75px 0;
    transform: rotate(45deg);
    margin-inline-start: 0.55em;
    translate: 0 -0.15em;
  }
  details.finding[open] > summary .say {
    font-size: var(--t-find);
    font-weight: 600;
  }
  details.finding[open] > summary .say::after {
    transform: rotate(225deg);
    translate: 0 0.1em;
  }
  details.finding > .w {
    padding-block-end: var(--s4);
  }

  /* Can't tell: what would settle it, to be answered where one stands. */
  .ask {
    margin-block-start: var(--s2);
  }
  .ask .q {
    font-weight: 600;
    line-height: 1.35;
  }
  .ask .settles {
    font-size: var(--t-small);
    color: var(--ink-2);
    line-height: 1.45;
  }
  .ask .slot {
    font-family: var(--figures);
    font-size: var(--t-body);
    min-block-size: var(--target);
    align-items: center;
  }
  .ask .slot input {
    inline-size: 4em;
    block-size: 2.125rem;
    font-weight: 600;
  }

  .good {
    font-size: var(--t-small);
    line-height: 1.45;
  }
  .good li {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    padding-block: 0.45em;
    border-block-start: 1px solid var(--rule);
  }
  .good b {
    font-family: var(--words);
    font-size: var(--t-body);
    font-weight: 600;
  }
  .good span {
    font-family: var(--figures);
    color: var(--ink-2);
  }

  .foot {
    border-block-start: 1.5px solid var(--ink);
    padding-block: var(--s1) 0;
    font-family: var(--figures);
    font-size: var(--t-note);
    line-height: 1.45;
    color: var(--ink-2);
  }
  .foot p {
    max-inline-size: 62ch;
  }

  /* ---- One pot: form, drawing, findings, chart ------------------------------------------------------------------------------------------------------- */
  .strip.three {
    grid-template-columns: repeat(3, 1fr);
  }
  .strip.four {
    grid-template-columns: repeat(2, 1fr);
  }
  .strip.stove {
    grid-template-columns: repeat(6, 1fr);
  }
  .strip.stove > :nth-child(-n + 2) {
    grid-column: span 3;
  }
  .strip.stove > :nth-child(n + 3) {
    grid-column: span 2;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s4);
    padding-block-end: var(--s1);
  }
  .col {
    container: bw / inline-size;
  }
  .plate {
    padding-block: var(--s2) var(--s4);
  }
  .plate figcaption {
    padding-block-start: var(--s2);
    max-inline-size: 27rem;
  }
  .bench {
    display: flex;
    flex-direction: column;
  }
  .bench > :is(.a, .b, .c) {
    display: contents;
  }

  /* ---- The fixed verdict of a review ---- */
  .verdict {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    column-gap: 1.5rem;
    padding-block: var(--s2);
  }
  .verdict .what {
    font-family: var(--figures);
    font-size: var(--t-note);
    color: var(--pencil);
    line-height: 1.4;
  }
  .verdict .headline {
    margin-block-start: 0.15rem;
  }
  .mini {
    inline-size: 6rem;
  }
  .verdict :is(.rows, .terms) {
    grid-column: 1 / -1;
  }
  .verdict .rows {
    margin-block-start: var(--s2);
    border-block-end: 1px solid var(--rule);
  }
  .verdict .finding {
    padding-block: 0.6rem 0.7rem;
  }
  .verdict .say {
    font-size: var(--t-body);
    font-weight: 400;
  }
  .terms {
    padding-block-start: var(--s1);
    font-family: var(--figures);
    font-size: var(--t-note);
    line-height: 1.45;
    color: var(--ink-2);
  }
  .terms .fold {
    border: 0;
  }
  .terms summary {
    min-block-size: var(--target);
    color: var(--pen);
    font-size: var(--t-note);
  }

  /* ---- What stands around: folds, answers, what is left out ---- */
  .more > summary,
  .shelf > summary {
    min-block-size: var(--target);
    color: var(--pen);
    font-family: var(--figures);
    font-size: var(--t-small);
  }
  .strip input::placeholder {
    color: var(--ink);
    opacity: 1;
  }
  .sheet .lines {
    min-block-size: calc(var(--lh) * 3);
  }
  .begin {
    padding-block-start: var(--s1);
  }
  .begin .act,
  .ev .act {
    min-block-size: 1.5rem;
  }
  .it + .it {
    margin-inline-start: 0.8em;
  }
  .read .k.val {
    font-family: var(--words);
    font-weight: 600;
  }
  .open {
    color: var(--pen);
    border-block-end: 1.5px solid var(--line);
    min-inline-size: 3.25em;
    min-block-size: 1.5rem;
    margin-inline-end: 0.35em;
    font-family: var(--figures);
  }
  .edit :is(input, select) {
    min-block-size: 1.75em;
    background: var(--paper);
  }
  .ask .edit input {
    inline-size: 7em;
  }
  .ask .edit :is(input, select) {
    min-block-size: var(--target);
  }
  .ask .field {
    max-inline-size: 14rem;
  }
  .reply {
    display: inline-flex;
    align-items: center;
    gap: 0.5em;
    margin-inline-end: var(--s3);
    font-family: var(--figures);
  }
  .ask ul.settles {
    font-size: var(--t-note);
    margin-block-start: 0.25em;
  }
  .err {
    color: var(--alarm);
    font-family: var(--figures);
    font-size: var(--t-note);
    line-height: 1.45;
  }
  .day {
    border-block-start: 1px solid var(--rule);
    padding-block: var(--s3);
  }
  .day .good {
    padding-block-end: var(--s1);
  }
  .shelf {
    border-block-start: 1px solid var(--rule);
  }
  .shelf > ul {
    padding-block-end: var(--s2);
    margin-block-start: 0;
  }
  .by-hand {
    inline-size: 100%;
    block-size: 10rem;
    border: 1px solid var(--line);
    font: var(--t-note) / 1.4 var(--figures);
  }
  .units {
    gap: 0 var(--s2);
  }

  /* ---- Right to left: figures and units keep their own direction, and the list goes by its own words. ---- */
  .sheet .lines > div,
  .sheet textarea {
    unicode-bidi: plaintext;
  }
  .field .u {
    direction: ltr;
    unicode-bidi: isolate;
  }
  .bw:dir(rtl) .field input {
    direction: ltr;
    text-align: right;
  }

  .field > .l {
    position: relative;
  }
  .more .strip {
    align-items: end;
  }
  .more .field > .l {
    white-space: normal;
  }
  .bench .form {
    order: 1;
  }
  .bench .head {
    order: 2;
  }
  .bench .plate {
    order: 3;
  }
  .bench .col {
    order: 4;
  }
  .bench .foot {
    order: 5;
  }
`;
