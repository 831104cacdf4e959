import { Spine } from '#model/answer.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { Reply, Request } from '#live/messages.ts'
import { problemsOf } from '#live/problems-of.ts'
import { doTask } from '#live/do-task.ts'

const spine = new Spine()
let weather: WeatherRecord | null = null

const say = (reply: Reply) => postMessage(reply)

onmessage = async ({ data }: MessageEvent<Request>) => {
  if (data.kind === 'weather') {
    weather = data.record
    return
  }
  const { id } = data
  try {
    if (!weather) throw new RangeError('worker: a task came before the weather')
    const output = await doTask(data, {
      spine,
      weather,
      progress: (share, soFar) => say({ kind: 'progress', id, share, soFar }),
    })
    say({ kind: 'done', id, output })
  } catch (reason) {
    say({ kind: 'failed', id, problems: problemsOf(reason) })
  }
}
