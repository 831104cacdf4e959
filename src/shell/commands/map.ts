import { J_PER_KWH } from '#model/basis/hours'
import { said, stop } from '#model/basis/words'
import { isTank } from '#model/building/store'
import { FIELDS } from '#model/design/scenario'
import { designFlow, misfitsOf } from '#model/design/assembly'
import { candidateAt, type DesignMap, MAP_KINDS, type MapAxes, type MapKind } from '#model/design/sizing'
import { answered, studies } from '../answered.ts'
import { inventedParts } from '../invented-parts.ts'
import type { Options } from '../options.ts'
import { note } from '../output.ts'
import { yearOf } from '../weather-source.ts'
import type { Command } from './command.ts'
import { numbersOption } from '../number-option.ts'

function kindOf(given: unknown, hasTank: boolean): MapKind {
  const kinds = hasTank ? MAP_KINDS : (['flow'] as const)
  const found = kinds.find((kind) => kind === (given ?? kinds[0]))
  if (found !== undefined) return found
  throw stop(
    'bad-over',
    `--over ${String(given)} is not known${hasTank ? '' : ' without a tank'}.`,
    `Use ${kinds.join(' or ')}.`,
  )
}

/** Axes as typed; none where neither is, and the map chooses. */
function axesOf(kind: MapKind, options: Options): { readonly axes?: MapAxes } {
  if (options.values['areas'] === undefined && options.values['others'] === undefined) return {}
  const { min, max } = kind === 'store' ? FIELDS.store.volume_m3 : FIELDS.loop.flow_kgsm2
  const area_m2 = rising(options, 'areas', [0.1, options.scenario.target.maxArea_m2])
  return { axes: { kind, area_m2, other: rising(options, 'others', [min, max]) } }
}

function rising(options: Options, name: string, [least, most]: readonly [number, number]): readonly number[] {
  const marks = numbersOption(options, name)
  const inOrder = marks.every((mark, i) => i === 0 || mark > marks[i - 1]!)
  if (marks.length >= 2 && inOrder && marks[0]! >= least && marks.at(-1)! <= most) return marks
  throw stop(
    'bad-axis',
    marks.length === 0
      ? `--${name} is missing.`
      : `--${name} ${marks.join(',')} is not two or more rising numbers.`,
    `Give --areas and --others with commas; --${name} from ${least} to ${most}.`,
  )
}

/** How far what is read between simulated designs was off where it was looked at. */
function readNotes({ simulated, known, miss, electricMiss_J }: DesignMap): string[] {
  const notes: string[] = []
  if (miss !== null)
    notes.push(
      `${simulated} of ${known.length} crossings simulated; at ${miss.looks} left out, the reading between was off by ${miss.peak_K.toFixed(2)} K and ${miss.hours_h.toFixed(0)} h at most`,
    )
  if (electricMiss_J !== null)
    notes.push(
      `electricity is read between whole years; at others it was off by ${(electricMiss_J / J_PER_KWH).toFixed(2)} kWh a year at most`,
    )
  return notes
}

export const map: Command = {
  summary:
    'hours over the limit, peak and electricity over area and store, or area and flow, around the design',
  options: {
    over: {
      type: 'string',
      help: 'what is varied beside the area: store (default where there is a tank) or flow',
    },
    areas: { type: 'string', help: 'areas to try, m², with commas (default around the design)' },
    others: { type: 'string', help: 'stores to try, m³, or flows, kg/s·m², with commas' },
  },
  run(options) {
    const { scenario } = options
    const kind = kindOf(options.values['over'], isTank(scenario.store.kind))
    const weather = yearOf(options)
    const { sizing, area_m2, storeVolume_m3, fit } = answered(studies.size({ scenario, weather }))
    if (fit.instead !== null) note(`map: the design does not fit. ${said(fit.instead).message}`)
    const around = { area_m2, storeVolume_m3, flow_kgsm2: sizing.flow_kgsm2 }
    const held = { storeVolume_m3, flow_kgsm2: designFlow(scenario) }
    let tenths = 0
    const found = answered(
      studies.map({ scenario, weather, kind, around, ...axesOf(kind, options) }),
      ({ share }) => {
        if (Math.floor(share * 10) > tenths) note(`map: ${(tenths = Math.floor(share * 10)) * 10} %`)
      },
    )
    const { axes, known, hours_h, peak_C, electric_J, measure } = found
    for (const said of readNotes(found)) note(`map: ${said}`)
    const crossings = axes.other.flatMap((other) =>
      axes.area_m2.map((each_m2) => candidateAt(held, axes, each_m2, other)),
    )
    const table = {
      area_m2: crossings.map((each) => each.area_m2),
      storeVolume_m3: crossings.map((each) => each.storeVolume_m3),
      flowPerArea_kgsm2: crossings.map((each) => each.flow_kgsm2),
      hoursOver_h: hours_h,
      peak_C,
      electric_kWh: electric_J.map((each_J) => each_J / J_PER_KWH),
      meets: Array.from(measure, (each) => each <= 0),
      fits: crossings.map((each) => misfitsOf(scenario, each.area_m2, each.storeVolume_m3).length === 0),
      simulated: Array.from(known, (each) => each === 1),
    }
    return { body: { kind: 'table', table }, invented: inventedParts(options, weather) }
  },
}
