export interface Counts {
  right: number;
  missed: number;
  wrong: number;
  over: number;
  silent: number;
  skip: number;
}
export type Field =
  | 'quantity'
  | 'capacity_ml'
  | 'mass_g'
  | 'fuel_mass_g'
  | 'diameter_mm'
  | 'height_mm'
  | 'material'
  | 'stove_type'
  | 'lid'
  | 'bail';
export interface Result {
  id: string;
  labels: number;
  hits: unknown[];
  missed: unknown[];
  falses: unknown[];
}
export interface Total {
  lists: number;
  labels: number;
  hits: number;
  falses: number;
  fields: Record<Field, Counts>;
  context: Record<'people' | 'days' | 'season' | 'winter', Counts>;
}
export function scoreList(label: unknown, prediction: unknown): Result;
export function sum(lists: readonly Result[]): Total;
export function recall(total: Total): number;
export function precision(total: Total): number;
export function shares(counts: Record<string, Counts>): { right: number; over: number };
