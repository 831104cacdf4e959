import committed from '#ui/trust/evidence.json'
import type { EvidenceTable } from '#ui/trust/evidence-row.ts'

/** The committed table of outside checks. */
export const EVIDENCE: EvidenceTable = committed
