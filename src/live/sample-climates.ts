import samples from '../../climate-samples/index.json'

/** One of the invented climates that come with Duskbank; its hours are fetched only when it is chosen. */
export type SampleClimate = (typeof samples)[number]

export const SAMPLE_CLIMATES: readonly SampleClimate[] = samples

const urls = import.meta.glob<string>('../../climate-samples/*.csv', {
  query: '?url',
  import: 'default',
  eager: true,
})

/** Address of a sample's file in this build. */
export function sampleUrl(sample: SampleClimate): string {
  return urls[`../../climate-samples/${sample.file}`]!
}
