import type { CoverPart, CoverReasons } from '#model/comparison/cover-reasons.ts'
import type { UnitSystem } from '#model/units/convert.ts'
import { displayUnit, toDisplay } from '#model/units/convert.ts'
import { formatNumber, formatQuantity } from '#model/units/format.ts'

const J_PER_KWH = 3.6e6
/** A part that moves less than this share of the heat is not worth a clause. */
const WORTH_A_CLAUSE = 0.005
/** Differences of heat below this share count as none. */
const EVEN_SHARE = 0.02

/** Why one cover sheds more than the other in one design, from its own hours. */
export function reasonWords(reasons: CoverReasons, system: UnitSystem): string {
  const { bare_Jm2, film_Jm2, parts } = reasons
  const difference_Jm2 = bare_Jm2 - film_Jm2
  const scale = Math.max(Math.abs(bare_Jm2), Math.abs(film_Jm2))
  const heats = `${heat(bare_Jm2, system)} bare, ${heat(film_Jm2, system)} under film, a year`
  const head =
    Math.abs(difference_Jm2) < EVEN_SHARE * scale
      ? 'At the same plate temperatures both shed nearly the same'
      : difference_Jm2 > 0
        ? 'At the same plate temperatures a bare panel sheds more here than one under film'
        : 'At the same plate temperatures a panel under film sheds more here than a bare one'
  const clauses = parts
    .filter((part) => Math.abs(part.bareAhead_Jm2) > WORTH_A_CLAUSE * scale)
    .toSorted((a, b) => Math.sign(difference_Jm2 || 1) * (b.bareAhead_Jm2 - a.bareAhead_Jm2))
    .map((part) => clause(part, reasons, system))
  return clauses.length === 0 ? `${head} (${heats}).` : `${head} (${heats}): ${clauses.join('; ')}.`
}

function clause(part: CoverPart, { run_h }: CoverReasons, system: UnitSystem): string {
  const share = `${Math.round((part.run_h / run_h) * 100)} % of its pump hours`
  const size = heat(Math.abs(part.bareAhead_Jm2), system)
  const bareAhead = part.bareAhead_Jm2 > 0
  const ahead = `${bareAhead ? 'bare' : 'film'} is ahead by ${size}`
  const difference = formatQuantity(Math.abs(part.plateAboveAir_K), 'K', system)
  switch (part.cause) {
    case 'wetFilm':
      return `in ${share} dew or frost covers the film and shuts it to the infrared, and ${ahead}`
    case 'warmPlate':
      return `in ${share} the plate is warmer than the air, by ${difference} on average, and ${ahead}${
        bareAhead ? ', since wind takes heat from it and nothing stands before the sky' : ''
      }`
    case 'coldPlate':
      return `in ${share} it is colder than the air, by ${difference} on average, and ${ahead}${
        bareAhead
          ? ': what the film keeps from the sky is more than the wind it keeps off'
          : ', since it keeps the warm wind off'
      }`
  }
}

/** Heat per area a year: `37 kWh/m²`, or per ft². */
function heat(value_Jm2: number, system: UnitSystem): string {
  const unit = displayUnit('m2', system)
  return `${formatNumber(value_Jm2 / J_PER_KWH / toDisplay(1, unit), 3)} kWh/${unit.symbol}`
}
