import { FIELDS, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { figure, line, words, type SheetLine, type Wording } from '#model/basis/words'

/** What is written over a sheet: the design’s own name, else what it is for. */
export function titleOf({ job }: Scenario, { site }: Pick<WeatherRecord, 'site'>): string {
  return job.name === '' || job.name === FIELDS.job.name.default ? `Design for ${site.name}` : job.name
}

/** Where it is and which weather the numbers are for. */
export function siteLinesOf(
  scenario: Scenario,
  { site, basis }: Pick<WeatherRecord, 'site' | 'basis'>,
): SheetLine[] {
  const stress = scenario.site
  const lines = [
    line('Place', site.name),
    line(
      'Position',
      words`${coordinates(site.latitude_deg, 'N', 'S')}, ${coordinates(site.longitude_deg, 'E', 'W')}, ${figure(site.altitude_m, 'm')} above the sea`,
    ),
    line('Weather', basis),
  ]
  const stresses: Wording[] = []
  if (stress.wholeYear_K !== 0)
    stresses.push(
      words`all hours ${figure(Math.abs(stress.wholeYear_K), 'K')} ${stress.wholeYear_K > 0 ? 'warmer' : 'cooler'}`,
    )
  if (stress.hotSpell_K > 0) stresses.push(words`hottest spells ${figure(stress.hotSpell_K, 'K')} hotter`)
  if (stress.moreHumid_K > 0) stresses.push(words`dew points ${figure(stress.moreHumid_K, 'K')} higher`)
  if (stress.windFactor_frac !== 1) stresses.push(words`wind × ${figure(stress.windFactor_frac, 'frac')}`)
  if (stresses.length > 0)
    lines.push(
      line(
        'Stressed',
        stresses.flatMap((stressed, i) => (i === 0 ? stressed : [', ', ...stressed])),
      ),
    )
  return lines
}

function coordinates(value_deg: number, positive: string, negative: string): string {
  return `${Math.abs(value_deg).toFixed(2)}° ${value_deg >= 0 ? positive : negative}`
}
