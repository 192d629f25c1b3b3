import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { formatNumber } from '../../core/figures.js';
import type { GroundedTrip, InputProblem, Reading, Trip } from '../../core/index.js';
import type { Fields } from '../draft.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';
import { setByPage, type SetField } from './locked.js';

export interface TripModel {
  /** As typed. */
  readonly typed: Fields;
  /** As judged by; null before anything is. */
  readonly trip: GroundedTrip | null;
  readonly reading: Reading | null;
  readonly problems: readonly InputProblem[];
  readonly level: number;
  /** Fields that the reader cannot change: "trip.people". */
  readonly locked: ReadonlySet<string>;
  /** What the page has set, which stands in the fields until the reader types. */
  readonly set: Fields;
}

/** Takes a field of the trip as typed; undefined gives it back to the list. */
export type OnTrip = (name: keyof Trip, value: string | boolean | undefined) => void;

/** A value typed with a unit of its own: "20 °F". */
const OWN_UNIT = /[\p{L}°]/u;
const UNIT: Partial<Record<keyof Trip, string>> = { lowC: '°C', altitudeM: 'm' };

/** The trip that the kit is judged for: what the list says or what is assumed, until the person types. */
export function tripStrip(model: TripModel, words: Words, onTrip: OnTrip, onGiveBack: () => void): TemplateResult {
  const field = (name: keyof Trip) => tripField(name, model, words, onTrip);
  const lines = linesSaid(model);
  const typed = JSON.stringify(sorted(model.typed)) !== JSON.stringify(sorted(model.set));
  return html`<fieldset class="row strip-row" part="trip" aria-label=${words.trip}>
    <div class="m">
      ${heading(model.level, 't', words.trip)}
      ${lines.length > 0 ? html`<p class="n">${words.tripFrom(lines)}</p>` : nothing}
      ${
        typed
          ? html`<button type="button" class="act" aria-label=${words.tripBackLabel} @click=${onGiveBack}>
              ${words.tripBack}
            </button>`
          : nothing
      }
    </div>
    <div class="w">
      <div class="strip">
        ${field('people')}${field('days')}${field('mealStyle')}${field('waterFrom')}${field('lowC')}${field('altitudeM')}
      </div>
      <details class="fold more">
        <summary>${words.more}</summary>
        <div class="strip three">
          ${field('cookAt')}${field('wind')}${field('snow')}${field('season')}${field('hotMealsPerDay')}${field('drinkFromPot')}
        </div>
      </details>
      ${setByPage(setFields(model, words), words)}
    </div>
  </fieldset>`;
}

/** One field of the trip, also where a question asks for it. */
export function tripField(
  name: keyof Trip,
  { typed, trip, problems, locked }: Pick<TripModel, 'typed' | 'trip' | 'problems' | 'locked'>,
  words: Words,
  onTrip: OnTrip,
  place = 'trip',
): TemplateResult | typeof nothing {
  const given = trip?.[name];
  const known = given === undefined || given.grounds === 'missing' ? undefined : given.value;
  const value = typed[name];
  const problem = problems.find(({ field }) => field === `trip.${name}`);
  const error = `${place}-${name}-error`;
  const guess = value === undefined && given?.grounds === 'assumed';
  const options = optionsOf(name, words);
  const chosen = String(value ?? known ?? '');
  if (locked.has(`trip.${name}`)) return nothing;
  const control = options
    ? html`<select @change=${(event: Event) => onTrip(name, chosenValue(name, event))}>
        ${chosen === '' ? html`<option value="" selected></option>` : nothing}
        ${Object.entries(options).map(
          ([option, word]) => html`<option value=${option} .selected=${live(option === chosen)}>${word}</option>`,
        )}
      </select>`
    : html`<input
          inputmode=${name === 'lowC' ? 'text' : 'decimal'}
          autocomplete="off"
          .value=${live(value === undefined ? '' : String(value))}
          placeholder=${known === undefined ? '' : shown(known, words)}
          aria-invalid=${problem ? 'true' : nothing}
          aria-describedby=${problem ? error : nothing}
          @input=${(event: Event) => onTrip(name, (event.target as HTMLInputElement).value.trim() || undefined)}
        />${UNIT[name] ? html`<span class="u">${UNIT[name]}</span>` : nothing}`;
  return html`<label class="field ${problem ? 'bad' : ''}"
    ><span class="l"
      >${words.tripFields[name]}${guess ? html`<span class="vh">, ${words.assumed}</span>` : nothing}</span
    ><span class="v ${guess ? 'assumed' : ''}" title=${guess ? given.because : nothing}>${control}</span>${
      problem ? html`<span class="err" id=${error}>${problem.message}</span>` : nothing
    }</label
  >`;
}

function optionsOf(name: keyof Trip, words: Words): Readonly<Record<string, string>> | undefined {
  switch (name) {
    case 'mealStyle':
      return words.mealStyles;
    case 'waterFrom':
      return words.waterFrom;
    case 'cookAt':
      return words.cookAt;
    case 'wind':
      return words.winds;
    case 'snow':
      return words.snows;
    case 'season':
      return words.seasons;
    case 'drinkFromPot':
      return { true: words.yesNo.yes, false: words.yesNo.no };
    default:
      return undefined;
  }
}

function chosenValue(name: keyof Trip, event: Event): string | boolean {
  const { value } = event.target as HTMLSelectElement;
  return name === 'drinkFromPot' ? value === 'true' : value;
}

/** The fields of the trip that the page has locked, as they are judged by. */
function setFields({ typed, trip, locked }: TripModel, words: Words): readonly SetField[] {
  const names = Object.keys(words.tripFields) as (keyof Trip)[];
  return names
    .filter((name) => locked.has(`trip.${name}`))
    .map((name) => {
      const given = trip?.[name];
      const value = String(typed[name] ?? (given && given.grounds !== 'missing' ? given.value : ''));
      const unit = UNIT[name] !== undefined && value !== '' && !OWN_UNIT.test(value) ? `\u00a0${UNIT[name]}` : '';
      return [
        words.tripFields[name],
        (optionsOf(name, words)?.[value] ?? shown(Number.isNaN(Number(value)) ? value : Number(value), words)) + unit,
      ];
    });
}

/** A figure as it is written; what is typed as text stays as typed. */
function shown(value: unknown, words: Words): string {
  return typeof value === 'number'
    ? formatNumber({ value, unit: '', places: 2 }, { ...words, units: 'metric' })
    : String(value).replace('-', '−');
}

function sorted(fields: Fields): unknown {
  return Object.entries(fields).sort(([a], [b]) => (a < b ? -1 : 1));
}

/** Lines that the list's own words on the trip stand on. */
function linesSaid({ trip, reading }: TripModel): number[] {
  if (trip === null || reading === null) return [];
  const starts = Object.values(trip).flatMap((given) => ('span' in given && given.span ? [given.span[0]] : []));
  const numbers = starts.flatMap(
    (start) => reading.lines.find(({ span }) => span[0] <= start && start <= span[1])?.number ?? [],
  );
  return [...new Set(numbers)].sort((a, b) => a - b);
}
