import { encodingOf } from '#model/outdoors/intake'

/** Text by the browser's own tables. */
const decoded = (bytes: Uint8Array, encoding: string, strict: boolean): string =>
  new TextDecoder(encoding, { fatal: strict }).decode(bytes)

/** The text of a file, piece by piece, each with the share of the bytes read so far. */
export async function* textPieces(file: Blob): AsyncGenerator<{ text: string; share: number }> {
  const reader = file.stream().getReader()
  let decoder: TextDecoder | null = null
  let read = 0
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    decoder ??= new TextDecoder(encodingOf(value, decoded))
    read += value.byteLength
    yield { text: decoder.decode(value, { stream: true }), share: read / file.size }
  }
  const rest = decoder?.decode() ?? ''
  if (rest !== '') yield { text: rest, share: 1 }
}
