/** Long work in steps: whoever runs it may rest after each, and has the result at the end. Work begun elsewhere in between does not disturb it. */
export type Steps<T> = Generator<undefined, T, undefined>;

/** Takes all steps at once. */
export function finish<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
