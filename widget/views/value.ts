import { html, type TemplateResult } from 'lit';
import { formatFigure } from '../../core/figures.js';
import type { CorrectableField, Correction, FigureUnit, UnitSystem } from '../../core/index.js';
import type { Words } from '../messages/en.js';

/** What a person may set a value to; undefined gives back what was read. */
export type NewValue = Correction['value'] | undefined;

const UNITS: Partial<Record<CorrectableField, FigureUnit>> = {
  capacityMl: 'mL',
  fuelVolumeMl: 'mL',
  massG: 'g',
  fuelMassG: 'g',
  diameterMm: 'mm',
  baseDiameterMm: 'mm',
  heightMm: 'mm',
  sizeMm: 'mm',
  burnerMm: 'mm',
  supportsMm: 'mm',
};

/** The words that a field may hold; undefined where it holds a figure. */
export function choicesOf(field: CorrectableField, words: Words): Readonly<Record<string, string>> | undefined {
  switch (field) {
    case 'kind':
      return words.kinds;
    case 'material':
      return words.materials;
    case 'stoveType':
      return words.stoveTypes;
    case 'stoveForm':
      return words.stoveForms;
    case 'fuelType':
      return words.fuelTypes;
    case 'gasMix':
      return words.gasMixes;
    case 'bail':
    case 'lid':
    case 'handles':
    case 'carried':
      return words.yesNo;
    default:
      return undefined;
  }
}

/** A value in words: figures with their unit, words of the trade, "no lid". */
export function wordValue(field: CorrectableField, value: unknown, units: UnitSystem, words: Words): string {
  if (typeof value === 'boolean') return value ? words.fields[field] : words.no(words.fields[field]);
  if (typeof value === 'number') return formatFigure({ value, unit: UNITS[field] ?? '' }, { ...words, units });
  return choicesOf(field, words)?.[String(value)] ?? String(value);
}

/** A chosen option as a value: yes and no are true and false. */
function chosen(option: string): NewValue {
  if (option === '') return undefined;
  return option === 'yes' ? true : option === 'no' ? false : option;
}

/**
 * What a value is set by: words to choose among, or a figure to type. A choice keeps at once, a figure by Enter or on leaving;
 * `onCancel` is called by Escape.
 */
export function editor(
  { field, value, label }: { readonly field: CorrectableField; readonly value: string; readonly label: string },
  words: Words,
  onKeep: (value: NewValue, by: 'enter' | 'leaving') => void,
  onCancel: () => void,
  extra: Readonly<Record<string, string>> = {},
): TemplateResult {
  const choices = choicesOf(field, words);
  const onEscape = (event: KeyboardEvent) => escape(event, value, onCancel);
  if (!choices) return figureInput({ value, label }, onKeep, onCancel);
  return html`<span class="edit"
    ><select
      data-edit
      aria-label=${label}
      @keydown=${onEscape}
      @change=${(event: Event) => onKeep(chosen((event.target as HTMLSelectElement).value), 'enter')}
    >
      <option value="" ?selected=${value === ''}>${words.choose}</option>
      ${Object.entries({ ...choices, ...extra }).map(
        ([option, word]) => html`<option value=${option} ?selected=${option === value}>${word}</option>`,
      )}
    </select></span
  >`;
}

/** A figure to type: kept by Enter or on leaving, given back by Escape; emptied, it is undefined. */
export function figureInput(
  { value, label }: { readonly value: string; readonly label: string },
  onKeep: (value: string | undefined, by: 'enter' | 'leaving') => void,
  onCancel: () => void,
): TemplateResult {
  const typed = (event: Event) => (event.target as HTMLInputElement).value.trim() || undefined;
  return html`<span class="edit"
    ><input
      data-edit
      aria-label=${label}
      autocomplete="off"
      .defaultValue=${value}
      @keydown=${(event: KeyboardEvent) => {
        escape(event, value, onCancel);
        if (event.key !== 'Enter') return;
        // The same stroke would press the button that takes its place.
        event.preventDefault();
        onKeep(typed(event), 'enter');
      }}
      @blur=${(event: Event) => onKeep(typed(event), 'leaving')}
  /></span>`;
}

/** The value is put back before the field goes, which would keep what stands in it. */
function escape(event: KeyboardEvent, value: string, onCancel: () => void): void {
  if (event.key !== 'Escape') return;
  event.preventDefault();
  event.stopPropagation();
  (event.target as HTMLInputElement | HTMLSelectElement).value = value;
  onCancel();
}
