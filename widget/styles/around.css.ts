import { css } from './css.js';

/** What comes after the findings in the cascade, for some of it mends them: the bench, folds, answers, right to left. */
export const around = css`
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
  .bench :is(.plate, .c) {
    order: 3;
  }
  .bench .col {
    order: 4;
  }
  .bench .look {
    order: 5;
  }
  .bench .foot {
    order: 6;
  }
`;
