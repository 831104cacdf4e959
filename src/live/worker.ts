import { Stages } from '#studies/stages.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Reply, Request } from '#live/messages.ts'
import { problemsOf } from '#live/problems-of.ts'
import { answerTo } from '#live/verbs.ts'

const stages = new Stages()
let weather: WeatherRecord | null = null

const say = (reply: Reply) => postMessage(reply)

onmessage = async ({ data }: MessageEvent<Request>) => {
  if (data.kind === 'weather') {
    weather = data.record
    return
  }
  const { id, verb, input } = data
  try {
    if (!weather) throw new RangeError('worker: a question came before the weather')
    const output = await answerTo(stages, verb, input, weather, (share, soFar) =>
      say({ kind: 'progress', id, share, soFar }),
    )
    say({ kind: 'done', id, output })
  } catch (reason) {
    say({ kind: 'failed', id, problems: problemsOf(reason) })
  }
}
