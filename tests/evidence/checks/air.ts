import psychrolib from 'psychrolib'
import { windowFraction } from '#inside/model/outdoors/air/blackbody.ts'
import {
  airConductivity_WmK,
  airDensity_kgm3,
  airViscosity_Pas,
  dewPoint_C,
  dewPointFromHumidity_C,
  evaporationHeat_Jkg,
  humidityRatio_frac,
  relativeHumidity_frac,
  saturationPressure_Pa,
  standardPressure_Pa,
} from '#model/outdoors/air'
import type { Check } from '../check.ts'
import { planckShare } from '../models/planck.ts'
import { faceSaturation_Pa } from '../../rooms/panels/plate/face-saturation.ts'

psychrolib.SetUnitSystem(psychrolib.SI)
const satVapPres = (t: number) => psychrolib.GetSatVapPres(t)

/** Largest relative difference from psychrolib over a sweep of temperatures, %. */
function worst(ours: (t: number) => number, theirs: (t: number) => number, from: number, to: number): number {
  let most = 0
  for (let t = from; t <= to; t += 0.25) most = Math.max(most, Math.abs(ours(t) / theirs(t) - 1))
  return 100 * most
}

const air = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Moist air', ...rest })
const SAME_FORMULA = 'the same equations of Hyland & Wexler, so only rounding may differ'
const IAPWS_ROUND = 'the linear fit is within 0.2 % of the steam tables up to 60 °C'

export const airChecks: readonly Check[] = [
  air({
    quantity: 'saturation pressure over ice, −100 to 0 °C: largest difference from psychrolib',
    unit: '%',
    kind: 'independent calculation',
    source: 'psychrolib',
    got: () => worst(saturationPressure_Pa, satVapPres, -100, 0),
    want: 0,
    within: 0.001,
    because: SAME_FORMULA,
  }),
  air({
    quantity: 'saturation pressure over water, 0.25 to 90 °C: largest difference from psychrolib',
    unit: '%',
    kind: 'independent calculation',
    source: 'psychrolib',
    got: () => worst(saturationPressure_Pa, satVapPres, 0.25, 90),
    want: 0,
    within: 0.001,
    because: SAME_FORMULA,
  }),
  air({
    quantity:
      'saturation pressure of the table used in the hour loop, −40 to 90 °C: largest difference from psychrolib',
    unit: '%',
    kind: 'independent calculation',
    source: 'psychrolib',
    got: () =>
      worst(
        (t) => faceSaturation_Pa(t + 0.0512),
        (t) => satVapPres(t + 0.0512),
        -40,
        90,
      ),
    want: 0,
    within: 0.02,
    because: '0.02 % of vapour pressure is 0.003 K of dew point',
  }),
  ...(
    [
      [-10, 259.9029],
      [0, 611.1536],
      [20, 2338.8037],
      [35, 5627.8195],
    ] as const
  ).map(([t, want]) =>
    air({
      quantity: `saturation pressure at ${t} °C`,
      unit: 'Pa',
      kind: 'independent calculation' as const,
      source: 'hylandWexler' as const,
      where: 'values by the printed equations',
      got: () => saturationPressure_Pa(t),
      want,
      within: want * 1e-4,
      because: 'a ten-thousandth: the equations are claimed to 0.03 %',
    }),
  ),
  ...(
    [
      [25, 0.5, 101325, 0.00988104, 13.864],
      [30, 0.7, 101325, 0.01879518, 23.9279],
      [25, 0.5, 84000, 0.01195819, 13.864],
      [40, 0.1, 95000, 0.00487166, 2.6294],
    ] as const
  ).flatMap(([t, rh, p, ratio, dew]) => [
    air({
      quantity: `humidity ratio at ${t} °C, ${rh * 100} %, ${p / 100} hPa`,
      unit: 'g/kg',
      kind: 'independent calculation' as const,
      source: 'psychrolib' as const,
      got: () => 1000 * humidityRatio_frac(rh * saturationPressure_Pa(t), p),
      want: Number((ratio * 1000).toFixed(6)),
      within: 0.002,
      because: 'rounding of the molar-mass ratio',
    }),
    air({
      quantity: `dew point at ${t} °C, ${rh * 100} %, ${p / 100} hPa`,
      unit: '°C',
      kind: 'independent calculation' as const,
      source: 'psychrolib' as const,
      got: () => dewPointFromHumidity_C(t, rh),
      want: dew,
      within: 0.005,
      because: 'both invert the same curve',
    }),
  ]),
  air({
    quantity:
      'dew point from vapour pressure and back to humidity at 27 °C: largest difference from psychrolib, 5 to 100 %',
    unit: '% of humidity',
    kind: 'independent calculation',
    source: 'psychrolib',
    got: () => {
      let most = 0
      for (let rh = 0.2; rh <= 1; rh += 0.05) {
        const dew = psychrolib.GetTDewPointFromRelHum(27, rh)
        most = Math.max(most, Math.abs(relativeHumidity_frac(27, dew) - rh))
        most = Math.max(most, Math.abs(dewPoint_C(psychrolib.GetVapPresFromTDewPoint(dew)) - dew) / 100)
      }
      return 100 * most
    },
    want: 0,
    within: 0.01,
    because: SAME_FORMULA,
  }),
  ...(
    [
      [500, 95460.8],
      [1000, 89874.5],
      [2000, 79495.1],
    ] as const
  ).map(([height, want]) =>
    air({
      quantity: `standard atmosphere, pressure at ${height} m`,
      unit: 'Pa',
      kind: 'published' as const,
      source: 'iso2533' as const,
      got: () => standardPressure_Pa(height),
      want,
      within: 3,
      because: 'the printed exponents are rounded; 3 Pa is 0.3 m of height',
    }),
  ),
  ...(
    [
      [20, 2453.5],
      [40, 2406],
    ] as const
  ).map(([t, want]) =>
    air({
      quantity: `heat of evaporation of water at ${t} °C`,
      unit: 'kJ/kg',
      kind: 'published' as const,
      source: 'iapws' as const,
      where: 'steam tables',
      fromMemory: true,
      got: () => evaporationHeat_Jkg(t) / 1000,
      want,
      within: 5,
      because: IAPWS_ROUND,
    }),
  ),
  ...(
    [
      ['density', 1.1614, airDensity_kgm3(26.85, 1e5), 'kg/m³', 0.005],
      ['viscosity', 18.46, airViscosity_Pas(26.85) * 1e6, 'µPa s', 0.15],
      ['conductivity', 26.3, airConductivity_WmK(26.85) * 1e3, 'mW/m K', 0.4],
    ] as const
  ).map(([name, want, got, unit, within]) =>
    air({
      quantity: `${name} of air at 300 K and 100 kPa`,
      unit,
      kind: 'published' as const,
      source: 'incropera' as const,
      where: 'table A.4',
      fromMemory: true,
      got: () => got,
      want,
      within,
      because: 'Sutherland’s law is good to 1–2 % in this range',
    }),
  ),
  ...([250, 280, 300, 330] as const).map((temp_K) =>
    air({
      quantity: `share of blackbody radiation in 8–13 µm at ${temp_K} K`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'planck' as const,
      got: () => windowFraction(temp_K),
      want: Number(planckShare(8, 13, temp_K).toFixed(6)),
      within: 2e-5,
      because: 'series against Simpson’s rule; both are exact to more digits than printed',
    }),
  ),
]
