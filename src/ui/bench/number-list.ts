/** Numbers in a line of text, between spaces, commas or semicolons; a word that is no number becomes NaN. */
export const numberList = (text: string) =>
  text
    .split(/[\s,;]+/)
    .filter(Boolean)
    .map(Number)
