import { figure, words, type Text, type Wording } from '#model/basis/words'
import type { PlantFacts } from './facts.ts'
import { box, label, path, type Drawing, type Shape } from './shapes.ts'
import { unit } from './symbols.ts'

/** Cables (common practice, no source; local codes decide). */
export const CABLES = {
  mains: words`3 × ${figure(1.5e-6, 'wire')}`,
  signal: words`2 × ${figure(0.75e-6, 'wire')}, screened`,
  sensor: words`2 × ${figure(0.5e-6, 'wire')}, screened`,
  humidity: words`4 × ${figure(0.5e-6, 'wire')}, screened`,
} as const
type Cable = keyof typeof CABLES

/** One device on the controller. */
export interface Wire {
  readonly mark: string
  readonly what: string
  readonly cable: Cable
}

/** What cuts the supply at a fault; 5 mA by the class of its trip (common practice, no source). */
export const RESIDUAL = 'residual-current device of 30 mA, in North America ground-fault class A (5 mA)'

type WiredFacts = Pick<PlantFacts, 'tank' | 'drained' | 'mover' | 'roomUnit'>

/** What is read: thermometers, humidity, float. */
export function readWires({ tank, drained }: WiredFacts): Wire[] {
  const thermometer = (mark: string, what: string): Wire => ({ mark, what, cable: 'sensor' })
  return [
    thermometer('S1', 'plate'),
    thermometer('S2', tank === null ? 'mass' : 'tank, top'),
    thermometer('S3', 'supply'),
    thermometer('S4', 'return'),
    thermometer('S5', 'room'),
    { mark: 'S6', what: 'humidity', cable: 'humidity' },
    thermometer('S7', 'outdoors'),
    ...(tank === null ? [] : [thermometer('S8', 'tank, bottom')]),
    ...(tank !== null && !drained ? [thermometer('S9', 'room supply')] : []),
    ...(tank === null ? [] : [{ mark: 'LS', what: 'float, low water', cable: 'signal' } as const]),
    ...(tank !== null && drained
      ? [{ mark: 'FS', what: 'float of the tray', cable: 'signal' } as const]
      : []),
  ]
}

/** What is switched or set. */
export function drivenWires({ tank, drained, mover, roomUnit }: WiredFacts): Wire[] {
  return [
    {
      mark: mover === 'pump' ? 'P1' : 'FN',
      what: `${mover === 'pump' ? 'pump' : 'fan'}, switched mains`,
      cable: 'mains',
    },
    ...(tank === null
      ? []
      : [
          { mark: 'P2', what: 'room pump, mains', cable: 'mains' } as const,
          { mark: '', what: 'its speed, 0–10 V or pulses', cable: 'signal' } as const,
        ]),
    ...(tank !== null && !drained
      ? [{ mark: 'M1', what: 'mixing valve, 24 V and 0–10 V', cable: 'humidity' } as const]
      : []),
    ...(roomUnit === 'fanCoil'
      ? [
          { mark: 'FC', what: 'coil’s fan, switched mains', cable: 'mains' } as const,
          { mark: '', what: 'its speed, 0–10 V', cable: 'signal' } as const,
        ]
      : []),
    { mark: 'AL', what: 'alarm: lamp or buzzer, 24 V', cable: 'signal' },
  ]
}

const ROW = { top: 21, pitch: 5.4, high: 4.6 }
const X = { sensor: 4, from: 14, box: 68, wide: 20, unit: 107, right: 182 }

