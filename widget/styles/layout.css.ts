import { css } from './css.js';

/** How the parts stand by the width of their column, and in forced colours, motion and print. */
export const layout = css`
  /* ---- Under 600 px: what is long folds, so that the headline is in view beside what was pasted ----------------------------------------------- */
  @container bw (max-width: 37.49rem) {
    .strip-row > .m:has(> .t),
    .list-row > .m .t,
    .reading > .m :is(.t, .n),
    .head > .m {
      position: absolute;
      inline-size: 1px;
      block-size: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    .list-row,
    .form > .row {
      padding-block-start: var(--s2);
    }
    .list-row.folded .sheet {
      max-block-size: calc(var(--lh) * 4);
      overflow: hidden;
    }
    .list-row > .m:has(> .t) {
      position: absolute;
      inset-block-end: 0;
      inset-inline-end: 0;
      z-index: 1;
    }
    .reading.folded > .w {
      display: none;
    }
    .form .row + .row {
      padding-block-start: var(--s2);
    }
    .choice svg {
      display: none;
    }
  }

  /* The whole under 600 px: the trip is a line of values, and of one pot the figures that decide most are in sight. */
  @container frame (max-width: 37.49rem) {
    .form.folded .rest,
    .strip-row.folded :is(.strip, .more) {
      display: none;
    }
    .form > .row + .row > .m {
      position: absolute;
      inline-size: 1px;
      block-size: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
  }

  @container bw (max-width: 22rem) {
    .strip,
    .strip.three,
    .strip.four {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .src {
      white-space: normal;
    }
    .verdict {
      grid-template-columns: minmax(0, 1fr);
      row-gap: var(--s1);
    }
    .mark span {
      position: absolute;
      inline-size: 1px;
      block-size: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    .plate .draw,
    .look .draw {
      --out: min(var(--pad), 0.75rem);
      inline-size: calc(100% + 2 * var(--out));
      margin-inline: calc(-1 * var(--out));
    }
  }

  /* ---- 600 px and wider: the margin opens -------------------------------------------------------------------------------------------------------- */
  @container bw (min-width: 37.5rem) {
    .shelf,
    .left-out {
      padding-inline-start: calc(var(--margin) + 1.5rem);
    }
    .reading .shelf {
      padding-inline-start: 0;
    }
    .day {
      padding-block: 0;
    }
    .day > .w {
      padding-block: var(--s2) var(--s4);
    }
    .begin {
      padding-inline-start: calc(var(--margin) + 1.5rem);
    }
    .page {
      padding: var(--s2) calc(2 * var(--pad)) var(--s6);
    }
    .row {
      display: grid;
      grid-template-columns: var(--margin) minmax(0, 1fr);
    }
    .row::before {
      content: '';
      position: absolute;
      inset-block: 0;
      inset-inline-start: var(--margin);
      border-inline-start: var(--g, 1px solid var(--line));
      pointer-events: none;
    }
    .row > .m,
    details.finding > summary .m,
    .finding > .m {
      display: block;
      text-align: end;
      padding-inline-end: 0.9rem;
      padding-block-end: 0;
    }
    .row > .m:has(> .t) {
      display: block;
      text-align: start;
      padding-block-start: var(--s2);
    }
    .w {
      padding-inline-start: 1.5rem;
    }
    .tog {
      display: none;
    }
    .strip {
      grid-template-columns: 0.6fr 0.6fr 1.05fr 1.15fr 0.8fr 0.9fr;
      column-gap: var(--s3);
      padding-block: var(--s2);
    }
    .list-row {
      display: block;
      border-block-start: 1px solid var(--rule);
    }
    .list-row::before {
      content: none;
    }
    .list-row > .m:has(> .t) {
      position: absolute;
      z-index: 1;
      inset-block-start: 0;
      padding: 0;
      inline-size: calc(var(--margin) - 2.5rem);
      line-height: 1.625rem;
    }
    .list-row .act {
      min-block-size: 1.625rem;
    }
    .sheet {
      --n: var(--margin);
      --gap: 1.5rem;
      border-block-start: 0;
    }
    .headline {
      font-size: var(--t-head);
      line-height: 1.2;
    }
    .read {
      columns: 2;
      column-gap: var(--s4);
      padding-block-end: var(--s2);
    }
    .read li {
      break-inside: avoid;
    }
    .head > .m {
      padding-block-start: 0.45rem;
    }
    .finding {
      padding-block: var(--s4);
      padding-inline-start: 0;
    }
    .finding::before {
      inset-inline-start: var(--margin);
    }
    .grade {
      display: inline-block;
    }
    .fig {
      margin: 0.4rem 0 0;
      text-wrap: balance;
      display: flex;
      flex-direction: column;
      align-items: flex-end;
    }
    .fig b {
      font-size: var(--t-fig);
    }
    details.finding > summary {
      display: grid;
      grid-template-columns: var(--margin) minmax(0, 1fr);
      padding-block: 1rem;
    }
    details.finding > .w {
      margin-inline-start: var(--margin);
    }
    details.finding[open] > summary .m {
      position: absolute;
      inset-block-start: 1rem;
      inset-inline-start: 0;
      inline-size: var(--margin);
    }
    details.finding[open] > summary {
      padding-block-end: 0;
    }
    details.finding[open] > summary .w {
      grid-column: 2;
    }
    .mini {
      inline-size: 7rem;
    }
    .verdict .finding {
      padding-block: 0.7rem 0.8rem;
    }
    .verdict .fig {
      margin-block-start: 0;
    }
    .verdict .fig b {
      font-size: calc(var(--size) * 1.1875);
    }
    .terms {
      padding-inline-start: calc(var(--margin) + 1.5rem);
    }
    .terms .shelf {
      padding-inline-start: 0;
    }
    .good li {
      grid-template-columns: 8.5em minmax(0, 1fr);
    }
    .foot {
      padding-inline-start: calc(var(--margin) + 1.5rem);
    }
    .bench > .foot {
      padding-inline-start: 0;
    }
  }

  @container bw (min-width: 37.5rem) {
    /* With some of its fields set by the page. */
    .strip-row .strip:not(:has(> :nth-child(6))) {
      grid-template-columns: repeat(auto-fit, minmax(6rem, 1fr));
    }
    .strip.four {
      grid-template-columns: repeat(4, 1fr);
    }
    .strip.stove {
      grid-template-columns: 1.7fr 1.1fr 0.6fr 1fr 1.1fr;
    }
    .strip.stove > :nth-child(n) {
      grid-column: auto;
    }
  }
  @container frame (min-width: 37.5rem) {
    .trip-line,
    .form > .tog {
      display: none;
    }
    .bench {
      display: grid;
      grid-template-columns: repeat(2, minmax(0, 1fr));
      column-gap: 1.5rem;
    }
    .bench > .mast,
    .bench .strip-row,
    .bench .form,
    .bench .head,
    .bench > .foot {
      grid-column: 1 / -1;
    }
    .bench > .c {
      display: block;
    }
    .bench .head {
      border-block-end: 1px solid var(--rule);
    }
    .bench .col .finding:first-child {
      border-block-start: 0;
    }
  }

  /* ---- 1080 px and wider: two facing pages. The list stays in view beside what is said of it. ---------------------------------------------------------- */
  @container frame (min-width: 67.5rem) {
    .page.spread {
      max-inline-size: 78rem;
      padding-inline: 1.5rem;
      display: grid;
      grid-template-columns: minmax(0, 48fr) minmax(0, 52fr);
      column-gap: 0;
      align-items: start;
    }
    .spread > :is(.mast, .foot) {
      grid-column: 1 / -1;
    }
    .spread > .left {
      --margin: 6.25rem;
      /* A page that is taller than the window rests on its end, so that all of it comes by; there is no second bar to scroll by. */
      position: sticky;
      inset-block-start: min(0px, calc(100vh - var(--tall, 0px)));
      padding-inline-end: 1.5rem;
    }
    .spread > .right {
      padding-inline-start: 1.5rem;
      border-inline-start: 1px solid var(--rule);
      min-block-size: 100%;
    }
    .spread .left .strip {
      grid-template-columns: repeat(3, 1fr);
    }
    .spread .left .read {
      columns: 1;
    }
    .spread .right .head {
      border-block-start: 0;
    }
    .bench.page {
      max-inline-size: 78rem;
      padding-inline: 1.5rem;
      grid-template-columns: minmax(0, 24.5rem) minmax(0, 1fr) minmax(0, 22.5rem);
      grid-template-rows: auto;
      column-gap: 1.5rem;
    }
    .bench > :is(.a, .b, .c) {
      display: block;
      grid-area: 2 / 1;
      container: bw / inline-size;
    }
    .bench > .b {
      grid-column: 2;
      border-inline: 1px solid var(--rule);
      padding-inline: 1.5rem;
    }
    .bench > .c {
      grid-column: 3;
    }
    .bench .b .head {
      border-block-start: 0;
    }
    .spread .foot,
    .bench .foot {
      padding-inline-start: 0;
      display: flex;
      flex-wrap: wrap;
      align-items: center;
      gap: 0 2rem;
    }
  }

  /* ---- Forced colours, motion, print ------------------------------------------------------------------------------------------------------------------- */
  @media (forced-colors: active) {
    [data-grade='can-hurt'] .grade {
      forced-color-adjust: none;
      background: CanvasText;
      color: Canvas;
      border-color: CanvasText;
    }
    .fix::before {
      forced-color-adjust: none;
      background: LinkText;
    }
  }
  @media (prefers-reduced-motion: no-preference) {
    .fold > summary::before,
    .tog::before {
      transition: transform 0.12s;
    }
  }
  @media print {
    .mast .tabs,
    .foot .bar,
    .tog,
    .act,
    .why > summary,
    .sheet::after {
      display: none;
    }
    .finding,
    .draw,
    .sum,
    .read li {
      break-inside: avoid;
    }
    .list-row.folded .sheet {
      max-block-size: none;
    }
    .reading.folded > .w {
      display: block;
    }
    details:not([open])::details-content {
      content-visibility: visible;
      block-size: auto;
    }
    .spread > .left {
      position: static;
    }
    [data-grade='can-hurt'] .grade {
      background: none;
      color: #000;
      border: 2px solid #000;
    }
  }
`;
