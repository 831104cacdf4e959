import * as v from 'valibot'
import { fewAndShort, ProblemError, type Problem } from '#model/basis/words'
import { isQuantity, isUnitOf } from './column/quantity.ts'
import { STAMPS, type TableMapping } from './mapping.ts'

const fraction = v.pipe(v.number(), v.minValue(0), v.maxValue(1))
const position = v.pipe(v.number(), v.integer(), v.minValue(0))
const lineNumber = v.pipe(v.number(), v.integer(), v.minValue(1))

const guess = {
  quantity: v.pipe(
    v.string(),
    v.check((word) => isQuantity(word), 'The quantity is none we know'),
  ),
  unit: v.string(),
  confidence: fraction,
}
const UNFIT = 'The unit does not go with the quantity'
const fits = ({ quantity, unit }: { readonly quantity: string; readonly unit: string }): boolean =>
  isQuantity(quantity) && isUnitOf(quantity, unit)

const SCHEMA = v.object({
  version: v.literal(1),
  layout: v.nullable(v.string()),
  table: v.object({
    separator: v.picklist([',', ';', '\t', '|', 'blanks']),
    decimal: v.picklist(['.', ',']),
    headerLine: v.nullable(lineNumber),
    firstDataLine: lineNumber,
  }),
  columns: v.pipe(
    v.array(
      v.pipe(
        v.object({
          ...{ index: position, header: v.string(), ...guess },
          scale: v.optional(v.pipe(v.number(), v.gtValue(0))),
          offset: v.optional(v.pipe(v.number(), v.finite())),
          instant: v.optional(v.boolean()),
          basis: v.picklist(['layout', 'header', 'physics', 'user', 'none']),
          alternatives: v.array(
            v.pipe(
              v.object(guess),
              v.check((column) => fits(column), UNFIT),
            ),
          ),
        }),
        v.check((column) => fits(column), UNFIT),
      ),
    ),
    v.minLength(1),
    v.maxLength(2000),
  ),
  missing: v.array(v.number()),
  time: v.object({
    clockOffset_h: v.nullable(v.pipe(v.number(), v.minValue(-14), v.maxValue(14))),
    stamp: v.picklist(STAMPS),
    radiationOffset_h: v.nullable(v.pipe(v.number(), v.minValue(-1), v.maxValue(1))),
    shift_h: v.pipe(v.number(), v.minValue(-24), v.maxValue(24)),
  }),
  site: v.object({
    name: v.optional(v.string()),
    latitude_deg: v.optional(v.pipe(v.number(), v.minValue(-90), v.maxValue(90))),
    longitude_deg: v.optional(v.pipe(v.number(), v.minValue(-180), v.maxValue(180))),
    altitude_m: v.optional(v.pipe(v.number(), v.minValue(-500), v.maxValue(9000))),
    utcOffset_h: v.optional(v.pipe(v.number(), v.minValue(-14), v.maxValue(14))),
  }),
})

/** A mapping as the text of a small file. */
export function writeMapping(mapping: TableMapping): string {
  return `${JSON.stringify(mapping, null, 2)}\n`
}

/** Reads a mapping file; the problems say which field is wrong. */
export function readMapping(
  text: string,
  file: string,
): { readonly mapping: TableMapping | null; readonly problems: readonly Problem[] } {
  let json: unknown
  try {
    json = JSON.parse(text)
  } catch {
    return { mapping: null, problems: [wrong(file, 'The mapping file is not JSON.')] }
  }
  const result = v.safeParse(SCHEMA, json)
  if (result.success) return { mapping: result.output as TableMapping, problems: [] }
  const problems = result.issues.slice(0, 10).map((issue) => {
    const field = v.getDotPath(issue) ?? ''
    return { ...wrong(file, `${issue.message}.`), place: { file, ...(field === '' ? {} : { field }) } }
  })
  return { mapping: null, problems: fewAndShort(problems) }
}

/** The same, for a caller that wants the mapping or nothing. @throws ProblemError with every wrong field */
export function readMappingFile(text: string, file: string): TableMapping {
  const { mapping, problems } = readMapping(text, file)
  if (mapping === null) throw new ProblemError(problems)
  return mapping
}

function wrong(file: string, message: string): Problem {
  return {
    code: 'weather-mapping-malformed',
    severity: 'error',
    message,
    remedy: 'Save the mapping again from the weather page, or open the file without it.',
    place: { file },
  }
}
