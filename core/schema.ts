/**
 * The shape of a report as one schema, for data that comes from outside: stored reports, other programs.
 * The JSON Schema is made from it. Kept apart from the door, so that a page that only judges does not load it.
 */
import * as z from 'zod/mini';
import { GRADES } from './model/finding.js';
import {
  CORRECTABLE,
  FUEL_TYPES,
  GAS_MIXES,
  GEAR_ROLES,
  ITEM_KINDS,
  MATERIALS,
  STOVE_FORMS,
  STOVE_TYPES,
} from './model/item.js';
import { TASKS } from './model/plan.js';
import { UNIT_SYSTEMS } from './model/measure.js';
import { MEAL_STYLES, SEASONS, SNOWS, WATER_FROM, WINDS } from './model/trip.js';

const span = z.tuple([z.int(), z.int()]);
const ids = z.array(z.string());

function given<T extends z.ZodMiniType>(value: T) {
  return z.discriminatedUnion('grounds', [
    z.strictObject({
      grounds: z.literal('stated'),
      value,
      most: z.optional(value),
      span: z.optional(span),
      typed: z.optional(z.literal(true)),
    }),
    z.strictObject({ grounds: z.literal('worked-out'), value, from: z.string(), cites: ids, span: z.optional(span) }),
    z.strictObject({
      grounds: z.literal('assumed'),
      value,
      because: z.string(),
      replaceWith: z.string(),
      span: z.optional(span),
    }),
    z.strictObject({ grounds: z.literal('missing') }),
  ]);
}

const num = given(z.number());
const flag = given(z.boolean());

const item = z.strictObject({
  kind: z.enum(ITEM_KINDS),
  line: z.int(),
  span,
  carried: z.boolean(),
  notCarriedBecause: z.optional(z.string()),
  kindBecause: z.optional(z.string()),
  quantity: num,
  perPerson: z.boolean(),
  perGroup: z.optional(z.literal(true)),
  capacitiesMl: z.array(num),
  massG: num,
  massBasis: z.optional(z.enum(['each', 'line'])),
  diameterMm: num,
  baseDiameterMm: num,
  heightMm: num,
  boxMm: given(z.tuple([z.number(), z.number()])),
  sizeMm: num,
  burnerMm: num,
  supportsMm: num,
  material: given(z.enum(MATERIALS)),
  bail: flag,
  lid: flag,
  handles: flag,
  stoveType: given(z.enum(STOVE_TYPES)),
  stoveForm: given(z.enum(STOVE_FORMS)),
  fuelType: given(z.enum(FUEL_TYPES)),
  gasMix: given(z.enum(GAS_MIXES)),
  gasShares: given(
    z.object({ propane: z.optional(z.number()), isobutane: z.optional(z.number()), butane: z.optional(z.number()) }),
  ),
  fuelMassG: num,
  fuelVolumeMl: num,
  role: z.optional(z.enum(GEAR_ROLES)),
  onlyIn: z.optional(z.enum(['summer', 'winter'])),
});

const tripFields = {
  people: num,
  days: num,
  mealStyle: given(z.enum(MEAL_STYLES)),
  drinkFromPot: flag,
  waterFrom: given(z.enum(WATER_FROM)),
  snow: given(z.enum(SNOWS)),
  lowC: num,
  altitudeM: num,
  cookAt: given(z.enum(['stove', 'fire'])),
  wind: given(z.enum(WINDS)),
  hotMealsPerDay: num,
  season: given(z.enum(SEASONS)),
} as const;

const reading = z.strictObject({
  items: z.array(item),
  passing: z.array(z.extend(item, { because: z.string() })),
  lines: z.array(
    z.strictObject({
      number: z.int(),
      span,
      use: z.enum(['used', 'not-cook-kit', 'not-understood', 'blank']),
      because: z.optional(z.string()),
    }),
  ),
  trip: z.strictObject({
    ...(Object.fromEntries(Object.entries(tripFields).map(([name, field]) => [name, z.optional(field)])) as {
      [K in keyof typeof tripFields]: z.ZodMiniOptional<(typeof tripFields)[K]>;
    }),
    cookGroups: z.optional(num),
    peoplePerPot: z.optional(num),
    firesAllowed: z.optional(flag),
    youthGroup: z.optional(flag),
    cooksInside: z.optional(flag),
    canisterTurned: z.optional(flag),
  }),
  languages: z.array(z.string()),
  units: z.enum(UNIT_SYSTEMS),
  notes: z.array(z.string()),
});

const range = z.strictObject({ low: z.number(), likely: z.number(), high: z.number() });
const figure = z.strictObject({ value: z.union([z.number(), range]), unit: z.string(), places: z.optional(z.int()) });
const sum = z.array(
  z.strictObject({
    sign: z.enum(['', '+', '−', '×', '÷', '=']),
    figure,
    text: z.string(),
    label: z.string(),
    grounds: z.enum(['stated', 'worked-out', 'assumed', 'published', 'common-practice']),
    cites: ids,
  }),
);
const assumption = z.strictObject({ what: z.string(), because: z.string(), replaceWith: z.string() });
const nullable = z.nullable(z.number());

const caution = {
  check: z.string(),
  key: z.string(),
  title: z.string(),
  message: z.string(),
  margin: z.string(),
  figures: z.record(z.string(), z.union([figure, z.string()])),
  sum,
  evidence: z
    .array(
      z.strictObject({
        line: z.optional(z.int()),
        span: z.optional(span),
        quote: z.string(),
        found: z.enum(['in-list', 'typed', 'absent']),
      }),
    )
    .check(z.minLength(1)),
  cites: ids,
  assumptions: z.array(assumption),
  cautions: z.array(z.string()),
  item: z.nullable(z.int()),
};

