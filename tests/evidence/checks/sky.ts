import { windowFraction } from '#inside/model/outdoors/air/blackbody.ts'
import { offWindowEmissivity, windowEmissivity } from '#inside/model/outdoors/sky/bands.ts'
import {
  berdahlMartin1984,
  brutsaert1975,
  matsunobuCoimbra2024,
  prata1996,
} from '#inside/model/outdoors/sky/clear.ts'
import { cloudyMartinBerdahl, skyOnPlane, windowFactor_frac } from '#model/outdoors/sky'
import { once, type Check } from '../check.ts'
import { ALPINE, alpine, SHIP, ship, SURFRAD, surfrad, type MeasuredHours } from '../data/measured.ts'
import { judgeSky, type SkyJudgement } from '../data/record.ts'
import { planckShare } from '../models/planck.ts'
import type { SourceKey } from '../sources.ts'

const sky = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Sky', ...rest })

const BAND_TABLE = [
  [2, 0.31, 0.927],
  [6, 0.39, 0.977],
  [10, 0.46, 0.986],
  [15, 0.54, 0.989],
  [20, 0.63, 0.99],
  [25, 0.71, 0.992],
] as const

/** Both bands put together again, –: must be the broadband formula of the same paper. */
function together(vapour_hPa: number): number {
  const share = planckShare(1e4 / 1400, 1e4 / 750, 294.2)
  return share * windowEmissivity(vapour_hPa * 100) + (1 - share) * offWindowEmissivity(vapour_hPa * 100)
}

/**
 * Window longwave on a tilted plane over that on a level one, by summing rays over the hemisphere of the plane;
 * sky of emissivity 1 − (1 − ε_z)^(1/cos θ), nothing from below the horizon.
 */
function raysOnPlane(zenithEmissivity: number, tilt_deg: number): number {
  const tilt = (tilt_deg * Math.PI) / 180
  const n = 600
  let flat = 0
  let plane = 0
  for (let i = 0; i < n; i++) {
    const theta = ((i + 0.5) / n) * (Math.PI / 2)
    const emissivity = 1 - (1 - zenithEmissivity) ** (1 / Math.cos(theta))
    for (let j = 0; j < n; j++) {
      const phi = ((j + 0.5) / n) * 2 * Math.PI
      const cosPlane = Math.cos(theta) * Math.cos(tilt) + Math.sin(theta) * Math.sin(tilt) * Math.cos(phi)
      flat += emissivity * Math.sin(theta) * Math.cos(theta)
      plane += emissivity * Math.sin(theta) * Math.max(0, cosPlane)
    }
  }
  return plane / flat
}

/** Hemispherical emissivity of such a sky on a level plane. */
function hemispherical(zenithEmissivity: number): number {
  const n = 20000
  let sum = 0
  for (let i = 0; i < n; i++) {
    const theta = ((i + 0.5) / n) * (Math.PI / 2)
    sum += (1 - (1 - zenithEmissivity) ** (1 / Math.cos(theta))) * Math.sin(2 * theta) * (Math.PI / 2 / n)
  }
  return sum
}

const PUBLISHED_SPREAD =
  'Crawford & Duchon 1999 report hourly RMSE of 11–22 W/m² all sky; over 300 sites daily RMSE is 13.6 clear (Remote Sensing 16, 3422, 2024)'

function againstMeasured(
  place: string,
  needs: string,
  source: SourceKey,
  read: () => MeasuredHours,
  misses: Partial<Record<string, string>> = {},
): Check[] {
  const judged = once(() => judgeSky(read()))
  const row = (name: string, want: readonly [number, number], pick: (j: SkyJudgement) => number) =>
    sky({
      quantity: `downwelling longwave, ${place}, ${name}, model less measured`,
      unit: 'W/m²',
      kind: 'measured',
      source,
      needs,
      got: () => pick(judged()),
      want,
      within: 0,
      because: PUBLISHED_SPREAD,
      ...(misses[name] === undefined ? {} : { miss: misses[name] }),
    })
  return (
    [
      ['clear nights', 'clearNight', 16],
      ['nights clear by the measured longwave, formula without cloud', 'formulaClearNight', 16],
      ['all nights', 'allNight', 22],
      ['clear days', 'clearDay', 22],
      ['all days', 'allDay', 22],
    ] as const
  ).flatMap(([name, key, rmse]) => [
    row(`${name}, bias`, [-10, 10], (j) => j[key].bias_Wm2),
    row(`${name}, RMSE`, [0, rmse], (j) => j[key].rmse_Wm2),
  ])
}

const FROZEN =
  'one winter day over snow at 2300 m, −8 to −22 °C by night in calm air: clear-sky formulas differ by as much, and a single day cannot say more'
const VALLEY =
  'a station among slopes and forest: they raise the measured longwave, and cloud is only carried across the night'

