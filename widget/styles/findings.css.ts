import { css } from './css.js';

/** What is seen of a report: the reading, the findings, the verdict. */
export const findings = css`
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
`;
