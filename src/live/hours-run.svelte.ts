import type { Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { HoursSpread, KnownWay } from '#studies/decide-sure.ts'
import { SharedRun } from '#live/shared-run.svelte.ts'
import { HOURS_DRAWS } from '#studies/usual.ts'

/** How sure the hours of some ways are: their draws, shared out between two workers and joined. */
export class HoursRun extends SharedRun<'drawHours'> {
  /** One for each way, in their order. */
  result = $state.raw<readonly HoursSpread[] | null>(null)

  constructor() {
    super('drawHours', 2)
  }

  async start(scenario: Scenario, ways: readonly KnownWay[], weather: WeatherRecord): Promise<void> {
    const { joinHours } = await import('#studies/decide-sure.ts')
    const draws = HOURS_DRAWS
    const plain = ways.map(({ measures, plant, panelArea_m2, storeVolume_m3 }) => ({
      measures: [...measures],
      plant,
      panelArea_m2,
      storeVolume_m3,
    }))
    this.result = null
    const half = Math.ceil(draws / 2)
    const question = { scenario, ways: plain, draws }
    const shares = await this.all(
      [
        { ...question, from: 0, to: half },
        { ...question, from: half, to: draws },
      ],
      weather,
    )
    if (shares === null) return
    this.result = joinHours(shares)
  }
}
