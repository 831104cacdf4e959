import { NO_END, type Check } from '../check.ts'
import {
  board,
  coating,
  heatAt,
  overAir_K,
  statedCoefficient,
  THIN_FILM,
  type Moment,
} from '../models/plate-case.ts'

const field = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Panels in the field', ...rest })
const BAND = 'conditions are incompletely reported (those assumed are stated): ±2 K, ±20 W/m² or 25 %'

const raman: Moment = { air_C: 20, dewPoint_C: 4, sun_Wm2: 880, forced_Wm2K: 6.9 }
const ramanRadiator = () => statedCoefficient(coating(0.97, 0.7, 0.15))
const zhai: Moment = { air_C: 30, dewPoint_C: 0, sun_Wm2: 900, forced_Wm2K: 6.9 }
const caco3: Moment = { air_C: 20, dewPoint_C: 5, sun_Wm2: 950, forced_Wm2K: 6 }
const humidNoon: Moment = { air_C: 30, dewPoint_C: 24, sun_Wm2: 900, forced_Wm2K: 4.5 }
const dryNight: Moment = { air_C: 20, dewPoint_C: 5, sun_Wm2: 0, forced_Wm2K: 6 }
const negevNight: Moment = { air_C: 20, dewPoint_C: 13, sun_Wm2: 0, forced_Wm2K: 7.5 }

/** Heat of water at air temperature through a covered panel at 0.2 L/min per m², W/m². */
function goldsteinHeat_Wm2(): number {
  const setting = board(coating(0.97, 0.9), THIN_FILM, 0.8)
  const below_K = -overAir_K(setting, dryNight)
  const rest_C = dryNight.air_C - below_K
  const conductance = heatAt(setting, dryNight, rest_C + 0.5) - heatAt(setting, dryNight, rest_C - 0.5)
  const rate = (0.2 / 60) * 4186
  return rate * (1 - Math.exp((-0.92 * conductance) / rate)) * below_K
}

export const fieldChecks: readonly Check[] = [
  field({
    quantity:
      'reflector of 0.97 under film in 880 W/m² of sun, air 20 °C, dew point 4 °C, stated coefficient 6.9: below air',
    unit: 'K',
    kind: 'measured',
    source: 'raman',
    fromMemory: true,
    got: () => -overAir_K(ramanRadiator(), raman),
    want: 4.9,
    within: 2,
    because: BAND,
  }),
  field({
    quantity: 'the same held at air temperature',
    unit: 'W/m²',
    kind: 'measured',
    source: 'raman',
    fromMemory: true,
    got: () => heatAt(ramanRadiator(), raman, 20),
    want: 40,
    within: 20,
    because: BAND,
  }),
  field({
    quantity:
      'glass-polymer sheet (0.96 / 0.93) at noon held at air temperature, 900 W/m², air 30 °C, dew point 0 °C',
    unit: 'W/m²',
    kind: 'measured',
    source: 'zhai',
    where: 'abstract: 93 W/m² at noon, emissivity over 0.93',
    got: () => heatAt(statedCoefficient(coating(0.96, 0.93)), zhai, 30),
    want: 93,
    within: 23,
    because: BAND,
  }),
  field({
    quantity:
      'CaCO₃ paint (0.955 / 0.94) bare at noon, 950 W/m², air 20 °C, dew point 5 °C, held at air temperature',
    unit: 'W/m²',
    kind: 'measured',
    source: 'liCaco3',
    where: 'more than 37 W/m²; no upper end is given',
    got: () => heatAt(board(coating(0.955, 0.94)), caco3, 20),
    want: [37, NO_END],
    within: 20,
    because: BAND,
  }),
  field({
    quantity:
      'TiO₂ in silicone (0.882 / 0.924), bare, humid noon (30 °C, dew point 24 °C, 900 W/m²): over air',
    unit: 'K',
    kind: 'measured',
    source: 'tio2Silicone',
    where: 'never below air by day',
    got: () => overAir_K(board(coating(0.882, 0.924)), humidNoon),
    want: [0, 8],
    within: 0,
    because: 'the sign is the finding',
  }),
  field({
    quantity: 'water entering a covered panel at air temperature, 0.2 L/min per m², clear dry night: heat',
    unit: 'W/m²',
    kind: 'measured',
    source: 'goldstein',
    where: 'up to 70 W/m²; the lower end is ours',
    fromMemory: true,
    got: () => goldsteinHeat_Wm2(),
    want: [50, 70],
    within: 17.5,
    because: BAND,
  }),
  field({
    quantity: 'bare water radiator in the desert at night, plate 25 °C, air 20 °C, dew point 13 °C, 2.5 m/s',
    unit: 'W/m²',
    kind: 'measured',
    source: 'erellEtzion',
    where:
      'nightly mean more than 90 W/m², radiation and convection; no upper end is given; air, dew point, wind and plate are assumed',
    got: () => heatAt(board(coating(0.1, 0.9)), negevNight, 25),
    want: [90, NO_END],
    within: 22.5,
    because: BAND,
  }),
  field({
    quantity: 'black paint at air temperature on a clear summer night, 25 °C, dew point 20 °C',
    unit: 'W/m²',
    kind: 'measured',
    source: 'itoMiura',
    where: '40–60 W/m² in summer',
    got: () => heatAt(board(coating(0.05, 0.95)), { ...dryNight, air_C: 25, dewPoint_C: 20 }, 25),
    want: [40, 60],
    within: 0,
    because: 'the reported band itself',
    miss: '3 % over the reported band: a real panel does not see the whole sky',
  }),
  field({
    quantity: 'black paint at air temperature on a clear winter night, 5 °C, dew point −3 °C',
    unit: 'W/m²',
    kind: 'measured',
    source: 'itoMiura',
    where: '60–80 W/m² in autumn and winter',
    got: () => heatAt(board(coating(0.05, 0.95)), { ...dryNight, air_C: 5, dewPoint_C: -3 }, 5),
    want: [60, 80],
    within: 0,
    because: 'the reported band itself',
    miss: '12 % over the reported band: dew point is our guess, a real panel does not see the whole sky, and idealised radiators read high. The four clear-sky formulas give 87 to 98 W/m² here',
  }),
  field({
    quantity: 'roof at 5 °C, air at 10 °C, dew point 5 °C, 1.5 m/s, emittance 0.9, back to air 0.8 W/m²K',
    unit: 'W/m²',
    kind: 'measured',
    source: 'michellBiggs',
    where: 'useful 22, gross more than 29, ceiling 40 W/m²',
    got: () =>
      heatAt(board(coating(0.3, 0.9)), { air_C: 10, dewPoint_C: 5, sun_Wm2: 0, forced_Wm2K: 4.5 }, 5),
    want: [22, 40],
    within: 0,
    because: 'between what was useful and the ceiling they give',
  }),
]
