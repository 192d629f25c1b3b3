import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { formatFigure, formatNumber } from '../../core/figures.js';
import type { GroundedTrip, InputProblem, Reading, Trip, UnitSystem, WaterFrom } from '../../core/index.js';
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
  readonly units: UnitSystem;
  /** Fields that the reader cannot change: "trip.people". */
  readonly locked: ReadonlySet<string>;
  /** What the page has set, which stands in the fields until the reader types. */
  readonly set: Fields;
  /** One pot: people, meals and snow in sight, the rest one press away. */
  readonly onePot: boolean;
  /** Where narrow, the fields are one line of values. */
  readonly folded: boolean;
}

/** Takes a field of the trip as typed; undefined gives it back to the list. */
export type OnTrip = (name: keyof Trip, value: string | boolean | undefined) => void;

/** A value typed with a unit of its own: "20 °F". */
const OWN_UNIT = /[\p{L}°]/u;
const UNIT: Partial<Record<keyof Trip, string>> = { lowC: '°C', altitudeM: 'm' };

/** The trip that the kit is judged for: what the list says or what is assumed, until the person types. */
export function tripStrip(
  model: TripModel,
  words: Words,
  onTrip: OnTrip,
  onGiveBack: () => void,
  onFold: (folded: boolean) => void,
): TemplateResult {
  const fields = (names: readonly (keyof Trip)[]) => names.map((name) => tripField(name, model, words, onTrip));
  const shown = model.onePot ? ONE_POT : KIT;
  const more = [...KIT, ...MORE].filter((name) => !shown.includes(name));
  // A value that cannot be used is never folded away.
  const folded = model.folded && !model.problems.some(({ field }) => field.startsWith('trip.'));
  const lines = linesSaid(model);
  const typed = JSON.stringify(sorted(model.typed)) !== JSON.stringify(sorted(model.set));
  return html`<fieldset class="row strip-row ${folded ? 'folded' : ''}" part="trip" aria-label=${words.trip}>
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
      ${folded ? tripLine(model, shown, words, onFold) : nothing}
      <div class="strip">${fields(shown)}</div>
      <details class="fold more">
        <summary>${words.more}</summary>
        <div class="strip three">${fields(more)}</div>
      </details>
      ${setByPage(setFields(model, words), words)}
    </div>
  </fieldset>`;
}

const KIT: readonly (keyof Trip)[] = ['people', 'days', 'mealStyle', 'waterFrom', 'lowC', 'altitudeM'];
const ONE_POT: readonly (keyof Trip)[] = ['people', 'mealStyle', 'waterFrom'];
const MORE: readonly (keyof Trip)[] = ['cookAt', 'wind', 'snow', 'season', 'hotMealsPerDay', 'drinkFromPot'];

/** The trip as a line of values, each with the underline of its grounds, and the way to its fields. */
function tripLine(
  { trip, units }: TripModel,
  names: readonly (keyof Trip)[],
  words: Words,
  onFold: (folded: boolean) => void,
): TemplateResult {
  const values = names.flatMap((name) => {
    const given = trip?.[name];
    if (given === undefined || given.grounds === 'missing') return [];
    const said = sayValue(name, given.value, units, words);
    return [html`<span class="val ${given.grounds === 'assumed' ? 'assumed' : ''}">${said}</span>`];
  });
  return html`<p class="trip-line">
    ${values.map((value, i) => html`${i === 0 ? nothing : ', '}${value}`)}
    <button type="button" class="act" aria-label=${words.tripChange} @click=${() => onFold(false)}>
      ${words.change}
    </button>
  </p>`;
}

function sayValue(name: keyof Trip, value: unknown, units: UnitSystem, words: Words): string {
  if (name === 'people' || name === 'days') return words.tripSaid[name](Number(value));
  if (name === 'waterFrom') return words.tripSaid.waterFrom[value as WaterFrom];
  if (typeof value !== 'number') return optionsOf(name, words)?.[String(value)] ?? String(value);
  return formatFigure({ value, unit: name === 'lowC' ? '°C' : 'm', places: 0 }, { ...words, units });
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
