import { ProblemError, stop } from '#model/basis/words'
import { WeatherReading, refusal } from '#model/outdoors/intake'
import { problemsOf } from '#live/problems-of.ts'
import type { OpenedFile, OpeningReply, OpeningRequest } from '#live/weather-opening.ts'
import { textPieces } from '#live/weather-text.ts'

/** Characters of the beginning that go back to the page for its preview. */
const HEAD_CHARACTERS = 200_000
/** Time between two words of progress, ms. */
const PROGRESS_EVERY_MS = 100

const say = (reply: OpeningReply) => postMessage(reply)

onmessage = ({ data }: MessageEvent<OpeningRequest>) => {
  open(data).then(
    (result) => say({ kind: 'done', result }),
    (reason: unknown) => say({ kind: 'failed', problems: problemsOf(unreadable(reason, data.file.name)) }),
  )
}

async function open({ file, options }: OpeningRequest): Promise<OpenedFile> {
  const tooLarge = refusal('any', file.size, file.name)
  if (tooLarge !== null) throw new ProblemError([tooLarge])
  const reading = new WeatherReading(options)
  let head = ''
  let said = 0
  for await (const { text, share } of textPieces(file, file.name)) {
    if (head.length < HEAD_CHARACTERS) head += text.slice(0, HEAD_CHARACTERS - head.length)
    reading.push(text)
    if (performance.now() - said > PROGRESS_EVERY_MS) {
      said = performance.now()
      say({ kind: 'progress', share })
    }
    if (reading.refused) break
  }
  return { opened: reading.finish(), head }
}

/** The browser's word for a file that moved or changed since it was chosen, as a sentence. */
function unreadable(reason: unknown, file: string): unknown {
  if (!(reason instanceof DOMException)) return reason
  return stop(
    'weather-file-unreadable',
    'The file could not be read: it was moved, changed or is a folder.',
    'Choose it again.',
    { file },
  )
}
