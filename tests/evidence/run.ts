import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { evidenceKind, overshoot, type Check } from './check.ts'
import type { EvidenceRow } from '#ui/trust/evidence-row.ts'

const DATA = new URL('../../../shared/data/', import.meta.url)

/** Path of a file of ../shared/data. */
export function dataFile(name: string): string {
  return fileURLToPath(new URL(name, DATA))
}

export function dataPresent(check: Check): boolean {
  return check.needs === undefined || existsSync(dataFile(check.needs))
}

/** Runs every check; rows whose data are absent keep what `last` holds for them. */
export function runChecks(
  checks: readonly Check[],
  last: readonly EvidenceRow[],
  today: string,
): EvidenceRow[] {
  const known = new Map(last.map((row) => [row.quantity, row]))
  return checks.map((check) => runCheck(check, known.get(check.quantity), today))
}

export function runCheck(check: Check, last: EvidenceRow | undefined, today: string): EvidenceRow {
  const row = describe(check)
  if (!dataPresent(check)) {
    const ours = last?.ours ?? null
    return {
      ...row,
      ours,
      status: ours === null ? 'not run' : status(check, ours),
      measuredOn: last?.measuredOn ?? null,
    }
  }
  const ours = rounded(check.got())
  const measuredOn =
    check.needs === undefined ? null : last?.ours === ours && last.measuredOn ? last.measuredOn : today
  return { ...row, ours, status: status(check, ours), measuredOn }
}

function status(check: Check, ours: number): 'agrees' | 'misses' {
  return overshoot(check, ours) <= 0 ? 'agrees' : 'misses'
}

function describe(check: Check): Omit<EvidenceRow, 'ours' | 'status' | 'measuredOn'> {
  return {
    theme: check.theme,
    quantity: check.quantity,
    unit: check.unit,
    kind: check.kind,
    evidence: evidenceKind(check),
    theirs: check.want,
    within: check.within,
    because: check.because,
    source: check.source,
    where: check.where ?? '',
    fromMemory: check.fromMemory ?? false,
    cause: check.miss ?? '',
    data: check.needs ?? '',
    choice: check.choice ?? '',
  }
}

/** Seven significant digits: enough to compare, few enough to be the same on every machine. */
function rounded(value: number): number {
  return Number(value.toPrecision(7))
}
