import { count, figure, line, words } from '#model/basis/words'
import { heightCaution } from '../cautions.ts'
import type { Work } from './work.ts'

/** An evaporative cooler or a small air conditioner as it was simulated. */
export type MachineSpec =
  | {
      readonly kind: 'direct' | 'indirect'
      readonly flow_m3h: number
      readonly fan_W: number
      readonly effectiveness_frac: number
      /** Make-up water in the driest hour, kg/h, with what is bled off. */
      readonly mostWater_kgh: number
      readonly bled_frac: number
      /** Highest humidity that it is let run to, 0…1. */
      readonly mostHumid_frac: number
      /** Room air at which the year started it, °C. */
      readonly startsAt_C: number
    }
  | {
      readonly kind: 'airConditioner'
      readonly rated_W: number
      readonly total_W: number
      readonly ratedCop_frac: number
      /** Room air that the year held with it, °C. */
      readonly startsAt_C: number
    }

const HOUR_s = 3600
/** Air in ducts, in the opening it leaves by, m/s (common practice, no source). */
const DUCT_ms = 5
const LEAVING_ms = 2
/** Supply circuits by what a machine draws at its start (common practice, no source). */
const LITRE_m3 = 0.001

export function machineWork(spec: MachineSpec): Work {
  return spec.kind === 'airConditioner' ? conditioner(spec) : cooler(spec)
}

export type Cooler = Extract<MachineSpec, { flow_m3h: number }>

/** Flow, duct and way out of a cooler's air. */
export function airOf({ flow_m3h }: Cooler) {
  const flow_m3s = flow_m3h / HOUR_s
  return {
    flow_m3s,
    duct_m: Math.sqrt((4 * flow_m3s) / (Math.PI * DUCT_ms)),
    leaving_m2: flow_m3s / LEAVING_ms,
  }
}

function coolerSizes(spec: Cooler): Work['sizes'] {
  const { flow_m3s, duct_m, leaving_m2 } = airOf(spec)
  const direct = spec.kind === 'direct'
  return [
    line('Air', words`${figure(flow_m3s, 'airFlow')}, fan ${figure(spec.fan_W, 'W', 2)}`),
    line(
      'Effectiveness',
      words`${figure(spec.effectiveness_frac, 'frac')} of the way from dry bulb to wet bulb, or better`,
    ),
    line(
      'Water',
      words`up to ${figure(spec.mostWater_kgh * LITRE_m3, 'content', 2)} an hour in the driest, hottest hours, ${figure(100 * spec.bled_frac, 'count', 2)} % of it bled off against salt`,
    ),
    line('Thermostat', words`set to ${figure(spec.startsAt_C, 'C')} of room air, as the year was simulated`),
    line('Duct', words`${figure(duct_m, 'duct')} across, or the same area`),
    line(
      'Way out',
      words`${figure(leaving_m2, 'm2', 2)} of open window or flap on the far side${direct ? ': it must stay open while the cooler runs' : ''}`,
    ),
    ...(direct
      ? [line('Humidity', words`off above ${figure(100 * spec.mostHumid_frac, 'count', 2)} % inside`)]
      : []),
  ]
}

function coolerParts(spec: Cooler): Work['buy'] {
  const { flow_m3s, duct_m, leaving_m2 } = airOf(spec)
  const direct = spec.kind === 'direct'
  return [
    {
      quantity: count(1),
      what: words`${direct ? 'direct' : 'indirect'} evaporative cooler: ${figure(flow_m3s, 'airFlow')} at the pressure of its duct, fan at most ${figure(spec.fan_W, 'W', 2)}, effectiveness ${figure(spec.effectiveness_frac, 'frac')} or better, with bleed and float`,
    },
    {
      quantity: count(1),
      what: words`water connection ${figure(0.015, 'valveSize')} with shut-off, backflow preventer and hose rated for pressure; or a tank filled by hand of ${figure(8 * spec.mostWater_kgh * LITRE_m3, 'content', 2)} for eight hours`,
    },
    {
      quantity: count(1),
      what: words`drain ${figure(0.02, 'valveSize')} from sump and bleed to a soakaway or sewer, with a trap`,
    },
    {
      quantity: count(1),
      what: words`duct ${figure(duct_m, 'duct')} with weather hood, damper shut in winter, grille for the room`,
    },
    {
      quantity: count(1),
      what: words`flap or window stay for ${figure(leaving_m2, 'm2', 2)} of way out, with insect mesh`,
    },
    {
      quantity: count(1),
      what: words`thermostat, set to ${figure(spec.startsAt_C, 'C')}${direct ? words` and humidity switch at ${figure(100 * spec.mostHumid_frac, 'count', 2)} %` : words``}, residual-current protected supply with isolator`,
    },
  ]
}