const finding = z.strictObject({
  ...caution,
  grade: z.enum(GRADES),
  fix: z.nullable(z.string()),
  question: z.nullable(
    z.strictObject({
      item: z.optional(z.int()),
      field: z.string(),
      kind: z.optional(z.enum(ITEM_KINDS)),
      message: z.string(),
      text: z.string(),
    }),
  ),
});

const source = z.strictObject({
  id: z.string(),
  grade: z.enum(['published', 'common-practice']),
  title: z.string(),
  by: z.optional(z.string()),
  year: z.optional(z.int()),
  place: z.optional(z.string()),
  note: z.optional(z.string()),
});

/** Validates a report. */
export const reportSchema = z.strictObject({
  version: z.literal(2),
  trip: z.strictObject(tripFields),
  reading,
  findings: z.array(finding),
  cautions: z.array(z.strictObject(caution)),
  summary: z.strictObject({
    headline: z.string(),
    counts: z.strictObject(Object.fromEntries(GRADES.map((grade) => [grade, z.int()]))),
    lines: z.string(),
  }),
  assumptions: z.array(assumption),
  sources: z.array(source),
  problems: z.array(z.strictObject({ field: z.string(), value: z.string(), message: z.string() })),
  day: z.nullable(
    z.strictObject({
      tasks: z.array(
        z.strictObject({
          id: z.string(),
          title: z.string(),
          litres: range,
          rounds: range,
          energyKj: range,
          minutes: range,
          grams: range,
          words: z.strictObject({ litres: z.string(), rounds: z.string(), minutes: z.string(), grams: z.string() }),
          sum,
        }),
      ),
      perDay: z.string(),
      perTrip: z.nullable(z.string()),
      boilC: z.number(),
      eatenMin: z.nullable(range),
      doneMin: range,
      headline: z.string(),
      fuel: z.string(),
    }),
  ),
  pots: z.array(
    z.strictObject({
      item: z.nullable(z.int()),
      name: z.string(),
      capacityMl: nullable,
      rimMm: nullable,
      baseMm: nullable,
      heightMm: nullable,
      earMm: nullable,
      fillMm: nullable,
      fillMl: nullable,
      bail: z.nullable(z.boolean()),
      lid: z.nullable(z.boolean()),
      tipDeg: nullable,
      spillDeg: nullable,
      needMl: z.tuple([z.number(), z.number()]),
      needMm: z.nullable(z.tuple([z.number(), z.number()])),
      edge: z.nullable(z.strictObject({ mm: z.number(), upMm: z.number() })),
    }),
  ),
  stoves: z.array(
    z.strictObject({
      item: z.nullable(z.int()),
      name: z.string(),
      type: z.nullable(z.string()),
      form: z.nullable(z.string()),
      burnerMm: nullable,
      armSpanMm: nullable,
      armCount: nullable,
      heightMm: nullable,
      footMm: nullable,
      supportShare: z.number(),
      suitsMm: z.nullable(z.tuple([z.number(), z.number()])),
    }),
  ),
  kitchens: z.array(
    z.strictObject({
      people: z.int(),
      alike: z.int(),
      pots: z.array(z.int()),
      roomMl: z.number(),
      servings: range,
      turns: range,
    }),
  ),
  places: z.array(
    z.strictObject({
      stove: z.nullable(z.int()),
      burns: z.nullable(z.enum(FUEL_TYPES)),
      alike: z.int(),
      uses: z.array(
        z.strictObject({
          task: z.enum(TASKS),
          title: z.string(),
          pot: z.int(),
          litres: range,
          turns: range,
          startMin: nullable,
          minutes: z.nullable(range),
          grams: z.nullable(range),
          stallsC: nullable,
          words: z.strictObject({ pot: z.string(), turns: z.string(), minutes: z.string(), grams: z.string() }),
        }),
      ),
      minutes: z.nullable(range),
      grams: z.nullable(range),
      words: z.strictObject({ name: z.string(), burns: z.string(), minutes: z.string(), grams: z.string() }),
    }),
  ),
  units: z.enum(UNIT_SYSTEMS),
});

const gradeSchema = z.enum(GRADES);
const countsSchema = z.strictObject(Object.fromEntries(GRADES.map((grade) => [grade, z.int()])));

/** Candidates side by side. */
export const comparisonSchema = z.strictObject({
  version: z.literal(1),
  candidates: z.array(z.strictObject({ name: z.string(), headline: z.string(), worst: z.nullable(gradeSchema) })),
  rows: z.array(
    z.strictObject({
      check: z.string(),
      title: z.string(),
      alike: z.boolean(),
      cells: z.array(z.nullable(z.strictObject({ grade: gradeSchema, message: z.string(), margin: z.string() }))),
    }),
  ),
});

/** Many lists in one table. */
export const manySchema = z.strictObject({
  version: z.literal(1),
  rows: z.array(
    z.strictObject({ name: z.string(), headline: z.string(), worst: z.nullable(gradeSchema), counts: countsSchema }),
  ),
  missing: z.array(z.strictObject({ check: z.string(), title: z.string(), who: z.array(z.string()) })),
});

/** Validates corrections, as they are stored with a draft. */
export const correctionSchema = z.strictObject({
  quote: z.string(),
  occurrence: z.int(),
  item: z.int(),
  field: z.enum([...CORRECTABLE, 'passing']),
  vessel: z.exactOptional(z.int()),
  value: z.nullable(z.union([z.string(), z.number(), z.boolean()])),
});

/** JSON Schema (draft 2020-12) of a report. */
export function reportJsonSchema(): object {
  return z.toJSONSchema(reportSchema);
}
