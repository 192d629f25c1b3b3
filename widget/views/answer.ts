import { html, nothing, type TemplateResult } from 'lit';
import type { CorrectableField, Finding, Report, Trip } from '../../core/index.js';
import type { Fields } from '../draft.js';
import type { Words } from '../messages/en.js';
import { tripField, type OnTrip } from './trip-strip.js';
import { editor, figureInput, type NewValue } from './value.js';

export interface AnswerContext {
  readonly words: Words;
  readonly report: Report;
  readonly trip: Fields;
  readonly onTrip: OnTrip;
  /** Sets a value of an item of the list, or of the one pot where there is no item. */
  readonly onValue: (item: number | undefined, field: CorrectableField, value: NewValue) => void;
  readonly canSet: (item: number | undefined, field: CorrectableField) => boolean;
  /** null where the list is not the reader's. */
  readonly onAddLine: ((words: string) => void) | null;
  /** Fields that the reader cannot set: "trip.people". */
  readonly locked: ReadonlySet<string>;
}

const CHOSEN = new Set<string>(['mealStyle', 'waterFrom', 'cookAt', 'wind', 'snow', 'season', 'drinkFromPot']);

/** What answers a question, where it can be answered on the spot. */
export function answer(question: NonNullable<Finding['question']>, context: AnswerContext): unknown {
  const { words, report, trip, locked, onTrip, onAddLine } = context;
  if (locked.has(question.field)) return nothing;
  if (question.field.startsWith('trip.')) {
    const name = question.field.slice('trip.'.length) as keyof Trip;
    const model = { typed: trip, trip: report.trip, problems: report.problems, locked };
    if (CHOSEN.has(name)) return tripField(name, model, words, onTrip, 'ask');
    // A field that goes when it is answered waits for the whole answer.
    return figureInput(
      { value: '', label: question.text },
      (value) => value !== undefined && onTrip(name, value),
      () => {},
    );
  }
  if (question.field === 'kind') {
    const kind = question.kind;
    return kind === undefined || onAddLine === null
      ? nothing
      : html`<button type="button" class="act" @click=${() => onAddLine(words.kinds[kind])}>
          ${words.addLine(words.kinds[kind])}
        </button>`;
  }
  const field = question.field as CorrectableField;
  // A shape takes both.
  const fields: CorrectableField[] = field === 'diameterMm' ? ['diameterMm', 'heightMm'] : [field];
  return fields.map((each) => reply(question.item, each, context));
}

function reply(
  item: number | undefined,
  field: CorrectableField,
  { words, canSet, onValue }: AnswerContext,
): TemplateResult | typeof nothing {
  if (!canSet(item, field)) return nothing;
  const name = words.fields[field];
  return html`<span class="reply"
    ><span aria-hidden="true">${name}</span> ${editor(
      { field, value: '', label: name },
      words,
      (value) => value !== undefined && onValue(item, field, value),
      () => {},
    )}</span
  > `;
}
