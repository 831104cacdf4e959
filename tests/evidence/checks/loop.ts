import { fluidProperties } from '#model/panels/loop'
import { frictionFactor, pressureGradient_Pam } from '#inside/model/panels/loop/friction.ts'
import { pipeGain_WmK } from '#inside/model/panels/loop/pipes.ts'
import {
  efficiencyFactor,
  finEfficiency,
  flowFactor,
  removalFactor,
  tubeFilm_Wm2K,
} from '#inside/model/panels/loop/plate.ts'
import type { Check } from '../check.ts'
import { colebrook } from '../models/colebrook.ts'

const loop = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Loop and fluids', ...rest })
const HAALAND = '2 %: Haaland’s form of Colebrook is claimed to be that close'
const TABLE_25 =
  '25 %: the table’s own velocities imply a bore 4 % narrower, and the loss goes with its fifth power'

const copper = {
  plateThickness_m: 0.0005,
  plateConductivity_WmK: 385,
  tubeSpacing_m: 0.15,
  tubeOuterDiameter_m: 0.01,
  tubeInnerDiameter_m: 0.01,
}
const aluminium = {
  ...copper,
  plateConductivity_WmK: 237,
  tubeSpacing_m: 0.1,
  tubeOuterDiameter_m: 0.012,
  tubeInnerDiameter_m: 0.012,
}
const cold = fluidProperties('water', 0, 10)

/** Pressure lost in a smooth drawn tube, kPa/m. */
function copper_kPam(bore_m: number, flow_Ls: number, water = cold): number {
  return (
    pressureGradient_Pam({
      bore_m,
      roughness_m: 1.5e-6,
      flow_kgs: flow_Ls * 1e-3 * water.density_kgm3,
      fluid: water,
    }) / 1000
  )
}