function cooler(spec: Cooler): Work {
  const { flow_m3s } = airOf(spec)
  return {
    name: spec.kind === 'direct' ? 'Direct evaporative cooler' : 'Indirect evaporative cooler',
    sizes: coolerSizes(spec),
    buy: coolerParts(spec),
    steps: [
      words`Stand it in shade, level, away from flues, kitchens and traffic; outdoor air only. Frame and roof fixings like any machine in wind.`,
      words`Duct, hood and damper; way out on the far side; water with backflow preventer; drain; then power.`,
    ],
    readings: [
      {
        what: 'Air speed at the grille, mean of nine spots, times its free area',
        expect: words`${figure(flow_m3s, 'airFlow')} ± 15 %`,
      },
      {
        what: 'Dry afternoon, an hour after start: outdoor dry bulb and wet bulb, supply air',
        expect: words`supply = dry bulb − ${figure(spec.effectiveness_frac, 'frac')} × (dry bulb − wet bulb), within ${figure(1, 'K')}; at ${figure(35, 'C')} and a wet bulb of ${figure(20, 'C')} that is ${figure(35 - spec.effectiveness_frac * 15, 'C')}`,
      },
      {
        what: 'Water meter over an hour',
        expect: words`no more than ${figure(spec.mostWater_kgh * LITRE_m3, 'content', 2)}`,
      },
    ],
    cautions: [
      {
        title: 'Legionella',
        text: words`Warm, stale sumps breed it: drain and dry the sump each week it is idle, clean and disinfect it at the beginning and the middle of the season, no mist into the room.`,
      },
      {
        title: 'Cross-connection',
        text: words`An approved backflow preventer in the feed, and an air gap where it ends: above the edge of the sump’s overflow, never in the water.`,
      },
      heightCaution,
    ],
    keep: [
      words`Pads: rinse every month of use, new ones after two or three seasons or when they scale.`,
      words`Winter: drain, dry, cover, damper shut.`,
    ],
  }
}

function conditioner(spec: Extract<MachineSpec, { rated_W: number }>): Work {
  const electric_W = spec.total_W / spec.ratedCop_frac
  return {
    name: 'Small air conditioner',
    sizes: [
      line(
        'Cooling',
        words`${figure(spec.rated_W, 'heat', 2)} sensible, about ${figure(spec.total_W, 'heat', 2)} in all, at ${figure(35, 'C')} outdoors`,
      ),
      line('Efficiency', words`${figure(spec.ratedCop_frac, 'frac', 2)} at that point, or better`),
      line(
        'Thermostat',
        words`set to ${figure(spec.startsAt_C, 'C')} of room air, as the year was simulated`,
      ),
      line('Electricity', words`about ${figure(electric_W, 'W', 2)} while it runs flat out`),
    ],
    buy: [
      {
        quantity: count(1),
        what: words`split air conditioner with inverter: ${figure(spec.total_W, 'heat', 2)} in all at ${figure(35, 'C')} outdoors, efficiency ${figure(spec.ratedCop_frac, 'frac', 2)} or better, with line set, wall bracket or pads`,
      },
      {
        quantity: count(1),
        what: words`circuit of its own for ${figure(1.25 * electric_W, 'W', 2)} and more, as its plate says, with breaker, residual-current protection and isolator outdoors`,
      },
      {
        quantity: count(1),
        what: words`condensate drain ${figure(0.02, 'valveSize')} with a fall and a trap`,
      },
    ],
    steps: [
      words`Outdoor unit in shade with free air on all sides its maker names, not below bedrooms; indoor unit high, on an outer wall, with the drain falling outwards.`,
      words`Line set, evacuation and filling by a licensed fitter only.`,
    ],
    readings: [
      {
        what: 'After 30 minutes: air into and out of the indoor unit',
        expect: words`${figure(8, 'K')} to ${figure(14, 'K')} colder out than in`,
      },
      { what: 'Power, flat out', expect: words`about ${figure(electric_W, 'W', 2)}` },
    ],
    cautions: [
      {
        title: 'Refrigerant',
        text: words`Under pressure, some of it flammable: opening the circuit is licensed work, and so is taking it out of use.`,
      },
      {
        title: 'Electricity',
        text: words`A circuit of its own, isolator in sight, no work live.`,
      },
    ],
    keep: [words`Wash its filter every month of use; outdoor fins and drain each spring.`],
  }
}
