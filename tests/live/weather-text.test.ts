import { describe, expect, test } from 'vitest'
import { encodingOf as found } from '#model/outdoors/intake'
import { textPieces } from '#live/weather-text.ts'

const encodingOf = (bytes: Uint8Array) =>
  found(bytes, (some, encoding, fatal) => new TextDecoder(encoding, { fatal }).decode(some))

const WORDS = 'Zeit;Höhe [°C]\r\n1;2,5\r\n'
const utf16 = (text: string) => new Uint8Array([0xff, 0xfe, ...new Uint8Array(Buffer.from(text, 'utf16le'))])

async function readBack(bytes: Uint8Array): Promise<{ text: string; share: number }> {
  let text = ''
  let share = 0
  for await (const piece of textPieces(new Blob([bytes as BlobPart]), 'made.csv')) {
    text += piece.text
    expect(piece.share).toBeGreaterThanOrEqual(share)
    share = piece.share
  }
  return { text, share }
}

describe('letters of a weather file, however they were saved', () => {
  test.each([
    ['UTF-8', new Uint8Array(Buffer.from(WORDS, 'utf8')), 'utf-8'],
    [
      'Western European, as old spreadsheets save',
      new Uint8Array(Buffer.from(WORDS, 'latin1')),
      'windows-1252',
    ],
    ['UTF-16 with its mark', utf16(WORDS), 'utf-16le'],
  ])('%s', async (_name, bytes, encoding) => {
    expect(encodingOf(bytes)).toBe(encoding)
    expect(await readBack(bytes)).toEqual({ text: WORDS, share: 1 })
  })

  test('a letter cut in two by the first look is still UTF-8', () => {
    expect(encodingOf(new Uint8Array(Buffer.from('23 °C', 'utf8')).subarray(0, 4))).toBe('utf-8')
  })

  test('an empty file gives nothing, and does not hang', async () => {
    expect((await readBack(new Uint8Array())).text).toBe('')
  })
})
