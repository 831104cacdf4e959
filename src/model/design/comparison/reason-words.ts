import { J_PER_KWH } from '#model/basis/hours'
import type { CoverPart, CoverReasons } from './cover-reasons.ts'
import { displayUnit, toDisplay, type UnitSystem, formatNumber, formatQuantity } from '#model/basis/units'

/** A part that moves less than this share of the heat is not worth a sentence. */
const WORTH_SAYING = 0.005
/** Differences of heat below this share count as none. */
const EVEN_SHARE = 0.02

/** Why one cover gives off more heat than the other in one design, from its own hours; what weighs most first. */
export function reasonSentences(reasons: CoverReasons, system: UnitSystem): readonly string[] {
  const { bare_Jm2, film_Jm2, parts } = reasons
  const difference_Jm2 = bare_Jm2 - film_Jm2
  const scale = Math.max(Math.abs(bare_Jm2), Math.abs(film_Jm2))
  const heats = `${heat(bare_Jm2, system)} bare, ${heat(film_Jm2, system)} under film, in the pump hours of a year`
  const sides =
    Math.abs(difference_Jm2) < EVEN_SHARE * scale
      ? 'bare and film give off nearly the same heat'
      : difference_Jm2 > 0
        ? 'bare takes more heat than film here'
        : 'film takes more heat than bare here'
  const named = parts
    .filter((part) => Math.abs(part.bareAhead_Jm2) > WORTH_SAYING * scale)
    .toSorted((a, b) => Math.abs(b.bareAhead_Jm2) - Math.abs(a.bareAhead_Jm2))
    .map((part) => sentence(part, reasons, system))
  return [
    `At the same plate temperatures ${sides} (${heats})${named.length > 0 ? ', because:' : '.'}`,
    ...named,
  ]
}

function sentence(part: CoverPart, { run_h }: CoverReasons, system: UnitSystem): string {
  const share = `In ${Math.round((part.run_h / run_h) * 100)} % of the pump hours`
  const bareAhead = part.bareAhead_Jm2 > 0
  const ahead = `${bareAhead ? 'bare' : 'film'} is ahead by ${heat(Math.abs(part.bareAhead_Jm2), system)}`
  const difference = formatQuantity(Math.abs(part.plateAboveAir_K), 'K', system)
  switch (part.cause) {
    case 'wetFilm':
      return `${share} dew or frost covers the film and shuts it to the infrared: ${ahead}.`
    case 'warmPlate':
      return bareAhead
        ? `${share} the plate is warmer than the air, by ${difference} on average, so that wind helps: ${ahead}.`
        : `${share} the plate is warmer than the air, by ${difference} on average, and still ${ahead}.`
    case 'coldPlate':
      return bareAhead
        ? `${share} it is colder than the air, by ${difference} on average, but the film keeps more sky from it than wind: ${ahead}.`
        : `${share} it is colder than the air, by ${difference} on average, and the film keeps the warm wind off: ${ahead}.`
  }
}

/** Heat per area: `37 kWh/m²`, or per ft². */
function heat(value_Jm2: number, system: UnitSystem): string {
  const unit = displayUnit('m2', system)
  return `${formatNumber(value_Jm2 / J_PER_KWH / toDisplay(1, unit), 2)} kWh/${unit.symbol}`
}
