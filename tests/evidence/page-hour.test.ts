/* Second, independent implementation: sky and plate of an hour, `models/page-*.ts`, written from src/model/README.md alone by
 * someone who had read no other file of src, against the project's full balance and against the reduced hours that the year
 * runs on: 500 random hours of all kinds that the page describes, 1 W/m². */
import { expect, test } from 'vitest'
import { HOURS, pageDifferences, pageHours, typicalDifferences } from './models/page-case.ts'
import type { DrawnHour } from './models/page-draw.ts'

const lit = ({ sun }: DrawnHour) => sun.global_Wm2 > 0
const wet = ({ water_kgm2 }: DrawnHour) => water_kgm2 >= 1e-7
const cold = ({ plate_C }: DrawnHour) => plate_C < 0

const KINDS: Readonly<Record<string, (hour: DrawnHour) => boolean>> = {
  'bare, dry': (hour) => !hour.sheet && !wet(hour),
  'bare, wet': (hour) => !hour.sheet && wet(hour) && !cold(hour),
  'bare, frost': (hour) => !hour.sheet && wet(hour) && cold(hour),
  'film, dry': (hour) => !!hour.sheet && !wet(hour),
  'film, wet': (hour) => !!hour.sheet && wet(hour) && !cold(hour),
  'film, frost': (hour) => !!hour.sheet && wet(hour) && cold(hour),
  'film that reflects sunlight': ({ sheet }) => !!sheet && sheet.reflectance + sheet.scattered > 0.4,
  'aged a year and more': ({ years }) => years >= 1,
  level: ({ plane }) => plane.tilt_deg === 0,
  tilted: ({ plane }) => plane.tilt_deg > 0 && plane.tilt_deg < 60,
  steep: ({ plane }) => plane.tilt_deg >= 60,
  'behind a horizon': ({ plane }) => plane.horizon_deg > 0,
  day: lit,
  night: (hour) => !lit(hour),
  calm: ({ weather }) => weather.wind_ms === 0,
  'clear sky': ({ weather }) => weather.cloud_frac === 0,
  'cloud as read': ({ weather }) => weather.cloud_frac > 0 && weather.cloudWasRead,
  'cloud from sunlight': ({ weather }) => weather.cloud_frac > 0 && !weather.cloudWasRead,
  'measured longwave': ({ weather }) => weather.measured_Wm2 !== null,
  'open country': ({ terrain }) => terrain === 'open',
  suburb: ({ terrain }) => terrain === 'suburb',
  city: ({ terrain }) => terrain === 'city',
}

test(`plate and sky of ${HOURS} hours, written again from the page: within 1 W/m²`, () => {
  const worst = pageDifferences()
  const typical = typicalDifferences()
  console.log(JSON.stringify({ worst, typical }, null, 1))
  expect(worst.sky_Wm2).toBeLessThanOrEqual(0.1)
  expect(worst.window_Wm2).toBeLessThanOrEqual(0.1)
  expect(worst.sun_Wm2).toBeLessThanOrEqual(0.1)
  expect(worst.full_Wm2).toBeLessThanOrEqual(1)
  expect(worst.reduced_Wm2).toBeLessThanOrEqual(1)
  expect(worst.vapour_Wm2).toBeLessThanOrEqual(1)
  expect(worst.water_kgm2).toBeLessThanOrEqual(0.001)
  expect(typical.full_Wm2).toBeLessThanOrEqual(0.01)
})

test('the random hours hold every kind that the page describes', () => {
  for (const [kind, is] of Object.entries(KINDS)) {
    const of = pageHours().filter(({ hour }) => is(hour))
    const worst = Math.max(...of.map(({ apart }) => apart.full_Wm2))
    console.log(`${kind}: ${of.length} hours, full balance at most ${worst.toFixed(3)} W/m² apart`)
    expect(of.length, kind).toBeGreaterThanOrEqual(20)
  }
})
