import { stop } from '#model/basis/words'
import type { CoatingRecipe } from '#model/panels/paint'
import { csvCells, csvLine } from './csv-line.ts'
import { PROPERTIES, type PaintSample, type Property, type SampleSeries, type SampleValue } from './sample.ts'
import { readSeries, writeSeries } from './samples-file.ts'

/**
 * Samples as a table for a spreadsheet: a line for each thing there is to say of a sample.
 *   sample, item, name, value, low, high, density_kgm3, waterTakenUp_frac, price
 * Items: date, substrate, note, coats, dryThickness_m, recipe, basis, porosity_frac, binder (value: g a mL of stock), solvent,
 * water (value: mL a g; low: pre-mix), solid (g a g of dry binder), liquid (mL a g), and the measured properties.
 */
const HEAD = ['sample', 'item', 'name', 'value', 'low', 'high', 'density_kgm3', 'waterTakenUp_frac', 'price']
type Cell = string | number

export function writeSeriesCsv({ samples }: SampleSeries): string {
  const lines = samples.flatMap((sample) => rowsOf(sample).map((row) => csvLine([sample.name, ...row])))
  return `${[csvLine(HEAD), ...lines].join('\n')}\n`
}

function rowsOf(sample: PaintSample): Cell[][] {
  const { recipe: r } = sample
  return [
    ['date', sample.date],
    ['substrate', sample.substrate],
    ['note', sample.note],
    ['coats', '', sample.coats],
    ['dryThickness_m', '', sample.dryThickness_m],
    ['recipe', r.name],
    ['basis', r.basis],
    ['porosity_frac', '', r.porosity_frac],
    ['binder', r.binder.name, r.binder.stock_gmL, '', '', r.binder.density_kgm3, '', r.binder.price_perkg],
    [
      'solvent',
      r.solvent.name,
      '',
      '',
      '',
      r.solvent.density_kgm3,
      r.solvent.waterTakenUp_frac,
      r.solvent.price_perL,
    ],
    ...(r.water === null ? [] : [['water', '', r.water.total_mLg, r.water.premixSolvent]]),
    ...r.solids.map((s) => ['solid', s.name, s.parts_gg, '', '', s.density_kgm3, '', s.price_perkg]),
    ...r.liquids.map((l) => [
      'liquid',
      l.name,
      l.amount_mLg,
      '',
      '',
      l.density_kgm3,
      l.waterTakenUp_frac,
      l.price_perL,
    ]),
    ...PROPERTIES.flatMap((property) => {
      const m = sample.measured[property]
      return m === undefined ? [] : [[property, '', m.value, m.low, m.high]]
    }),
  ]
}

interface Row {
  readonly item: string
  readonly name: string
  readonly number: (column: number) => number
}

/**
 * Reads what `writeSeriesCsv` wrote, also after a spreadsheet changed it. Fields are checked as those of a JSON file.
 * @throws ProblemError naming file and line
 */
export function readSeriesCsv(text: string, file: string): SampleSeries {
  const lines = csvCells(text)
  if (HEAD.some((name, i) => lines[0]?.[i]?.trim() !== name))
    throw stop(
      'samples-csv-head',
      `The first line is not “${HEAD.join(',')}”.`,
      'Save an example as CSV and follow it.',
      {
        file,
        line: 1,
      },
    )
  const bySample = new Map<string, Row[]>()
  lines.slice(1).forEach((cells, i) => {
    if (cells.every((cell) => cell.trim() === '')) return
    const [sample = '', item = '', name = ''] = cells
    const number = (column: number) => numberIn(cells[column] ?? '', HEAD[column]!, { file, line: i + 2 })
    bySample.set(sample, [...(bySample.get(sample) ?? []), { item: item.trim(), name, number }])
  })
  const samples = [...bySample].map(([name, rows]) => sampleOf(name, rows))
  return readSeries(writeSeries({ basis: '', samples }), file)
}

function sampleOf(name: string, rows: readonly Row[]): PaintSample {
  const first = (item: string) => rows.find((row) => row.item === item)
  const all = (item: string) => rows.filter((row) => row.item === item)
  const number = (item: string, column = 3) => first(item)?.number(column) ?? NaN
  const measured: Partial<Record<Property, SampleValue>> = {}
  for (const property of PROPERTIES) {
    const row = first(property)
    if (row) measured[property] = { value: row.number(3), low: row.number(4), high: row.number(5) }
  }
  const water = first('water')
  const recipe: CoatingRecipe = {
    name: first('recipe')?.name ?? name,
    basis: first('basis')?.name ?? '',
    binder: {
      name: first('binder')?.name ?? '',
      stock_gmL: number('binder'),
      density_kgm3: number('binder', 6),
      price_perkg: number('binder', 8),
    },
    solvent: {
      name: first('solvent')?.name ?? '',
      density_kgm3: number('solvent', 6),
      waterTakenUp_frac: number('solvent', 7),
      price_perL: number('solvent', 8),
    },
    water: water ? { total_mLg: water.number(3), premixSolvent: water.number(4) } : null,
    solids: all('solid').map((row) => ({
      name: row.name,
      parts_gg: row.number(3),
      density_kgm3: row.number(6),
      price_perkg: row.number(8),
    })),
    liquids: all('liquid').map((row) => ({
      name: row.name,
      amount_mLg: row.number(3),
      density_kgm3: row.number(6),
      waterTakenUp_frac: row.number(7),
      price_perL: row.number(8),
    })),
    porosity_frac: number('porosity_frac'),
  }
  return {
    name,
    date: first('date')?.name ?? '',
    substrate: first('substrate')?.name ?? '',
    note: first('note')?.name ?? '',
    coats: number('coats'),
    dryThickness_m: number('dryThickness_m'),
    recipe,
    measured,
  }
}

function numberIn(
  cell: string,
  column: string,
  at: { readonly file: string; readonly line: number },
): number {
  const value = cell.trim() === '' ? NaN : Number(cell.trim())
  if (Number.isFinite(value)) return value
  throw stop(
    'samples-csv-number',
    `Line ${at.line} has “${cell}” under ${column}, which is no number.`,
    'Write a number with a point.',
    {
      ...at,
      field: column,
    },
  )
}