/** Supply, controller, and every cable to what it reads and drives; not to scale. */
export function wiring(facts: PlantFacts): Drawing {
  const read = readWires(facts)
  const driven = drivenWires(facts)
  const rows = Math.max(read.length, driven.length)
  const height = rows * ROW.pitch
  return {
    id: 'wiring',
    title: 'Wiring: supply, controller and every cable',
    width: X.right,
    height: ROW.top + height + 3,
    scale: null,
    summary: 'Wiring of the controller with its supply, sensors and what it drives, as listed below.',
    notes: notesOf(facts),
    key: [
      { mark: 'RD', what: `breaker and ${RESIDUAL}` },
      { mark: 'IS', what: 'isolator within sight of pumps and controller' },
      { mark: 'CT', what: 'controller in a splash-proof box, with a 24 V supply' },
      {
        mark: 'HS',
        what: `hand switch of ${driven[0]!.mark}, off / auto / hand, that can be locked: on auto the controller switches, on hand it runs`,
      },
      ...(facts.tank === null
        ? []
        : [{ mark: 'H2', what: 'the same for P2, with the coil’s fan where there is one' }]),
      { mark: 'AL', what: 'alarm' },
    ],
    shapes: [
      ...supply(),
      box([X.box, ROW.top - 3], X.wide, height + 4, 'thick', 'pale'),
      label([X.box + X.wide / 2, ROW.top + height / 2], 'CT', 'middle', { bold: true }),
      ...unit([X.box + X.wide - 7.5, ROW.top - 2.3], 7.5, ROW.high, 'HS'),
      ...(facts.tank === null
        ? []
        : unit([X.box + X.wide - 7.5, ROW.top + ROW.pitch - 2.3], 7.5, ROW.high, 'H2')),
      ...read.flatMap((wire, i) => readRow(wire, ROW.top + i * ROW.pitch)),
      ...driven.flatMap((wire, i) => drivenRow(wire, driven[i + 1]?.mark === '', ROW.top + i * ROW.pitch)),
    ],
  }
}

function supply(): Shape[] {
  const y = 6
  return [
    label([X.sensor, y + 1], 'board, 230 V or 120 V', 'start'),
    path(
      [
        [40, y],
        [X.box + X.wide / 2, y],
        [X.box + X.wide / 2, ROW.top - 3],
      ],
      'thick',
    ),
    ...unit([43, y - 2.5], 8, 5, 'RD'),
    ...unit([56, y - 2.5], 8, 5, 'IS'),
    label([X.box + X.wide / 2 + 2, y + 7], CABLES.mains, 'start'),
  ]
}

function readRow({ mark, what, cable }: Wire, y: number): Shape[] {
  return [
    ...unit([X.sensor, y - 2.3], 9, ROW.high, mark),
    path(
      [
        [X.sensor + 9, y],
        [X.box, y],
      ],
      'thin',
    ),
    label([X.from + 1, y - 0.8], words`${what}: ${shortCable(cable)}`, 'start'),
  ]
}

function drivenRow({ mark, what, cable }: Wire, goesOn: boolean, y: number): Shape[] {
  const high = goesOn ? ROW.high + ROW.pitch : ROW.high
  return [
    ...(mark === '' ? [] : unit([X.unit - 10, y - 2.3], 9, high, mark)),
    path(
      [
        [X.box + X.wide, y],
        [X.unit - 10, y],
      ],
      cable === 'mains' ? 'thick' : 'thin',
    ),
    label([X.unit + 1, y + 1], words`${what}: ${shortCable(cable)}`, 'start'),
  ]
}

/** Cores and section alone. */
const shortCable = (cable: Cable): Wording => CABLES[cable].filter((part) => part !== ', screened')

function notesOf({ tank }: PlantFacts): Text[] {
  return [
    words`Thick lines carry mains, thin ones extra-low voltage: in pipes of their own, at least ${figure(0.1, 'depth')} apart. Screens are earthed at the controller alone; sensor cables enter from below, with a drip loop. Where a sensor’s maker gives another cable, that one.`,
    tank === null
      ? 'Every metal pipe is bonded to earth. The alarm’s lamp is where someone sees it every day.'
      : 'Every metal pipe and the tank’s frame are bonded to earth. Pumps and controller are outside the way of a leak, not under the tank’s fittings. The alarm’s lamp is where someone sees it every day.',
  ]
}
