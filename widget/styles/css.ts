/** The text of a style sheet. The tag tells editors and the formatter what is in it. */
export function css([text]: TemplateStringsArray): string {
  return text!;
}
