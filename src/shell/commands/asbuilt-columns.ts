import { FLOW_UNIT_NAMES, LOG_QUANTITIES, type FlowUnitName, type LogColumns } from '#model/handover/as-built'
import { stop } from '#model/basis/words'

/** Columns and flow unit chosen on the command line. @throws ProblemError for words that are not understood */
export function chosenOf(
  columns: unknown,
  unit: unknown,
): { readonly columns?: LogColumns; readonly flowUnit?: FlowUnitName } {
  return {
    ...(columns !== undefined && { columns: columnsOf(String(columns)) }),
    ...(unit !== undefined && { flowUnit: flowUnitOf(String(unit)) }),
  }
}

function columnsOf(text: string): LogColumns {
  const pairs = text.split(',').map((word) => {
    const [name, number] = word.split('=').map((part) => part.trim())
    const quantity = LOG_QUANTITIES.find((known) => known === name)
    if (quantity !== undefined && /^\d{1,4}$/.test(number ?? '')) return [quantity, Number(number)] as const
    throw stop(
      'bad-columns',
      `--columns has “${word}” in it.`,
      `Write panelIn=2,panelOut=3 with numbers from 1, 0 for none; quantities: ${LOG_QUANTITIES.join(', ')}.`,
    )
  })
  return Object.fromEntries(pairs.map(([quantity, number]) => [quantity, number === 0 ? null : number - 1]))
}

function flowUnitOf(text: string): FlowUnitName {
  const found = FLOW_UNIT_NAMES.find((name) => name === text)
  if (found !== undefined) return found
  throw stop('bad-flow-unit', `--flow-unit ${text} is not known.`, `Use ${FLOW_UNIT_NAMES.join(', ')}.`)
}
