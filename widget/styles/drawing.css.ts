import { css } from './css.js';

/** Drawings are drawings: stroke widths in px, never scaled with the drawing. */
export const drawing = css`
  .draw {
    display: block;
    inline-size: 100%;
    max-inline-size: 27rem;
    block-size: auto;
    overflow: visible;
    direction: ltr;
  }
  .draw * {
    vector-effect: non-scaling-stroke;
  }
  :where(.draw) :where(line, path, rect, circle):where(:not([fill])) {
    fill: none;
  }
  :where(.draw) :where(line, path, rect, circle) {
    stroke: var(--ink);
    stroke-width: var(--d-edge);
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .draw text {
    font: 500 13px/1 var(--figures);
    fill: var(--ink-2);
    stroke: var(--paper);
    stroke-width: 4px;
    paint-order: stroke;
    stroke-linejoin: round;
    font-variant-numeric: lining-nums tabular-nums;
  }
  .draw text.b {
    font-weight: 700;
    fill: var(--ink);
  }
  .draw text.q {
    fill: var(--pencil);
    font-weight: 400;
  }
  .draw .cut {
    stroke-width: var(--d-cut);
  }
  .draw .dim,
  .draw .ext,
  .draw .hair,
  .draw .hair2,
  .draw .lead,
  .draw .axis {
    stroke-width: var(--d-dim);
    stroke: var(--line);
    stroke-linecap: butt;
  }
  .draw .dim {
    stroke: var(--ink-2);
  }
  .draw .ext {
    stroke-dasharray: 3 3;
  }
  .draw .axis {
    stroke-dasharray: 14 3 3 3;
  }
  .draw .tip {
    fill: var(--ink-2);
    stroke: none;
  }
  .draw .w {
    stroke: var(--ink-2);
    stroke-width: var(--d-dim);
    opacity: 0.62;
  }
  .draw .fill {
    stroke-width: 1.75;
  }
  .draw .level {
    fill: var(--paper);
    stroke-width: var(--d-edge);
  }
  .draw .flame {
    stroke: var(--ink-2);
    stroke-width: var(--d-dim);
  }
  .draw .ear,
  .draw .solid {
    fill: var(--paper);
  }
  .draw .leg {
    stroke-width: var(--d-edge);
  }
  .draw .lid {
    stroke-width: 1.75;
  }
  .draw .fulcrum {
    fill: var(--ink);
    stroke: none;
  }
  .draw .bar {
    stroke-width: 5;
    stroke-linecap: butt;
  }
  .draw .band {
    stroke: var(--ink);
    stroke-width: var(--d-dim);
  }
  .draw path[fill] {
    stroke: none;
  }
  .draw .hatch {
    stroke: var(--ink);
    stroke-width: 1;
  }
  .draw .cg circle {
    fill: var(--paper);
    stroke-width: var(--d-edge);
  }
  .draw .cg path {
    fill: var(--ink);
    stroke: none;
  }
  .draw .ray {
    stroke-width: 1.75;
  }
  .draw .ray.thin {
    stroke-width: var(--d-dim);
    stroke: var(--ink-2);
  }
  .draw .ruler {
    stroke: var(--line);
    fill: var(--paper);
  }
  .draw .grid {
    stroke: var(--rule);
    stroke-width: 1;
  }
  .draw .fitband {
    fill: var(--wash);
    stroke: none;
  }
  .draw .paper {
    fill: var(--paper);
    stroke: none;
  }
  .draw .iso {
    stroke: var(--line);
    stroke-width: 1;
  }
  .draw .iso.dash {
    stroke: var(--ink-2);
    stroke-dasharray: 5 3;
  }
  .draw .iso.mid {
    stroke: var(--ink);
    stroke-width: 1.25;
  }
  .draw .iso.strong {
    stroke: var(--ink);
    stroke-width: 2.25;
  }
  .draw .ghost {
    stroke-width: 1.25;
    stroke-dasharray: 2 4;
  }
  .draw .cross {
    stroke-width: 2.75;
    stroke-linecap: butt;
  }
  .draw .target {
    fill: var(--paper);
    stroke: var(--pen);
    stroke-width: 2.25;
  }
  .look > :first-child {
    font: 400 var(--t-fig) / 1.25 var(--words);
    padding-block-end: var(--s2);
  }
  .look-for {
    display: grid;
    gap: var(--s2);
  }
  .look-for .fix {
    margin: 0;
  }
  .legend {
    display: grid;
    gap: 0.4em;
    padding: 0;
    list-style: none;
    font-family: var(--figures);
    font-size: var(--t-small);
    line-height: 1.4;
    color: var(--ink-2);
  }
  .legend li {
    display: grid;
    grid-template-columns: 2rem minmax(0, 1fr);
    gap: 0.75rem;
    align-items: start;
  }
  .legend .draw {
    inline-size: 2rem;
    margin-block-start: 0.15em;
  }
  @media (forced-colors: active) {
    .draw .grid {
      display: none;
    }
    .draw .fitband {
      fill: none;
    }
  }
  figcaption {
    font-size: var(--t-small);
    line-height: 1.45;
    color: var(--ink-2);
  }
`;
