import { css } from './css.js';

/**
 * Ink on paper. The first block is the public surface: properties named --brim-*, set on the element or any ancestor; all others follow from them.
 * Where the page sets none, its own ink, paper and face are taken (--page-*, see page-look.ts); the look of a notebook has them here.
 * Contrast is given on the notebook's paper as light / dark.
 */
export const tokens = css`
  .bw {
    /* ---- 1. Public: ink on paper ------------------------------------------------------------------------------- */
    --paper: var(--brim-paper, var(--page-paper, #f6f7f2)); /* a cool, faintly green white, not cream                 */
    --ink: var(--brim-ink, var(--page-ink, #17243a)); /* words, outlines, figures; blue-black    14.4 / 13.1  */
    --pen: var(--brim-pen, #1b4d96); /* what you can do: fixes, links, controls, your corrections   7.6 /  9.3  */
    --alarm: var(--brim-alarm, #a11d13); /* Can hurt, a field in error, and nothing else; red pencil    7.2 /  7.6  */

    /* Words are set in a reading face; figures, labels and controls in a plain one. Georgia is left out on purpose: its
     digits are old-style only, and this is a page of numbers. No face is fetched. */
    --words: var(
      --brim-words,
      var(
        --page-words,
        'Iowan Old Style',
        Charter,
        'Bitstream Charter',
        'Sitka Text',
        Cambria,
        'Noto Serif',
        'DejaVu Serif Condensed',
        serif
      )
    );
    --figures: var(
      --brim-figures,
      var(
        --page-words,
        -apple-system,
        'Segoe UI',
        Roboto,
        Ubuntu,
        Cantarell,
        'Noto Sans',
        'DejaVu Sans Condensed',
        system-ui,
        sans-serif
      )
    );

    --size: var(
      --brim-size,
      var(--page-size, 1rem)
    ); /* body text; every other size is a multiple, so 200 % zoom holds */
    --margin: var(
      --brim-margin,
      calc(var(--size) * 8.5)
    ); /* the margin column, at widths that have one               */
    --pad: var(
      --brim-pad,
      1rem
    ); /* room at the sides; the wide page has twice as much                                */
    --max: var(
      --brim-max,
      47.5rem
    ); /* greatest width of a column                                                     */
    --edge: var(
      --brim-edge,
      0 solid
    ); /* the line over and under the whole                                            */

    /* ---- 2. Worked out from the above ----------------------------------------------------------------------------- */
    --ink-2: color-mix(in oklab, var(--ink) 80%, var(--paper)); /* second voice                            8.5 / 8.5  */
    --pencil: color-mix(
      in oklab,
      var(--ink) 68%,
      var(--paper)
    ); /* labels, line numbers                    5.8 / 6.4  */
    --line: color-mix(in oklab, var(--ink) 52%, var(--paper)); /* fields, dimension lines, the margin     3.6 / 4.2  */
    --rule: color-mix(in oklab, var(--ink) 17%, var(--paper)); /* ruling between things; carries no meaning          */
    --wash: color-mix(in oklab, var(--ink) 5%, var(--paper)); /* the one tint: the burner band of the chart         */

    /* ---- Type. Ratio about 1.18; line height is always a whole number of half-lines. ------------------------------ */
    --line-h: 1.5;
    --t-note: calc(var(--size) * 0.8125); /* 13: sources, labels, line numbers. Nothing is smaller, drawings included */
    --t-small: calc(var(--size) * 0.9375); /* 15: sums, reading                                                       */
    --t-body: var(--size); /* 16                                                                      */
    --t-find: calc(var(--size) * 1.125); /* 18: a finding's sentence                                                */
    --t-fig: calc(var(--size) * 1.5); /* 24: the figure in the margin                                            */
    --t-head: var(
      --brim-head,
      calc(var(--size) * 1.75)
    ); /* 28: the headline; 22 where narrow                                       */

    /* ---- Space: quarters of the 24-pixel line. ----------------------------------------------------------------------- */
    --s1: calc(var(--size) * 0.375); /*  6 */
    --s2: calc(var(--size) * 0.75); /* 12 */
    --s3: calc(var(--size) * 1.125); /* 18 */
    --s4: calc(var(--size) * 1.5); /* 24 */
    --s6: calc(var(--size) * 2.25); /* 36 */
    --target: 2.75rem; /* 44: least height of anything to press; 24 inside running text  */

    /* ---- The five grades ------------------------------------------------------------------------------------------------
     One line runs down the page between figures and words. It thickens where it matters. Weight and stroke carry the
     grade; the word always stands beside it; colour is last and only for the worst. The order survives greyscale,
     forced colours, a photocopy and a colour-blind reader, because nothing depends on hue.

       can-hurt     9 px solid,  word reversed on a block
       falls-short  5 px solid,  word bold
       costs-you    2 px solid,  word bold
       cant-tell    2 px dashed, word italic
       holds-up     1 px solid,  word plain                                                                        */
    --g-can-hurt: 9px solid var(--alarm);
    --g-falls-short: 5px solid var(--ink);
    --g-costs-you: 2px solid var(--ink);
    --g-cant-tell: 2px dashed var(--line);
    --g-holds-up: 1px solid var(--line);

    /* ---- The grounds of a value: how a figure is underlined wherever it stands. --------------------------------------- */
    --u-stated: solid; /* in the list, or typed            */
    --u-worked-out: double; /* from other values, source given  */
    --u-assumed: dotted; /* reason given, replaceable        */
    /* missing: an open slot;  corrected: the old figure struck, the new one in --pen             */

    /* ---- Drawings. Stroke widths in px; never scaled with the drawing. ------------------------------------------------ */
    --d-cut: 2.5; /* what is cut through: the pot's wall   */
    --d-edge: 1.25; /* what is seen: stove, bail, ground     */
    --d-dim: 1; /* dimension, leader and centre lines    */

    --focus: 3px solid var(--pen);
    color-scheme: light;
  }

  /* In the page's own look: its paper to the edges, and a line over and under. */
  .bw.of-page {
    --pad: var(--brim-pad, 0px);
    --max: var(--brim-max, 100%);
    --edge: var(--brim-edge, 1.5px solid var(--ink));
  }

  /* Chalk on slate. Chalk is not white and slate is not black: less glare at a camp table after dark. */
  .bw.dark {
    --paper: var(--brim-paper, var(--page-paper, #1e2629));
    --ink: var(--brim-ink, var(--page-ink, #eceee6));
    --pen: var(--brim-pen, #a8ccf6);
    --alarm: var(--brim-alarm, #ff9c8a);
    color-scheme: dark;
  }

  /* Forced colours: the system's inks. Weight, stroke and words already carry everything. */
  @media (forced-colors: active) {
    .bw,
    .bw.dark {
      --paper: Canvas;
      --ink: CanvasText;
      --ink-2: CanvasText;
      --pencil: CanvasText;
      --line: CanvasText;
      --rule: GrayText;
      --wash: Canvas;
      --pen: LinkText;
      --alarm: CanvasText;
      --focus: 3px solid Highlight;
    }
  }

  @media print {
    .bw,
    .bw.dark {
      --paper: #fff;
      --ink: #000;
      --pen: #000;
      --alarm: #000;
      --size: 10pt;
      --ink-2: #222;
      --pencil: #444;
      --line: #666;
      --rule: #bbb;
      --wash: #fff;
    }
  }
`;
