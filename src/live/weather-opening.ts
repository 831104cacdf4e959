import { ProblemError, stop, type Problem } from '#model/basis/words'
import type { OpenedWeather, OpenOptions } from '#model/outdoors/intake'

/** What the page asks of the worker that opens weather files: one file, once; ended by `terminate`. */
export interface OpeningRequest {
  readonly file: File
  readonly options: OpenOptions
}

/** A file that was opened, with its first lines for the preview. */
export interface OpenedFile {
  readonly opened: OpenedWeather
  readonly head: string
}

export type OpeningReply =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done'; readonly result: OpenedFile }
  | { readonly kind: 'failed'; readonly problems: readonly Problem[] }

/** A file being opened in a worker of its own. */
export interface Opening {
  readonly result: Promise<OpenedFile>
  /** Ends the work at once; the promise then never settles. */
  readonly stop: () => void
}

/** Opens a weather file in a worker. @throws ProblemError in the promise when it cannot even be read */
export function openInWorker(request: OpeningRequest, progress: (share: number) => void): Opening {
  const worker = new Worker(new URL('./weather-worker.ts', import.meta.url), { type: 'module' })
  const result = new Promise<OpenedFile>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<OpeningReply>) => {
      if (data.kind === 'progress') return progress(data.share)
      worker.terminate()
      if (data.kind === 'done') resolve(data.result)
      else reject(new ProblemError(data.problems))
    }
    worker.onerror = (event) => {
      event.preventDefault()
      worker.terminate()
      reject(
        stop(
          'weather-worker-crashed',
          `Reading the file stopped unexpectedly${event.message ? ` (${event.message})` : ''}.`,
          'Open it again, or cut it to one year of hourly rows first.',
          { file: request.file.name },
        ),
      )
    }
    worker.postMessage(request)
  })
  return { result, stop: () => worker.terminate() }
}
