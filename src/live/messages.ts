import type { Problem } from '#model/problem.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { TaskInput, TaskName, TaskOutput } from '#live/tasks.ts'

/** What the page asks of a worker. Weather is sent once and kept; every task after it runs in that weather. */
export type Request =
  | { readonly kind: 'weather'; readonly record: WeatherRecord }
  | { [K in TaskName]: { kind: 'task'; id: number; name: K; input: TaskInput<K> } }[TaskName]

/** What a worker says back. `id` is the request's; a reply whose id nobody waits for is dropped. */
export type Reply =
  | { readonly kind: 'done'; readonly id: number; readonly output: TaskOutput<TaskName> }
  | {
      readonly kind: 'progress'
      readonly id: number
      readonly share: number
      /** What there is of the output already, of tasks that can show it as it grows. */
      readonly soFar?: TaskOutput<TaskName>
    }
  | { readonly kind: 'failed'; readonly id: number; readonly problems: readonly Problem[] }
