import { describe, expect, test } from 'vitest'
import { sizingOf, Stages } from '#studies/stages.ts'
import { said } from '#model/basis/words'
import { withRows } from '#model/building/room'
import { simulateYear, type YearInputs } from '#model/building/year'
import { LOAD_CUTS } from '#model/design/measures'
import { builtOf, designOf, limitOfDesign, type Prepared } from '#model/design/assembly'
import { type Scenario, defaultScenario, withField } from '#model/design/scenario'
import { limitOf, worstHour, type LimitCause } from '#model/design/sizing'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/* Label: exact (sums and limits of the attribution). */

const weather = sampleWeather('continental')
const stages = new Stages()

function limited(settings: Readonly<Record<string, string>>) {
  const scenario = Object.entries({
    'target.autoArea': 'false',
    'target.area_m2': '6',
    ...settings,
  }).reduce<Scenario>((s, [field, text]) => withField(s, field, text), defaultScenario())
  const prepared = stages.prepare(scenario, weather)
  const { design, year } = builtOf(prepared, sizingOf(prepared))
  const limit = limitOfDesign(prepared, design, year)
  const of = (cause: LimitCause): number => limit.shares.find((one) => one.cause === cause)!.share_K
  return { prepared, design, year, limit, of }
}

/** Everything switched off at once, written down once more by hand. */
function allOff({ prepared, design }: ReturnType<typeof limited>): YearInputs {
  const { room, plant } = design.inputs
  const zero = new Float64Array(room.hours)
  const { area_m2, ...rest } = design.candidate
  const twice = { ...rest, area_m2: 2 * area_m2, flow_kgsm2: prepared.flow_kgsm2(2 * area_m2) }
  return {
    ...design.inputs,
    room: withRows({
      ...room,
      groups: room.groups.map((group) => ({ ...group, outside: null })),
      windows: null,
      sun_W: zero,
      ventilation_WK: zero,
      nightVent_WK: 0,
      gains_W: zero,
      indoorDewPoint_C: zero.slice().fill(-60),
    }),
    plant: {
      ...plant!,
      loop: designOf(prepared, twice).loop,
      plan: { ...plant!.plan, lowestStore_C: -60 },
      store: {
        ...plant!.store,
        delivery_WK: 2 * plant!.store.delivery_WK,
        layerCapacity_JK: plant!.store.layerCapacity_JK.map((one) => 2 * one),
      },
    },
  }
}

function spellPeak_C({ yardstick, doNothing }: Prepared, inputs: YearInputs, worst_h: number): number {
  const span = [worst_h - 96, worst_h + 24] as const
  const { room_C } = simulateYear(inputs, { lean: true, books: false, span, settled: doNothing.states })
  return Math.max(...room_C.slice(...span).filter((_, h) => !Number.isNaN(yardstick.limit_C[span[0] + h]!)))
}

describe('what limits a design', () => {
  const usual = limited({})

  test('adds up to what the hottest hour falls by with everything off', () => {
    const worst_h = worstHour(usual.year, usual.prepared.yardstick)
    const on_C = spellPeak_C(usual.prepared, usual.design.inputs, worst_h)
    const off_C = spellPeak_C(usual.prepared, allOff(usual), worst_h)
    const sum_K = usual.limit.shares.reduce((sum, { share_K }) => sum + share_K, 0)
    console.log(usual.limit.shares.map(({ cause, share_K }) => `${cause} ${share_K.toFixed(2)}`).join(', '))
    expect(sum_K).toBeCloseTo(on_C - off_C, 6)
    expect(sum_K).toBeGreaterThan(3)
  })

  test('names the largest in a sentence', () => {
    const most = Math.max(...usual.limit.shares.map(({ share_K }) => share_K))
    expect(usual.of(usual.limit.cause)).toBe(most)
    expect(said(usual.limit.sentence).message).toMatch(/^[A-Z].*\.$/)
  })

  test('knows a bad roof from a good one', () => {
    const roof = limited({ 'room.roofBuild': 'own', 'room.roofU_Wm2K': '4', 'room.roofMass_kgm2': '8' })
    const good = limited({ 'room.roofBuild': 'own', 'room.roofU_Wm2K': '0.1', 'room.roofMass_kgm2': '8' })
    expect(roof.of('roof')).toBeGreaterThan(good.of('roof') + 1)
    // U falls to a fortieth; the share by less, as a light roof stores nothing of the night either.
    expect(Math.abs(good.of('roof'))).toBeLessThan(roof.of('roof') / 5)
    expect(roof.limit.cause).toBe('roof')
    expect(said(roof.limit.sentence).message).toContain('white paint or insulation')
  })

  test('does not advise white paint for a roof that has it', () => {
    const white = limited({
      'room.roofBuild': 'own',
      'room.roofU_Wm2K': '4',
      'room.roofMass_kgm2': '8',
      'room.roofReflectance_frac': '0.93',
    })
    const sentence = said(
      limitOf(white.year, white.design.inputs, [{ cause: 'roof', share_K: 2 }], 4000, 0.93).sentence,
    )
    expect(sentence.message).toMatch(/painted white already; insulation would lower it/)
    expect(
      LOAD_CUTS.find(({ name }) => name === 'Paint the roof white')!.fits!(white.prepared.scenario),
    ).toBe(false)
  })

  test('gives the dew point nothing in a dry room, and something to pipes in the slab of a damp one', () => {
    expect(Math.abs(usual.of('dewPoint'))).toBeLessThan(0.05)
    const damp = limited({ 'store.kind': 'slab', 'target.area_m2': '40', 'site.moreHumid_K': '4' })
    expect(damp.of('dewPoint')).toBeGreaterThan(0.2)
  })
})
