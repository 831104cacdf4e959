import { J_PER_KWH } from '#model/basis/hours'
import { problemSentence, said, stop } from '#model/basis/words'
import { type DesignAnswer, tankPlaceOf } from '#model/design/assembly'
import { LIMIT_NAMES, type UncertaintyResult } from '#model/design/sizing'
import type { WeatherRecord } from '#model/outdoors/weather'
import { answered, studies } from '../answered.ts'
import { inventedParts } from '../invented-parts.ts'
import { note, type Cell } from '../output.ts'
import { yearOf } from '../weather-source.ts'
import { USUAL_DRAWS } from '#model/design/scenario'
import type { Command } from './command.ts'

const MOST_DRAWS = 4096

function drawsOf(given: unknown): number {
  const draws = given === undefined ? USUAL_DRAWS : Number(given)
  if (Number.isInteger(draws) && draws >= 0 && draws <= MOST_DRAWS) return draws
  throw stop(
    'bad-draws',
    `--draws ${String(given)} is not a number of draws.`,
    `Give a whole number from 0 to ${MOST_DRAWS}.`,
  )
}

function rangeOf(answer: DesignAnswer, draws: number, weather: WeatherRecord): UncertaintyResult | null {
  const { scenario, sizing } = answer
  if (draws === 0 || sizing.kind === 'own') return null
  return answered(studies.range({ scenario, weather, sizing, draws }), ({ share }) => {
    const percent = Math.round(100 * share)
    if (percent % 25 === 0) note(`uncertainty: ${percent} % of the draws now thought enough`)
  })
}

export const size: Command = {
  summary: 'panel area with its range, flow, store and pump for the target, or the floor that can be reached',
  options: {
    draws: { type: 'string', help: `draws of the uncertainty range, 0 for none (default ${USUAL_DRAWS})` },
  },
  run(options) {
    const draws = drawsOf(options.values['draws'])
    const record = yearOf(options)
    const answer = answered(studies.size({ scenario: options.scenario, weather: record }))
    for (const misfit of answer.fit.misfits) note(`warning: ${problemSentence(misfit)}`)
    if (answer.fit.instead !== null) note(said(answer.fit.instead).message)
    const range = rangeOf(answer, draws, record)
    return {
      body: { kind: 'record', record: summaryOf(answer, range) },
      invented: inventedParts(options, record),
    }
  },
}

function summaryOf(
  answer: DesignAnswer,
  range: UncertaintyResult | null,
): Readonly<Record<string, Cell | readonly Cell[]>> {
  const { sizing, loop, store, year, months } = answer
  const total = (pick: (month: (typeof months)[number]) => number): number =>
    months.reduce((sum, m) => sum + pick(m), 0)
  return {
    site: answer.weather.site.name,
    weatherBasis: answer.weather.basis,
    result: sizing.kind,
    areaNeeded_m2: sizing.kind === 'floor' ? null : sizing.area_m2,
    storeNeeded_m3: sizing.kind === 'floor' ? null : sizing.storeVolume_m3,
    peakNeeded_C: sizing.beforeRounding?.peak_C ?? null,
    hoursOverNeeded_h: sizing.beforeRounding?.hours_h ?? null,
    areaLow10_m2: range?.low_m2 ?? null,
    areaMiddle50_m2: range?.middle_m2 ?? null,
    areaHigh90_m2: range?.high_m2 ?? null,
    drawsSimulated_count: range?.simulated ?? null,
    areaFitMiss_frac: range?.miss_frac ?? null,
    outOfReach_frac: range?.unreachable_frac ?? null,
    areaBuilt_m2: answer.area_m2,
    missedAgainFrom_m2: sizing.missedAgainFrom_m2,
    largerAreasLooked_m2: sizing.looked_m2,
    placeMostStore_m3: tankPlaceOf(answer.scenario)?.most_m3 ?? null,
    placeLimitsStore: sizing.placeLimit !== null,
    modules_count: sizing.modules,
    flow_kgs: loop.flow_kgs,
    flowPerArea_kgsm2: sizing.flow_kgsm2,
    pressureDrop_Pa: loop.pressureDrop_Pa,
    pumpPower_W: loop.pumpPower_W,
    pipeInnerDiameter_m: loop.pipeInnerDiameter_m,
    storeVolume_m3: answer.storeVolume_m3,
    storeMass_kg: store.waterMass_kg,
    fits: answer.fit.misfits.length === 0,
    misfits: answer.fit.misfits.map(({ message }) => message),
    whatFits: answer.fit.instead === null ? null : said(answer.fit.instead).message,
    areaThatFits_m2: answer.fit.within?.area_m2 ?? null,
    storeThatFits_m3: answer.fit.within?.storeVolume_m3 ?? null,
    hoursOverThatFits_h: answer.fit.within?.hoursOver_h ?? null,
    way: answer.way === null ? null : answer.way.names.join(' + '),
    peak_C: sizing.withPanels.peak_C,
    hoursOver_h: sizing.withPanels.hours_h,
    hotDays_count: sizing.withPanels.hotDays,
    hotDaysHeld_count: sizing.withPanels.hotDaysHeld,
    doNothingPeak_C: sizing.doNothing.peak_C,
    doNothingHoursOver_h: sizing.doNothing.hours_h,
    asItIsPeak_C: answer.way?.asItIs.peak_C ?? null,
    asItIsHoursOver_h: answer.way?.asItIs.hours_h ?? null,
    wayElectric_kWh: answer.way === null ? null : answer.way.electric_J / J_PER_KWH,
    wayWater_m3: answer.way?.water_m3 ?? null,
    wayTotalCost: answer.way?.totalCost ?? null,
    panelHeat_kWh: total((m) => m.panelHeat_J) / J_PER_KWH,
    delivered_kWh: total((m) => m.delivered_J) / J_PER_KWH,
    electric_kWh: total((m) => m.electric_J) / J_PER_KWH,
    pumpRun_h: total((m) => m.pumpRun_h),
    freezeRisk_h: year.freezeRisk_h,
    dewHeld_h: year.dewHeld_h,
    ledgerResidual_frac: year.ledger.residual_J / year.ledger.throughput_J,
    rounding: answer.rounding === null ? null : said(answer.rounding).message,
    limit: sizing.limit === null ? null : said(sizing.limit.sentence).message,
    limitShares: (sizing.limit?.shares ?? []).map(
      ({ cause, share_K }) => `${LIMIT_NAMES[cause]}: ${share_K.toFixed(2)} K`,
    ),
    loadCuts: sizing.loadCuts.map(
      (cut) =>
        `${cut.name}: peak −${cut.peakDrop_K.toFixed(1)} K${cut.area_m2 === null ? '' : ', then enough'}`,
    ),
    drivers: (range?.drivers ?? [])
      .slice(0, 5)
      .map((driver) => `${driver.label} (${driver.correlation.toFixed(2)})`),
    yearRuns_count: sizing.yearRuns,
  }
}
