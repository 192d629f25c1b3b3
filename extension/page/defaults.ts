/** The form of the defaults: each is kept as it is changed. */
import { html, render, type TemplateResult } from 'lit';
import { MEAL_STYLES, SEASONS, UNIT_SYSTEMS } from '../../core/index.js';
import { problemsOf } from '../../widget/judge-fields.js';
import type { BrimwiseCheck } from '../../widget/index.js';
import { learnWords, wordsFor } from '../../widget/language.js';
import { message } from '../browser.js';
import {
  areSynced,
  LANGUAGES,
  onDefaults,
  readDefaults,
  storeDefaults,
  syncDefaults,
  tripPart,
  type Defaults,
} from '../defaults.js';
import { byId, keep, reasonOf } from '../face.js';

export async function showDefaults(check: BrimwiseCheck): Promise<void> {
  let defaults: Defaults;
  let synced: boolean;
  /** Values on their way to the store. */
  let pending = 0;
  // In the language of this page, whatever the element's default is.
  await learnWords(message('language'));
  const words = wordsFor(message('language'));
  const { language, locale } = words;
  try {
    defaults = await readDefaults();
    synced = await areSynced();
  } catch (error) {
    byId('defaults-done').textContent = message('defaultsNotKept', reasonOf(error));
    return;
  }
  show();
  // What another page or another browser sets shows here too.
  onDefaults(() => void refresh());

  async function refresh(): Promise<void> {
    // What is being typed is later than what the store has.
    if (pending > 0) return;
    [defaults, synced] = await Promise.all([readDefaults(), areSynced()]);
    show();
  }

  async function attempt(step: () => Promise<void>): Promise<void> {
    try {
      await step();
      byId('defaults-done').textContent = '';
    } catch (error) {
      byId('defaults-done').textContent = message('defaultsNotKept', reasonOf(error));
    }
  }

  async function sync(wanted: boolean): Promise<void> {
    await attempt(() => syncDefaults(wanted));
    await refresh();
  }

  async function change(next: Partial<Defaults>): Promise<void> {
    defaults = { ...defaults, ...next };
    show();
    pending += 1;
    await attempt(() => storeDefaults(next));
    pending -= 1;
    if (next.units === undefined) return;
    // Units stand with each draft: the one that is open takes them at once, a new one from the start.
    check.draft = { ...check.draft, units: next.units === '' ? null : next.units };
    await keep(check.draft);
  }

  function show(): void {
    const problems = problemsOf({ trip: tripPart(defaults), pot: {}, stove: {} }, { language, locale });
    const figure = (name: 'people' | 'days', label: string): TemplateResult => {
      const problem = problems.find(({ field }) => field === `trip.${name}`);
      return html`<label
        >${label}
        <input
          name=${name}
          inputmode="decimal"
          autocomplete="off"
          .value=${defaults[name]}
          aria-invalid=${problem ? 'true' : 'false'}
          aria-describedby="default-${name}-problem"
          @input=${(event: Event) => void change({ [name]: (event.target as HTMLInputElement).value.trim() })}
        />
        <span id="default-${name}-problem">${problem?.message ?? ''}</span></label
      >`;
    };
    const choice = <Name extends 'mealStyle' | 'season' | 'units' | 'language'>(
      name: Name,
      label: string,
      options: readonly (readonly [value: string, word: string])[],
    ): TemplateResult =>
      html`<label
        >${label}
        <select
          name=${name}
          @change=${(event: Event) => void change({ [name]: (event.target as HTMLSelectElement).value })}
        >
          <option value="" .selected=${defaults[name] === ''}>${message('notSet')}</option>
          ${options.map(([value, word]) => html`<option value=${value} .selected=${defaults[name] === value}>${word}</option>`)}
        </select></label
      >`;
    const languages = new Intl.DisplayNames(message('language'), { type: 'language', languageDisplay: 'standard' });
    const units = { metric: message('unitsMetric'), us: message('unitsUs'), imperial: message('unitsImperial') };
    render(
      html`<h2>${message('defaults')}</h2>
        <p>${message('defaultsFor')}</p>
        <div class="fields">
          ${figure('people', message('defaultPeople'))} ${figure('days', message('defaultDays'))}
          ${choice(
            'mealStyle',
            message('defaultMeals'),
            MEAL_STYLES.map((style) => [style, words.mealStyles[style]]),
          )}
          ${choice(
            'season',
            message('defaultSeason'),
            SEASONS.map((season) => [season, words.seasons[season]]),
          )}
          ${choice(
            'units',
            message('defaultUnits'),
            UNIT_SYSTEMS.map((unit) => [unit, units[unit]]),
          )}
          ${choice(
            'language',
            message('defaultLanguage'),
            LANGUAGES.map((tag) => [tag, languages.of(tag) ?? tag]),
          )}
        </div>
        <label class="tick"
          ><input
            type="checkbox"
            name="synced"
            .checked=${synced}
            @change=${(event: Event) => void sync((event.target as HTMLInputElement).checked)}
          />
          ${message('defaultsSynced')}</label
        >`,
      byId('defaults'),
    );
  }
}
