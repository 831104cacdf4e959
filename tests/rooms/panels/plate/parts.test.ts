import { expect, test } from 'vitest'
import { panelBalance, panelParts, panelSetting, type PanelHour } from '#model/panels/plate'
import { defaultScenario } from '#model/design/scenario'
import { panelSpecOf } from '#model/design/assembly'

const HOURS: readonly PanelHour[] = [
  {
    air_C: 18,
    pressure_Pa: 101000,
    vapour_Pa: 1400,
    window_Wm2: 60,
    offWindow_Wm2: 240,
    sun_Wm2: 0,
    forced_Wm2K: 6,
  },
  {
    air_C: 30,
    pressure_Pa: 95000,
    vapour_Pa: 2600,
    window_Wm2: 100,
    offWindow_Wm2: 290,
    sun_Wm2: 800,
    forced_Wm2K: 12,
  },
  {
    air_C: -3,
    pressure_Pa: 101000,
    vapour_Pa: 450,
    window_Wm2: 35,
    offWindow_Wm2: 180,
    sun_Wm2: 0,
    forced_Wm2K: 1,
  },
]

for (const kind of ['bare', 'film'] as const) {
  test(`${kind}: sky, sun, air, water and back together are the heat of the balance`, () => {
    const base = defaultScenario()
    const setting = panelSetting(panelSpecOf({ ...base, cover: { ...base.cover, kind } }))
    for (const hour of HOURS) {
      for (const plate_C of [hour.air_C - 12, hour.air_C - 2, hour.air_C + 15]) {
        for (const water_kgm2 of [0, 0.02, 0.3]) {
          const { sky_Wm2, sun_Wm2, air_Wm2, water_Wm2, back_Wm2 } = panelParts(
            setting,
            hour,
            plate_C,
            water_kgm2,
          )
          const sum = sky_Wm2 + sun_Wm2 + air_Wm2 + water_Wm2 + back_Wm2
          expect(sum).toBeCloseTo(panelBalance(setting, hour, plate_C, water_kgm2).q_Wm2, 6)
        }
      }
    }
  })
}

test('a dry plate at air temperature gives nothing to the air and through the back, and loses to the sky', () => {
  const setting = panelSetting(panelSpecOf(defaultScenario()))
  const found = panelParts(setting, HOURS[0]!, 18, 0)
  expect(found.air_Wm2).toBeCloseTo(0, 9)
  expect(found.back_Wm2).toBeCloseTo(0, 9)
  expect(found.sun_Wm2).toBeCloseTo(0, 9)
  expect(found.sky_Wm2).toBeGreaterThan(20)
})

test('a plate below the dew point takes heat from the vapour', () => {
  const setting = panelSetting(panelSpecOf(defaultScenario()))
  expect(panelParts(setting, HOURS[0]!, 6, 0).water_Wm2).toBeLessThan(-1)
})
