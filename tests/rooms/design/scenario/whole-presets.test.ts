import { expect, test } from 'vitest'
import { defaultScenario, PRESETS, withField, withPreset } from '#model/design/scenario'

test.each(PRESETS.map((preset) => [preset.name, preset] as const))(
  '%s is the same building whatever preset or change was there before',
  (name, preset) => {
    const fresh = withPreset(defaultScenario(), preset)
    expect(fresh.job.name).toBe(name)
    for (const before of PRESETS) {
      let scenario = withPreset(defaultScenario(), before)
      scenario = withField(scenario, 'room.nightVent', 'true')
      scenario = withField(scenario, 'room.windowLeft_m2', '5')
      scenario = withField(scenario, 'plan.lowestStore_C', '9')
      scenario = withField(scenario, 'job.way', 'paintRoof,nightFan')
      expect(withPreset(scenario, preset), before.name).toEqual(fresh)
    }
  },
)

test('coating, panel, loop and site of the user’s own stay', () => {
  const own = withField(
    withField(defaultScenario(), 'coating.solarReflectance_frac', '0.9'),
    'panel.tilt_deg',
    '30',
  )
  const changed = withPreset(own, PRESETS[0]!)
  expect(changed.coating).toEqual(own.coating)
  expect(changed.panel).toEqual(own.panel)
})
