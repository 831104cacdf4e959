import samples from '../../climate-samples/index.json'

/** One of the invented climates that come with Duskbank; its hours are fetched only when it is chosen. */
export type SampleClimate = (typeof samples)[number]

export const SAMPLE_CLIMATES: readonly SampleClimate[] = samples

const urls = import.meta.glob<string>('../../climate-samples/*.bin', {
  query: '?url',
  import: 'default',
  eager: true,
})

/** Address of a sample's packed hours in this build. */
export function sampleUrl(sample: SampleClimate): string {
  return urls[`../../climate-samples/${sample.id}.bin`]!
}

/** What was packed and deflated, as a response of the network or the cache brings it. */
export async function inflated(packed: Response): Promise<Uint8Array> {
  const stream = packed.body!.pipeThrough(new DecompressionStream('deflate-raw'))
  return new Uint8Array(await new Response(stream).arrayBuffer())
}
