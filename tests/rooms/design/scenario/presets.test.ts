import { roomSpecOf } from '#model/design/assembly'
import { describe, expect, it } from 'vitest'
import { roomGeometry } from '#inside/model/building/room/geometry.ts'
import { parseScenario } from '#inside/model/design/scenario/parse.ts'
import { PRESETS, withPreset, defaultScenario, fieldAt } from '#model/design/scenario'

describe.each(PRESETS.map((preset) => [preset.id, preset] as const))('%s', (_id, preset) => {
  it('names only fields that exist', () => {
    for (const [group, fields] of Object.entries(preset.values))
      for (const name of Object.keys(fields))
        expect(fieldAt(`${group}.${name}`), `${group}.${name}`).not.toBeNull()
  })

  it('is a whole scenario that reads without a problem', () => {
    const { scenario, problems } = parseScenario(withPreset(defaultScenario(), preset))
    expect(problems).toEqual([])
    expect(scenario?.room.length_m).toBe(preset.values.room?.length_m)
  })

  it('has windows that fit its walls', () => {
    expect(roomGeometry(roomSpecOf(withPreset(defaultScenario(), preset))).opaqueWall_m2).toBeGreaterThan(0)
  })

  it('says that it is invented', () => {
    expect(preset.about).toMatch(/^Invented: /)
  })
})
