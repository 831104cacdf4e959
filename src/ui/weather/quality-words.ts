import { QUANTITIES, type Quantity, type Gap } from '#model/outdoors/intake'

/** All gaps of one quantity that were filled in one way. */
export interface GapGroup {
  readonly key: string
  readonly quantity: Quantity
  readonly how: Gap['how']
  readonly count: number
  readonly hours: number
}

export function gapGroups(gaps: readonly Gap[]): readonly GapGroup[] {
  const groups = new Map<string, GapGroup>()
  for (const { quantity, how, hours } of gaps) {
    const key = `${quantity} ${how}`
    const so = groups.get(key) ?? { key, quantity, how, count: 0, hours: 0 }
    groups.set(key, { ...so, count: so.count + 1, hours: so.hours + hours })
  }
  return [...groups.values()]
}

const HOW_WORDS: Readonly<Record<Gap['how'], string>> = {
  interpolated: 'bridged by straight lines',
  'neighbouring days': 'taken from neighbouring days at the same hour',
  left: 'too long to fill unless you accept it',
}

/** `Dew point: 12 h in 4 gaps, bridged by straight lines.` */
export function filledWords({ quantity, how, count, hours }: GapGroup): string {
  return `${QUANTITIES[quantity].label}: ${hours} h in ${count} ${count === 1 ? 'gap' : 'gaps'}, ${HOW_WORDS[how]}.`
}

/** A share as whole percent; never 100 unless all, never 0 unless none. */
export function percent(share: number | null): string {
  if (share === null) return '–'
  const whole = Math.round(share * 100)
  if (whole === 100 && share < 1) return '99'
  return String(whole === 0 && share > 0 ? 1 : whole)
}
