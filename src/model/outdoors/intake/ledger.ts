import { QUANTITIES, givesTime } from './column/quantity.ts'
import type { ColumnMapping, TableMapping } from './mapping.ts'
import type { OpenedWeather } from './options.ts'

const WHY: Readonly<Record<ColumnMapping['basis'], string>> = {
  layout: 'by the known layout',
  header: 'by its name',
  physics: 'by its values',
  user: 'as you said',
  none: '',
}

/** One line of what was taken for what, and why. */
export interface LedgerLine {
  readonly what: string
  readonly taken: string
  readonly why: string
  /** 0…1. */
  readonly certainty: number
}

/** As sure as a coin: what is asked about. */
const ASKED = 0.5

/** Every use of a column and every assumption on clock, place and missing values: what a reader must agree with. */
export function ledgerOf({ mapping, record, clock, quality, questions }: OpenedWeather): LedgerLine[] {
  if (mapping === null) return []
  const used = mapping.columns.filter(({ quantity }) => quantity !== 'ignore')
  return [
    ...used.map((column) =>
      questions.some(({ choices }) => choices[0]?.change.answers?.[column.quantity] !== undefined)
        ? { ...columnLine(column), why: 'by its name; no unit is named and several fit', certainty: ASKED }
        : columnLine(column),
    ),
    ...clockLines(mapping, record?.site.utcOffset_h),
    {
      what: 'clock against the sun',
      taken: clock.sentence,
      why: `${clock.days} clear days`,
      certainty: clock.verdict === 'agrees' ? 0.95 : 0.3,
    },
    ...(record === null
      ? []
      : [
          {
            what: 'place',
            taken: `${record.site.latitude_deg}, ${record.site.longitude_deg}, ${Math.round(record.site.altitude_m)} m`,
            why: mapping.site.latitude_deg === undefined ? 'as you said' : 'by the file',
            certainty: 0.9,
          },
        ]),
    ...(mapping.missing.length === 0
      ? []
      : [
          {
            what: 'no value',
            taken: mapping.missing.join(', '),
            why: 'apart from the other values, or named by the file',
            certainty: 0.9,
          },
        ]),
    ...quality.gaps.slice(0, 20).map((gap) => ({
      what: 'gap filled',
      taken: gap.sentence,
      why: 'missing in the file',
      certainty: 0.5,
    })),
  ]
}

function columnLine({
  header,
  quantity,
  unit,
  basis,
  confidence,
  scale,
  offset,
  instant,
}: ColumnMapping): LedgerLine {
  const { label } = QUANTITIES[quantity]
  const factor = scale === undefined ? '' : `${scale} `
  return {
    what: header,
    taken: givesTime(quantity)
      ? label
      : `${label}, ${factor}${unit}${offset === undefined ? '' : ` + ${offset}`}${instant === true ? ', read at the stamp' : ''}`,
    why: WHY[basis],
    certainty: confidence,
  }
}

function clockLines({ time, layout }: TableMapping, utcOffset_h: number | undefined): LedgerLine[] {
  const named = time.clockOffset_h !== null
  const offset_h = time.clockOffset_h ?? utcOffset_h
  const zone = offset_h === undefined ? 'unknown' : `UTC ${offset_h < 0 ? '−' : '+'} ${Math.abs(offset_h)} h`
  return [
    {
      what: 'clock',
      taken: named ? zone : `local standard time, ${zone}`,
      why: named ? 'named by the file or by you' : 'nothing in the file says',
      certainty: named ? 0.95 : 0.6,
    },
    {
      what: 'stamps',
      taken: `${time.stamp} of their period`,
      why: layout === null ? 'by where the table begins and ends, unless you said' : 'by the known layout',
      certainty: layout === null ? 0.7 : 0.95,
    },
  ]
}
