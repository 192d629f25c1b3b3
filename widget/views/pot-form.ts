import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { unitWord } from '../../core/figures.js';
import type { InputProblem, PotInput, StoveInput } from '../../core/index.js';
import type { Fields } from '../draft.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';
import { setByPage, type SetField } from './locked.js';

export interface PotFormModel {
  /** As typed: text with or without a unit, by the names of `PotInput` and `StoveInput`. */
  readonly pot: Fields;
  readonly stove: Fields;
  readonly problems: readonly InputProblem[];
  readonly level: number;
  /** Fields that the reader cannot change: "pot.lid". */
  readonly locked: ReadonlySet<string>;
  /** Where narrow, width, height, capacity, burner and fuel alone are in sight. */
  readonly folded: boolean;
}

/** Takes "pot.capacity" or "stove.type" as typed; '' empties it. */
export type OnPotInput = (name: string, value: string | boolean) => void;

/** The fields that stay in sight where the rest is folded. */
export const IN_SIGHT: readonly string[] = [
  'pot.diameter',
  'pot.height',
  'pot.capacity',
  'stove.burnerDiameter',
  'stove.type',
  'stove.form',
];

type Name = `pot.${keyof PotInput}` | `stove.${keyof StoveInput}`;

/** A value typed with a unit of its own: "4 1/2 in", 11″. */
const OWN_UNIT = /[\p{L}"″′']/u;

/** One pot and its stove as typed fields. What stays empty costs only the checks that need it. */
export function potForm(
  model: PotFormModel,
  words: Words,
  onInput: OnPotInput,
  onFold: (folded: boolean) => void,
): TemplateResult {
  const { potForm: form } = words;
  const millilitres = unitWord('mL', words);
  const isLocked = (name: Name) => model.locked.has(name);
  /** Locked fields by the part they are of, as they are met below. */
  const set: Record<'pot' | 'stove', SetField[]> = { pot: [], stove: [] };
  const fix = (name: Name, label: string, value: string) => {
    set[name.startsWith('pot') ? 'pot' : 'stove'].push([label, value]);
    return nothing;
  };
  const measure = (name: Name, label: string, unit: string) => {
    if (isLocked(name)) {
      const value = valueIn(model, name);
      return fix(name, label, value === '' || unit === '' || OWN_UNIT.test(value) ? value : `${value}\u00a0${unit}`);
    }
    return field(name, model, label, (value, described) => {
      const onText = (event: Event) => onInput(name, (event.target as HTMLInputElement).value);
      return html`<input
          name=${name}
          inputmode=${unit === '' ? 'numeric' : 'decimal'}
          autocomplete="off"
          .value=${live(value)}
          aria-invalid=${described === undefined ? nothing : 'true'}
          aria-describedby=${described ?? nothing}
          @input=${onText}
        />${unit === '' || OWN_UNIT.test(value) ? nothing : html`<span class="u">${unit}</span>`}`;
    });
  };
  const choice = (name: Name, label: string, options: Readonly<Record<string, string>>) => {
    if (isLocked(name)) return fix(name, label, options[valueIn(model, name)] ?? '');
    return field(name, model, label, (value, described) => {
      const onChoice = (event: Event) => onInput(name, (event.target as HTMLSelectElement).value);
      return html`<select name=${name} aria-describedby=${described ?? nothing} @change=${onChoice}>
        <option value="" .selected=${live(value === '')}></option>
        ${Object.entries(options).map(
          ([option, word]) => html`<option value=${option} .selected=${live(option === value)}>${word}</option>`,
        )}
      </select>`;
    });
  };
  return html`<fieldset class="row" aria-label=${form.pot}>
      <div class="m">
        ${heading(model.level, 't', form.pot)}
        <p class="n">${form.outside}</p>
      </div>
      <div class="w">
        <div class="strip three">
          ${measure('pot.diameter', form.diameter, 'mm')} ${measure('pot.height', form.height, 'mm')}
          ${measure('pot.capacity', form.capacity, millilitres)}
        </div>
        <div class="strip three rest">
          ${measure('pot.baseDiameter', form.baseDiameter, 'mm')} ${measure('pot.mass', form.mass, 'g')}
          ${choice('pot.material', form.material, words.materials)}
        </div>
        <fieldset class="choice rest">
          <legend class="vh">${form.has}</legend>
          ${(['bail', 'handles', 'lid'] as const).map((name) => tick(name, form[name], model.pot[name], onInput, isLocked(`pot.${name}`)))}
        </fieldset>
        ${setByPage(set.pot, words)}
      </div>
    </fieldset>
    <fieldset class="row" aria-label=${form.stove}>
      <div class="m">${heading(model.level, 't', form.stove)}</div>
      <div class="w">
        <div class="strip three">
          ${measure('stove.burnerDiameter', form.burnerDiameter, 'mm')}
          ${choice('stove.type', form.type, words.stoveTypes)} ${choice('stove.form', form.form, words.stoveForms)}
        </div>
        <div class="strip three rest">
          ${measure('stove.height', form.standsAt, 'mm')} ${measure('stove.armCount', form.armCount, '')}
          ${measure('stove.armInner', form.armInner, 'mm')} ${measure('stove.armSpan', form.armSpan, 'mm')}
          ${measure('stove.footDiameter', form.footDiameter, 'mm')}
        </div>
        ${setByPage(set.stove, words)}
      </div>
    </fieldset>
    <button
      type="button"
      class="tog"
      aria-expanded=${model.folded ? 'false' : 'true'}
      @click=${() => onFold(!model.folded)}
    >
      ${form.more}
    </button>`;
}

/** A field under its label; a value that cannot be used stays, with the reason under it. */
function field(
  name: Name,
  model: PotFormModel,
  label: string,
  control: (value: string, describedBy: string | undefined) => TemplateResult,
): TemplateResult {
  const [part, key] = name.split('.') as ['pot' | 'stove', string];
  const problem = model.problems.find((one) => one.field === name);
  const error = `${part}-${key}-error`;
  const value = valueIn(model, name);
  return html`<label class="field ${problem ? 'bad' : ''}"
    ><span class="l">${label}</span><span class="v">${control(value, problem ? error : undefined)}</span>${
      problem ? html`<span class="err" id=${error}>${problem.message}</span>` : nothing
    }</label
  >`;
}

function valueIn({ pot, stove }: PotFormModel, name: Name): string {
  const [part, key] = name.split('.') as ['pot' | 'stove', string];
  return String({ pot, stove }[part][key] ?? '');
}

/** Yes, no, or not said: the box is half ticked until it is pressed. */
function tick(
  name: keyof PotInput,
  label: string,
  value: Fields[string] | undefined,
  onInput: OnPotInput,
  locked: boolean,
): TemplateResult {
  return html`<label
    ><input
      type="checkbox"
      ?disabled=${locked}
      name="pot.${name}"
      .checked=${live(value === true)}
      .indeterminate=${live(value === undefined)}
      @change=${(event: Event) => onInput(`pot.${name}`, (event.target as HTMLInputElement).checked)}
    /><span>${label}</span></label
  >`;
}
