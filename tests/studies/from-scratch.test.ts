import { expect, test } from 'vitest'
import { defaultScenario, PRESETS, withField, withPreset } from '#model/design/scenario'
import { Stages } from '#studies/stages.ts'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { digest } from '../recorded/digest.ts'

/*
 * Label: regression. A whole answer does not hang on what was asked before: stages that have followed a slider give recorded cases
 * (each preset, in a climate of its own) digit for digit as stages that have been asked nothing.
 */
const NAMES = sampleNames()

test.each(PRESETS.map((preset, i) => [preset.id, NAMES[(2 * i) % NAMES.length]!] as const))(
  '%s in %s: the same after a slider as from scratch',
  (id, climate) => {
    const scenario = withPreset(
      defaultScenario(),
      PRESETS.find((preset) => preset.id === id)!,
    )
    const record = sampleWeather(climate)
    const scratch = digest(new Stages().answer(scenario, record))
    const stages = new Stages()
    for (const times of [1.2, 0.9]) {
      const moved = withField(scenario, 'room.roofU_Wm2K', String(times * scenario.room.roofU_Wm2K))
      stages.about(moved, record, { area_m2: 6, storeVolume_m3: 0.5, slope: -2 })
    }
    expect(digest(stages.answer(scenario, record))).toEqual(scratch)
  },
)
