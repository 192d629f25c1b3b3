import type { SVGTemplateResult, TemplateResult } from 'lit';
import { formatFigure } from '../../core/figures.js';
import type { LookFor, UnitSystem } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { html, svg } from '../tags.js';
import {
  chartScale,
  gridOf,
  holding,
  labelHeights,
  rayEnd,
  regionOf,
  type ChartScale,
  type Point,
} from './chart-geometry.js';

/** What pot to look for: sentences, and the shapes that suit as a region of width across against height. */
export function chart(
  look: LookFor,
  units: UnitSystem,
  { locale, language, commonPractice }: Pick<Words, 'locale' | 'language' | 'commonPractice'>,
): TemplateResult {
  const { words } = look;
  const scale = chartScale(look, units);
  const { x, y } = scale;
  const show = (value: number, unit: 'L' | '') => formatFigure({ value, unit, places: 2 }, { units, locale, language });
  const line = (x1: number, y1: number, x2: number, y2: number, kind: string) =>
    svg`<line class=${kind} x1=${near(x1)} y1=${near(y1)} x2=${near(x2)} y2=${near(y2)}></line>`;
  const path = (points: readonly Point[], kind: string, more = '') =>
    points.length === 0 ? null : svg`<path class=${kind} d=${through(points, scale) + more}></path>`;
  const text = (atX: number, atY: number, said: string | number, kind: string, anchor = 'start') =>
    svg`<text class=${kind} x=${near(atX)} y=${near(atY)} text-anchor=${anchor}>${said}</text>`;

  const [right, top] = [x(scale.widthMm), y(scale.heightMm)];
  const band = [look.widthMm.least ?? 0, Math.min(look.widthMm.most ?? scale.widthMm, scale.widthMm)] as const;
  const banded = look.widthMm.least !== null || look.widthMm.most !== null;
  const regions = [look.leastMl, look.fullMl].map((ml) => regionOf(ml, look, scale));
  const curves = [
    { ml: look.boilOnlyMl, kind: 'iso dash', label: 'q' },
    { ml: look.leastMl, kind: 'iso strong', label: 'b' },
    { ml: look.fullMl, kind: 'iso mid', label: '' },
  ].flatMap(({ ml, ...drawn }) => {
    const points = ml === null ? [] : holding(ml, scale);
    return ml === null || points.length === 0 ? [] : [{ ...drawn, ml, points, end: y(points.at(-1)![1]) }];
  });
  const labels = labelHeights(curves.map(({ end }) => end));
  const rays = [look.ratio.least, look.ratio.best, look.ratio.most].filter((ratio) => ratio !== null);
  const best = look.ratio.best;
  return html`<div class="look-for">
    <p>${words.sentences.join(' ')} <span class="src cp">${commonPractice}</span></p>
    ${words.nearest === null ? null : html`<p class="fix">${words.nearest}</p>`}
    <svg
      class="draw chart"
      viewBox="0 0 344 ${scale.size}"
      role="img"
      aria-label=${[...words.sentences, words.nearest ?? ''].join(' ').trim()}
    >
      <defs>
        <pattern id="wide" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line class="hatch" x1="0" y1="0" x2="0" y2="9" />
        </pattern>
        <pattern id="close" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line class="hatch" x1="4.5" y1="0" x2="4.5" y2="9" />
        </pattern>
      </defs>
      ${gridOf(scale.widthMm, scale).map(({ mm }) => line(x(mm), y(0), x(mm), top, 'grid'))}
      ${gridOf(scale.heightMm, scale).map(({ mm }) => line(x(0), y(mm), right, y(mm), 'grid'))}
      ${
        banded
          ? svg`<rect class="fitband" x=${near(x(band[0]))} y=${near(top)} width=${near(x(band[1]) - x(band[0]))}
              height=${near(y(0) - top)}></rect>`
          : null
      }
      ${path(regions[0]!, 'paper', 'Z')}
      ${regions.map((points, i) =>
        points.length === 0
          ? null
          : svg`<path fill=${i === 0 ? 'url(#wide)' : 'url(#close)'} d=${through(points, scale)}Z></path>`,
      )}
      ${path(regions[0]!, 'edge', 'Z')} ${curves.map(({ points, kind }) => path(points, kind))}
      ${rays.map((ratio) => {
        const [across, tall] = rayEnd(ratio, scale);
        return svg`${line(x(0), y(0), x(across), y(tall), ratio === best ? 'ray' : 'ray thin')}
          ${
            across < scale.widthMm
              ? text(
                  x(across),
                  top - 7,
                  ratio === best ? '2 : 3' : show(ratio, ''),
                  ratio === best ? 'b' : 'q',
                  'middle',
                )
              : text(right + 7, y(tall) - 3, show(ratio, ''), 'q')
          }`;
      })}
      ${line(x(0), top, x(0), y(0), 'edge')}${line(x(0), y(0), right, y(0), 'edge')}
      ${gridOf(scale.widthMm, scale).map(({ mm, figure }) => (figure === null ? null : text(x(mm), y(0) + 19, figure, 'q', 'middle')))}
      ${gridOf(scale.heightMm, scale).map(({ mm, figure }) => (figure === null || mm === 0 ? null : text(x(0) - 8, y(mm) + 4.5, figure, 'q', 'end')))}
      ${banded ? line(x(band[0]), y(0) + 3, x(band[1]), y(0) + 3, 'bar') : null}
      ${text(right, y(0) + 37, words.axes.width, 'q', 'end')}${text(2, 14, words.axes.height, 'q')}
      ${curves.map(
        ({ ml, end, label }, i) =>
          svg`${line(right, end, right + 5, labels[i]!, 'hair2')}${text(right + 8, labels[i]! + 4.5, show(Math.ceil(ml / 10 - 1e-9) / 100, 'L'), label)}`,
      )}
      ${look.pot === null ? null : shapeMark(look.pot)}
      ${
        look.nearest === null
          ? null
          : svg`<circle class="target" r="4" cx=${near(x(look.nearest.widthMm))} cy=${near(y(look.nearest.heightMm))}></circle>`
      }
    </svg>
    ${legend()}
  </div>`;

  function shapeMark({ widthMm, heightMm }: NonNullable<LookFor['pot']>): SVGTemplateResult {
    const [atX, atY] = [x(widthMm), y(heightMm)];
    return svg`<path class="ghost" d="M${near(x(0))} ${near(atY)}H${near(atX)}V${near(y(0))}"></path>
      <path class="cross" d="M${near(atX - 7)} ${near(atY - 7)}l14 14M${near(atX + 7)} ${near(atY - 7)}l-14 14"></path>`;
  }

  function legend(): TemplateResult {
    const hatch = 'M2 14V2H30V14ZM2 8L8 2M6 14L18 2M16 14L28 2M24 14L30 8';
    const rows: readonly (readonly [mark: SVGTemplateResult, said: string | null])[] = [
      [svg`<path class="cross" d="M11 3l10 10M21 3l-10 10"></path>`, look.pot === null ? null : words.legend.pot],
      [svg`<circle class="target" r="4" cx="16" cy="8"></circle>`, look.nearest === null ? null : words.legend.nearest],
      [svg`<path class="hair" d=${hatch}></path>`, regions[0]!.length === 0 ? null : words.legend.region],
      [svg`<path class="iso strong" d="M1 8H31"></path>`, words.legend.least],
      [svg`<path class="iso mid" d="M1 8H31"></path>`, words.legend.full],
      [svg`<path class="iso dash" d="M1 8H31"></path>`, look.boilOnlyMl === null ? null : words.legend.boilOnly],
      [svg`<path class="bar" d="M2 12H30"></path>`, words.widths],
      [svg`<path class="ray" d="M2 15L30 1"></path>`, words.legend.ratio],
    ];
    return html`<ul class="legend">
      ${rows.map(([mark, said]) =>
        said === null
          ? null
          : html`<li><svg class="draw" viewBox="0 0 32 16" aria-hidden="true">${mark}</svg><span>${said}</span></li>`,
      )}
    </ul>`;
  }
}

function through(points: readonly Point[], { x, y }: ChartScale): string {
  return 'M' + points.map(([across, tall]) => `${near(x(across))} ${near(y(tall))}`).join('L');
}

function near(value: number): number {
  return Math.round(value * 10) / 10;
}
