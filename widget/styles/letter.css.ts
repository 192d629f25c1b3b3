import { css } from './css.js';

/** An answer to one person: ticks beside a letter. */
export const letter = css`
  .answer {
    padding-block: var(--s2);
  }
  .answer .l {
    font-family: var(--figures);
    font-size: var(--t-note);
    line-height: 1.4;
    color: var(--pencil);
  }
  .answer legend.t {
    font-family: var(--figures);
    font-size: var(--t-small);
    font-weight: 600;
    padding-block: var(--s2) 0.1rem;
    float: inline-start;
    inline-size: 100%;
  }
  .answer .plan fieldset + fieldset legend {
    border-block-start: 1px solid var(--rule);
  }
  .tick {
    clear: both;
  }
  .page.broad {
    max-inline-size: max(var(--max), 75rem);
  }
  .tick {
    display: grid;
    grid-template-columns: 1.05rem minmax(0, 1fr);
    column-gap: 0.8rem;
    padding-block: 0.5rem 0.6rem;
    padding-inline-start: 1rem;
    position: relative;
    min-block-size: var(--target);
    cursor: pointer;
    line-height: 1.38;
  }
  .tick::before {
    content: '';
    position: absolute;
    inset-inline-start: 0;
    inset-block: 0.5rem 0.6rem;
    border-inline-start: var(--g);
  }
  .bw .tick input {
    appearance: none;
    inline-size: 1.05rem;
    block-size: 1.05rem;
    border: 1.5px solid var(--pen);
    display: grid;
    place-items: center;
    margin-block-start: 0.18rem;
    cursor: pointer;
  }
  .bw .tick input:checked {
    border-color: var(--ink);
  }
  .tick input:checked::after {
    content: '';
    inline-size: 0.34em;
    block-size: 0.72em;
    border: solid var(--ink);
    border-width: 0 2px 2px 0;
    transform: rotate(40deg);
    translate: 0 -0.08em;
  }
  .tick .t2 {
    font-family: var(--figures);
    font-size: var(--t-note);
    color: var(--ink-2);
    display: block;
    line-height: 1.4;
  }
  .tick:not(:has(:checked)) {
    color: var(--pencil);
  }
  .letter {
    --n: 1.1rem;
    position: relative;
    padding-block: var(--s2);
  }
  .letter::after {
    content: '';
    position: absolute;
    inset-block: 0;
    inset-inline-start: 0;
    border-inline-start: 1px solid var(--line);
    pointer-events: none;
  }
  .letter > .first,
  .para {
    display: block;
    position: relative;
    margin-inline-start: var(--n);
    max-inline-size: 40rem;
    padding-block: 0.3rem;
    line-height: 1.5;
  }
  .letter .first .l {
    display: block;
  }
  .letter .first input {
    inline-size: 100%;
    block-size: 2.25rem;
    border-block-end: 1px solid var(--line);
    color: var(--pen);
    font: 400 var(--t-body) / 1.5 var(--words);
  }
  .para.lead {
    font-weight: 600;
    padding-block: 0.7rem 0.1rem;
  }
  .para.kept {
    padding-block-start: 0;
  }
  .para.kept::after {
    content: '';
    position: absolute;
    inset-block: 0.05rem 0.35rem;
    inset-inline-start: calc(-1 * var(--n));
    border-inline-start: 3px solid var(--ink);
  }
  .para .mk {
    display: none;
  }
  .grow {
    display: grid;
  }
  .grow > * {
    grid-area: 1 / 1;
    font: inherit;
    line-height: inherit;
    white-space: pre-wrap;
    overflow-wrap: anywhere;
    letter-spacing: 0;
  }
  .grow > div {
    visibility: hidden;
  }
  .bw .grow textarea {
    inline-size: 100%;
    resize: none;
    overflow: hidden;
    line-height: inherit;
    outline-offset: 3px;
  }
  .para.own textarea {
    color: var(--pen);
  }
  .para.source {
    font-family: var(--figures);
    font-size: var(--t-note);
    padding-block: 0.1rem;
  }
  .note-line {
    font-family: var(--figures);
    font-size: var(--t-note);
    line-height: 1.4;
    color: var(--pencil);
  }
  .opts {
    padding-block: var(--s2);
  }
  .opts .choice label {
    font-size: var(--t-small);
  }
  .opts .choice legend {
    float: inline-start;
    inline-size: 100%;
  }
  .opts .choice input[type='checkbox'] {
    border-radius: 0;
  }
  .send {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--s2) var(--s3);
    padding-block: var(--s2);
    border-block-start: 1.5px solid var(--ink);
  }
  .bw .press {
    border: 1.5px solid var(--pen);
    padding-inline: 1.1em;
    color: var(--pen);
    font-family: var(--figures);
    font-weight: 600;
    min-block-size: var(--target);
  }
  .bw .press:hover {
    text-decoration: underline;
    text-underline-offset: 0.22em;
  }
  @container frame (min-width: 37.5rem) {
    .letter {
      --n: 7.1rem;
    }
    .letter::after {
      inset-inline-start: 6rem;
    }
    .para {
      font-size: var(--t-find);
    }
    .para.lead {
      font-size: var(--t-body);
    }
    .para.kept::after {
      inset-inline-start: -1.1rem;
    }
    .para .mk {
      display: block;
      position: absolute;
      inset-inline-start: -7.1rem;
      inline-size: 5.3rem;
      text-align: end;
      font: 400 var(--t-note) / 1.35 var(--figures);
      padding-block-start: 0.35em;
      color: var(--pencil);
      unicode-bidi: plaintext;
    }
    .bw:dir(rtl) .para .mk {
      text-align: left;
    }
  }
  @container frame (min-width: 60rem) {
    .answer.two {
      display: grid;
      grid-template-columns: minmax(0, 25rem) minmax(0, 1fr);
    }
    .two > .plan {
      align-self: start;
      position: sticky;
      inset-block-start: 0;
      padding-inline-end: 1.5rem;
    }
    .two > .write {
      padding-inline-start: 1.5rem;
      border-inline-start: 1px solid var(--rule);
    }
  }
  @media print {
    .answer .plan,
    .opts,
    .send,
    .note-line {
      display: none;
    }
  }
`;
