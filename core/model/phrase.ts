/**
 * Marks words that the code makes for a person outside of a table of messages: a reason, a cure, with its figures. The text is English; a report
 * in another language finds its words by the pattern, in which the first value is {0}. A test gathers every such pattern from the source.
 */
export function phrase(parts: TemplateStringsArray, ...values: readonly (string | number)[]): string {
  return parts.reduce((text, part, i) => `${text}${values[i - 1]}${part}`);
}
