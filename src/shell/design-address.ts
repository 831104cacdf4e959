import { stop } from '#model/basis/words'
import { differences, SCENARIO_VERSION, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Options } from './options.ts'
import { sampleNames } from './samples.ts'

/** Every field that is not at its default, as the address of the app and `--set` take it. */
export function fieldsOf(scenario: Scenario): string {
  return Object.entries(differences(scenario))
    .flatMap(([group, fields]) =>
      Object.entries(fields).map(([name, value]) => `${group}.${name}=${String(value)}`),
    )
    .join('&')
}

/**
 * The address that opens a design in the app served at --address; null where that is not given.
 * @throws ProblemError for what is no address, and for weather that no address can name
 */
export function designAddress({ values, scenario }: Options, weather: WeatherRecord): string | null {
  const given = values['address']
  if (given === undefined) return null
  const base = baseOf(String(given))
  const words = new URLSearchParams({
    climate: climateOf(values, weather),
    version: String(SCENARIO_VERSION),
  })
  for (const [group, fields] of Object.entries(differences(scenario)))
    for (const [name, value] of Object.entries(fields)) words.set(`${group}.${name}`, String(value))
  return `${base}#${words.toString().replaceAll('%2C', ',').replaceAll('%3A', ':')}`
}

function baseOf(given: string): string {
  if (/^https?:\/\/[^\s#"<>]+$/.test(given)) return `${given.replace(/\/?$/, '/')}sheet/`
  throw stop(
    'bad-address',
    `--address ${given} is no address of a page.`,
    'Give where the app is served, beginning with http:// or https:// and without a #.',
  )
}

/** How the app names the same climate. */
function climateOf(values: Options['values'], { site }: WeatherRecord): string {
  const named = String(values['weather'] ?? '')
  if (sampleNames().includes(named)) return named
  const place = values['town'] ?? values['at']
  if (place === undefined || values['months'] !== undefined || values['another-year'] !== undefined)
    throw stop(
      'address-without-weather',
      'No address can carry weather of your own.',
      'Leave --address away, or use --town, --at or a sample climate.',
    )
  return [
    `at:${site.latitude_deg},${site.longitude_deg},${site.altitude_m}`,
    ...(values['town'] === undefined ? [] : [`name=${encodeURIComponent(String(values['town']))}`]),
    ...(values['warming'] === undefined ? [] : [`warming=${String(values['warming'])}`]),
    ...(values['hottest'] === undefined ? [] : [`hottest=${String(values['hottest'])}`]),
    ...(values['hot-summer'] === true ? ['hotSummer'] : []),
  ].join(';')
}