export const loopChecks: readonly Check[] = [
  loop({
    quantity: 'fin efficiency, copper plate 0.5 mm, tubes at 150 mm, U = 8',
    unit: '–',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 6.5.1',
    got: () => finEfficiency(copper, 8),
    want: 0.937,
    within: 0.0005,
    because: 'printed to three digits',
  }),
  loop({
    quantity: 'collector efficiency factor F′ of the same plate, 300 W/m²K inside the tube',
    unit: '–',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 6.5.1',
    got: () => efficiencyFactor(copper, 8, 300),
    want: 0.841,
    within: 0.0008,
    because: 'printed to three digits, from a rounded F',
  }),
  loop({
    quantity: 'collector flow factor F″ at 0.03 kg/s over 2 m²',
    unit: '–',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 6.7.1',
    got: () => flowFactor((0.03 * 4190) / 2, 8, 0.841),
    want: 0.948,
    within: 0.0008,
    because: 'printed to three digits',
  }),
  loop({
    quantity: 'heat removal factor F_R at 0.03 kg/s over 2 m²',
    unit: '–',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 6.7.1',
    got: () => removalFactor((0.03 * 4190) / 2, 8, 0.841),
    want: 0.797,
    within: 0.0008,
    because: 'printed to three digits',
  }),
  loop({
    quantity: 'fin efficiency, aluminium plate 0.5 mm, tubes at 100 mm, U = 9',
    unit: '–',
    kind: 'exact',
    source: 'exact',
    where: 'tanh(mL)/(mL), worked out apart',
    got: () => finEfficiency(aluminium, 9),
    want: 0.9537081,
    within: 1e-6,
    because: 'the closed form of the fin equation',
  }),
  loop({
    quantity: 'F′ of the aluminium plate, 300 W/m²K inside a 12 mm tube',
    unit: '–',
    kind: 'independent calculation',
    source: 'duffieBeckman',
    where: 'eq. 6.5.18, worked out apart',
    got: () => efficiencyFactor(aluminium, 9, 300),
    want: 0.8912304,
    within: 1e-6,
    because: 'the same formula worked out by another program',
  }),
  ...(
    [
      [5e3, 0.001, 0.0385],
      [1e4, 0.001, 0.0324],
      [1e5, 0.001, 0.0222],
      [1e6, 0.001, 0.0199],
      [1e5, 0.01, 0.0384],
      [1e5, 0.05, 0.0716],
    ] as const
  ).map(([reynolds, roughness, want]) =>
    loop({
      quantity: `friction factor at Re ${reynolds}, relative roughness ${roughness}`,
      unit: '–',
      kind: 'published' as const,
      source: 'moody' as const,
      where: 'public table of Colebrook values',
      got: () => frictionFactor(reynolds, roughness),
      want,
      within: Number((0.02 * want).toPrecision(2)),
      because: HAALAND,
    }),
  ),
  loop({
    quantity: 'friction factor of a smooth tube, 4000 < Re < 10⁶: largest difference from Colebrook',
    unit: '%',
    kind: 'independent calculation',
    source: 'moody',
    got: () => {
      let most = 0
      for (let re = 4000; re < 1e6; re *= 1.1)
        most = Math.max(most, Math.abs(frictionFactor(re, 0) / colebrook(re, 0) - 1))
      return 100 * most
    },
    want: [0, 2],
    within: 0,
    because: HAALAND,
  }),
  loop({
    quantity: 'laminar loss of water at 20 °C, 6 mm tube, 0.5 L/min',
    unit: 'Pa/m',
    kind: 'exact',
    source: 'poiseuille',
    where: '128 µ V/(π d⁴) with 1001.6 µPa s',
    got: () => {
      const fluid = fluidProperties('water', 0, 20)
      return pressureGradient_Pam({
        bore_m: 0.006,
        roughness_m: 1.5e-6,
        flow_kgs: (0.5e-3 / 60) * fluid.density_kgm3,
        fluid,
      })
    },
    want: 262.403,
    within: 0.3,
    because: 'viscosity of water to 0.1 %',
  }),
  ...(
    [
      ['15 mm', 0.0136, 0.1, 0.6],
      ['15 mm', 0.0136, 0.2, 2.3],
      ['22 mm', 0.0202, 0.3, 0.65],
      ['22 mm', 0.0202, 0.6, 2.5],
      ['28 mm', 0.0262, 0.35, 0.25],
      ['28 mm', 0.0262, 0.9, 1.4],
    ] as const
  ).map(([name, bore, flow, want]) =>
    loop({
      quantity: `pressure lost in ${name} copper at ${flow} L/s of cold water`,
      unit: 'kPa/m',
      kind: 'published' as const,
      source: 'bs6700' as const,
      where: 'table D.4',
      got: () => copper_kPam(bore, flow),
      want,
      within: Number((0.25 * want).toPrecision(3)),
      because: TABLE_25,
    }),
  ),
  loop({
    quantity: 'pressure lost in half-inch PEX (0.475 in bore) at 4 US gal/min of water at 15 °C',
    unit: 'psi/ft',
    kind: 'published',
    source: 'pexSheet',
    where: 'the article’s example',
    got: () =>
      (copper_kPam(0.475 * 0.0254, 0.252361, fluidProperties('water', 0, 15)) * 1000 * 0.3048) / 6894.757,
    want: 0.208,
    within: 0.0208,
    because: '10 %: makers’ bores differ by 2 %, the loss goes with the fifth power',
  }),
  loop({
    quantity: 'long laminar tube at constant wall temperature: Nusselt number',
    unit: '–',
    kind: 'published',
    source: 'incropera',
    where: 'eq. 8.55',
    got: () =>
      (tubeFilm_Wm2K({ reynolds: 1000, prandtl: 7, bore_m: 0.01, length_m: 1e5, conductivity_WmK: 0.6 }) *
        0.01) /
      0.6,
    want: 3.66,
    within: 0.01,
    because: 'the exact limit, printed to three digits',
  }),
  loop({
    quantity: 'turbulent water, Re 20 000, Pr 7, against 0.023 Re^0.8 Pr^0.4: Nusselt number',
    unit: '–',
    kind: 'published',
    source: 'mcAdams',
    where: 'Dittus–Boelter form',
    got: () =>
      (tubeFilm_Wm2K({ reynolds: 2e4, prandtl: 7, bore_m: 0.01, length_m: 2, conductivity_WmK: 0.6 }) *
        0.01) /
      0.6,
    want: Number((0.023 * 2e4 ** 0.8 * 7 ** 0.4).toFixed(1)),
    within: 0.2 * 138,
    because: '20 %: the older form is claimed to 25 %, the newer to 10 %',
  }),
  ...(
    [
      ['16 mm tube with 13 mm of foam', 0.013, 0.195745],
      ['16 mm tube, bare', 0, 0.452389],
    ] as const
  ).map(([name, insulation, want]) =>
    loop({
      quantity: `heat gain per metre and kelvin, ${name}`,
      unit: 'W/m K',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'radial conduction and an outer film of 9 W/m²K, worked out apart',
      got: () => pipeGain_WmK(0.016, insulation),
      want,
      within: 1e-4,
      because: 'a closed form',
    }),
  ),
]
