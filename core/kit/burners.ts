/** How lists say that a stove has two flames: "two-burner stove", "2 burner", "zweiflammig", "réchaud deux feux", "dos fuegos". */
const TWO =
  /(?<![\p{L}\d])(?:(?:two|twin|double|dual|2)[ -]?burners?|(?:zwei|2)[ -]?flammig\p{L}*|doppel(?:kocher|brenner)\p{L}*|(?:deux|2|double)[ -]feux?|(?:dos|2) (?:fuegos|quemadores)|(?:due|2) fuochi)(?!\p{L})/iu;

/** How many pots one stove heats at once, by what its line says. */
export function burnersIn(line: string): number {
  return TWO.test(line) ? 2 : 1;
}
