/** The worked example's answer, worked out once by the build (`src/shell/first-answer-plugin.ts`) from what `size` gives. */
declare module 'virtual:first-answer' {
  import type { LiveAnswer } from '#live/messages.ts'

  const found: Pick<LiveAnswer, 'area_m2' | 'fit' | 'way'> & {
    readonly site: string
    readonly sizing: Pick<LiveAnswer['sizing'], 'kind' | 'withPanels' | 'doNothing' | 'limit'>
  }
  export default found
}
