const PLAIN = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i
/** Three digits behind a single comma: thousands to some, thousandths to others. */
const EITHER = /^[+-]?\d{1,3},\d{3}$/

/** The number a person typed, with a decimal point or a decimal comma; NaN where it is none, or could be two. */
export function typedNumber(text: string): number {
  const plain = text.trim().replace('−', '-')
  return PLAIN.test(plain) && !EITHER.test(plain) ? Number(plain.replace(',', '.')) : NaN
}

/** Why a typed text is no number in range, in a few words. */
export function whyNot(text: string, low: number, high: number, symbol: string): string {
  const plain = text.trim()
  const range = `${low} to ${high}${symbol === '' ? '' : ` ${symbol}`}`
  if (plain === '') return `A number is needed here: ${range}.`
  if (EITHER.test(plain))
    return `${plain} can mean ${plain.replace(',', '.')} or ${plain.replace(',', '')}: write it without the comma.`
  return Number.isNaN(typedNumber(plain))
    ? `“${plain}” is no number: ${range}.`
    : `${plain} is out of range: ${range}.`
}
