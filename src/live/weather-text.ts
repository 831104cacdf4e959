import { encodingOf, needsWhole, textOfFile } from '#model/outdoors/intake'

/** Text by the browser's own tables. */
const decoded = (bytes: Uint8Array, encoding: string, strict: boolean): string =>
  new TextDecoder(encoding, { fatal: strict }).decode(bytes)

/**
 * The text of a file, piece by piece, each with the share of the bytes read so far; packed files and JSON in one piece.
 * @throws ProblemError where an archive or JSON can't be read
 */
export async function* textPieces(file: Blob, name: string): AsyncGenerator<{ text: string; share: number }> {
  const reader = file.stream().getReader()
  let decoder: TextDecoder | null = null
  let read = 0
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    if (decoder === null && needsWhole(value, decoded)) {
      await reader.cancel()
      yield { text: textOfFile(new Uint8Array(await file.arrayBuffer()), decoded, name), share: 1 }
      return
    }
    decoder ??= new TextDecoder(encodingOf(value, decoded))
    read += value.byteLength
    yield { text: decoder.decode(value, { stream: true }), share: read / file.size }
  }
  const rest = decoder?.decode() ?? ''
  if (rest !== '') yield { text: rest, share: 1 }
}
