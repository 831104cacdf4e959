const INCH_m = 0.0254
const INCHES_FOOT = 12
/** Thinner is given in thousandths, in. */
const SHEET_in = 0.125

/** A short length as a US tape reads it: `3 15/16 in`; sheets by thousandths. `length_m` ≥ 0, m. */
export function inchText(length_m: number): string {
  const inches = length_m / INCH_m
  if (!Number.isFinite(inches)) return '–'
  if (inches < SHEET_in) return `${Number(inches.toFixed(3))} in`
  return `${mixed(inches, inches < 1 ? 32 : 16)} in`
}

/** A length as US builders give it, to an eighth of an inch: `13′ 1 1/2″`, and `4′ 0 7/8″`, which is not read as 4 7/8. */
export function feetText(length_m: number): string {
  if (!Number.isFinite(length_m)) return '–'
  const eighths = Math.round((8 * Math.abs(length_m)) / INCH_m)
  const feet = Math.floor(eighths / (8 * INCHES_FOOT))
  const inches = (eighths - feet * 8 * INCHES_FOOT) / 8
  const fraction = mixed(inches, 8)
  const parts = [
    ...(feet > 0 ? [`${feet}′`] : []),
    ...(inches > 0 || feet === 0 ? [`${feet > 0 && inches < 1 ? '0 ' : ''}${fraction}″`] : []),
  ]
  return `${length_m < 0 && eighths > 0 ? '−' : ''}${parts.join(' ')}`
}

/** Whole inches and a fraction in lowest terms, of so many parts at most. */
function mixed(inches: number, parts: number): string {
  const all = Math.round(inches * parts)
  const whole = Math.floor(all / parts)
  const rest = all - whole * parts
  if (rest === 0) return String(whole)
  const half = rest & -rest
  const fraction = `${rest / half}/${parts / half}`
  return whole === 0 ? fraction : `${whole} ${fraction}`
}
