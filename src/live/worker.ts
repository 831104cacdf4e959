import { Stages } from '#studies/stages.ts'
import { hoursForm, useForm } from '#model/building/year'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Reply, Request } from '#live/messages.ts'
import { problemsOf } from '#live/problems-of.ts'
import { answerTo } from '#live/verbs.ts'

const stages = new Stages()
let weather: WeatherRecord | null = null
// Without WebAssembly years are run by the hours in TypeScript, and by the modular kernel where those cannot be had.
const ready =
  hoursForm() === null
    ? import('#model/building/year/flat').then(
        ({ inTypeScript }) => useForm(inTypeScript),
        () => {},
      )
    : null

const say = (reply: Reply) => postMessage(reply)

onmessage = async ({ data }: MessageEvent<Request>) => {
  if (data.kind === 'weather') {
    weather = data.record
    return
  }
  const { id, verb, input } = data
  // While it waits, the next weather may come.
  const asked = weather
  try {
    if (!asked) throw new RangeError('worker: a question came before the weather')
    await ready
    const output = await answerTo(stages, verb, input, asked, (share, soFar) =>
      say({ kind: 'progress', id, share, soFar }),
    )
    say({ kind: 'done', id, output })
  } catch (reason) {
    say({ kind: 'failed', id, problems: problemsOf(reason) })
  }
}