const CARRIED =
  'cloud is seen by day only: one in twelve of the night hours that count as clear by the days beside them was clouded'
export const skyChecks: readonly Check[] = [
  ...BAND_TABLE.flatMap(([vapour, window, rest]) => [
    sky({
      quantity: `emissivity of the clear sky inside the window at ${vapour} hPa of vapour`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'liCoimbra' as const,
      where: 'band table over the blackbody share, worked out apart',
      got: () => windowEmissivity(vapour * 100),
      want: window,
      within: 0.006,
      because: 'two digits',
    }),
    sky({
      quantity: `emissivity of the clear sky outside the window at ${vapour} hPa of vapour`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'liCoimbra' as const,
      where: 'band table over the blackbody share, worked out apart',
      got: () => offWindowEmissivity(vapour * 100),
      want: rest,
      within: 0.0015,
      because: 'three digits',
    }),
  ]),
  ...([5, 15, 25] as const).map((vapour) =>
    sky({
      quantity: `both bands together at ${vapour} hPa against the paper’s own broadband formula`,
      unit: '–',
      kind: 'published' as const,
      source: 'liCoimbra' as const,
      where: '0.6173 + 1.6940 p_w^0.5035',
      got: () => together(vapour),
      want: Number((0.6173 + 1.694 * ((vapour * 100) / 101325) ** 0.5035).toFixed(4)),
      within: 0.012,
      because: 'the two fits of the paper agree to about a hundredth',
    }),
  ),
  sky({
    quantity: 'share of 7.1–13.3 µm radiation at 294.2 K that lies in our 8–13 µm window',
    unit: '–',
    kind: 'independent calculation',
    source: 'planck',
    got: () => windowFraction(294.2) / planckShare(1e4 / 1400, 1e4 / 750, 294.2),
    want: [0.8, 0.9],
    within: 0,
    because: 'the table’s band is a little wider than the window; the emissivity is taken over as it is',
  }),
  sky({
    quantity: 'sky temperature at midnight, air 20 °C, dew point 10 °C',
    unit: 'K',
    kind: 'independent calculation',
    source: 'duffieBeckman',
    where: 'formula of Berdahl & Martin in section 3.9, worked by hand; not an example of the book',
    got: () => 293.15 * berdahlMartin1984(10, 0, 100000) ** 0.25,
    want: 276.1,
    within: 0.1,
    because: 'worked by hand to a tenth of a kelvin',
  }),
  ...(
    [
      ['matsunobu', 'Matsunobu & Coimbra, 10 hPa', () => matsunobuCoimbra2024(1000), 0.7641],
      ['brutsaert', 'Brutsaert, 10 hPa, 15 °C', () => brutsaert1975(1000, 14.85), 0.7673],
      ['prata', 'Prata, 10 hPa, 17 °C', () => prata1996(1000, 16.85), 0.7757],
    ] as const
  ).map(([source, name, got, want]) =>
    sky({
      quantity: `clear-sky emissivity by ${name}`,
      unit: '–',
      kind: 'independent calculation' as const,
      source,
      where: 'formula by hand',
      got,
      want,
      within: 0.0006,
      because: 'worked by hand to four digits',
    }),
  ),
  sky({
    quantity: 'emissivity under low overcast (base 500 m) over a clear sky of 0.75',
    unit: '–',
    kind: 'independent calculation',
    source: 'martinBerdahl',
    where: 'formula by hand: 0.75 + 0.25 exp(−500/8200)',
    fromMemory: true,
    got: () => cloudyMartinBerdahl(0.75, 1, 500),
    want: 0.9852,
    within: 0.0002,
    because: 'worked by hand to four digits',
  }),
  ...([30, 60] as const).map((tilt) =>
    sky({
      quantity: `window longwave on a plane tilted ${tilt}° over that on a level one, zenith emissivity 0.3`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'granqvist' as const,
      where: 'rays summed over the sky',
      got: () => windowFactor_frac(skyOnPlane(tilt, 0), hemispherical(0.3)),
      want: Number(raysOnPlane(0.3, tilt).toFixed(4)),
      within: 0.005,
      because: 'half a percent: 90 rings against a fine grid',
    }),
  ),
  ...againstMeasured('high basin in January (1 day)', SURFRAD, 'surfrad', surfrad, {
    'clear nights, bias': FROZEN,
    'clear nights, RMSE': FROZEN,
    'nights clear by the measured longwave, formula without cloud, bias': FROZEN,
    'all nights, bias': FROZEN,
  }),
  ...againstMeasured('tropical Atlantic (18 days)', SHIP, 'ship', ship),
  ...againstMeasured('alpine valley, October to May', ALPINE, 'alpine', alpine, {
    'clear nights, bias': CARRIED,
    'clear nights, RMSE': CARRIED,
    'all nights, RMSE': VALLEY,
    'all days, RMSE': VALLEY,
  }),
]
