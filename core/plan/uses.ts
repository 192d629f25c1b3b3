import type { DayPlan, TaskId, Use } from '../model/plan.js';

/** The uses of the plan, of a task or of all, each with the heat place it is on. */
export function usesOf(plan: DayPlan, task?: TaskId): readonly { readonly use: Use; readonly stove: number | null }[] {
  return plan.places
    .flatMap(({ uses, stove }) => uses.map((use) => ({ use, stove })))
    .filter(({ use }) => task === undefined || use.task === task);
}
