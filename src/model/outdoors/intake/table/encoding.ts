/** Encodings that hourly tables come in, beside UTF-8 and UTF-16. */
const LEGACY = ['euc-kr', 'shift_jis', 'euc-jp', 'gb18030', 'big5'] as const
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | (typeof LEGACY)[number] | 'windows-1252'

/** Turns bytes into text by the platform's own tables; throws where bytes are none of the encoding, when `strict`. */
export type Decoder = (bytes: Uint8Array, encoding: Encoding, strict: boolean) => string

/** Words that occur in weather tables, and in no text decoded by the wrong table. */
const WEATHER_WORDS =
  /기온|습도|풍속|일사|기압|일시|지점|気温|湿度|風速|日射|気圧|年月日|気象|气温|相对湿度|风速|气压|辐射|時間|氣溫|風速|氣壓|日射量|観測|站/g
/** Bytes looked at. */
const HEAD_B = 60_000

/**
 * The encoding of a table by its first bytes: byte-order mark, zeros between letters, valid UTF-8; else the table of an
 * Asian encoding that gives words of the weather, else Windows-1252, which has a letter for every byte.
 */
export function encodingOf(bytes: Uint8Array, decode: Decoder): Encoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be'
  const head = bytes.subarray(0, HEAD_B)
  const zeros = [0, 0]
  head.forEach((byte, at) => {
    if (byte === 0) zeros[at % 2]!++
  })
  if (zeros[1]! > head.length * 0.2 && zeros[0]! < zeros[1]! / 8) return 'utf-16le'
  if (zeros[0]! > head.length * 0.2 && zeros[1]! < zeros[0]! / 8) return 'utf-16be'
  if (head.every((byte) => byte < 0x80) || reads(wholeLines(head), 'utf-8', decode) !== null) return 'utf-8'
  let best: { readonly encoding: Encoding; readonly words: number } = { encoding: 'windows-1252', words: 0 }
  for (const encoding of LEGACY) {
    const words = reads(wholeLines(head), encoding, decode)?.match(WEATHER_WORDS)?.length ?? 0
    if (words > best.words) best = { encoding, words }
  }
  return best.encoding
}

/** Up to the last line end, or before the last letter of several bytes, so that none is cut in two. */
function wholeLines(head: Uint8Array): Uint8Array {
  const lineEnd = head.lastIndexOf(0x0a)
  if (lineEnd > 0) return head.subarray(0, lineEnd)
  let end = head.length
  while (end > head.length - 4 && head[end - 1]! >= 0x80) end--
  return head.subarray(0, end)
}

function reads(bytes: Uint8Array, encoding: Encoding, decode: Decoder): string | null {
  try {
    return decode(bytes, encoding, true)
  } catch {
    return null
  }
}
