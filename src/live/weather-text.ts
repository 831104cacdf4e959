/** Bytes looked at to find how a file's letters are written. */
const LOOK_BYTES = 200_000

/** The encoding of a text by its first bytes: a byte-order mark, else UTF-8 when it is valid, else Western European. */
export function encodingOf(bytes: Uint8Array): 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252' {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be'
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, LOOK_BYTES), { stream: true })
    return 'utf-8'
  } catch {
    return 'windows-1252'
  }
}

/** The text of a file, piece by piece, each with the share of the bytes read so far. */
export async function* textPieces(file: Blob): AsyncGenerator<{ text: string; share: number }> {
  const reader = file.stream().getReader()
  let decoder: TextDecoder | null = null
  let read = 0
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    decoder ??= new TextDecoder(encodingOf(value))
    read += value.byteLength
    yield { text: decoder.decode(value, { stream: true }), share: read / file.size }
  }
  const rest = decoder?.decode() ?? ''
  if (rest !== '') yield { text: rest, share: 1 }
}
