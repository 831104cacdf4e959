import type { BenchMoment, BenchReadings, BenchSample, SurfaceReading } from '#model/panels/readings'

/** What a plain white wall paint is taken for until its owner knows better: handbook range. */
const USUAL_REFERENCE = {
  solarReflectance_frac: 0.8,
  solarReflectanceSd_frac: 0.02,
  emittance_frac: 0.9,
  emittanceSd_frac: 0.02,
} as const

export function withMoment(
  readings: BenchReadings,
  index: number,
  patch: Partial<BenchMoment>,
): BenchReadings {
  return {
    ...readings,
    moments: readings.moments.map((moment, i) => (i === index ? { ...moment, ...patch } : moment)),
  }
}

/** One more moment, the last one's conditions in it, no surface read yet. */
export function withOneMore(readings: BenchReadings): BenchReadings {
  const last = readings.moments.at(-1)!
  return { ...readings, moments: [...readings.moments, { ...last, time: null, surfaces: [] }] }
}

export function withoutMoment(readings: BenchReadings, index: number): BenchReadings {
  return { ...readings, moments: readings.moments.filter((_, i) => i !== index) }
}

/** Surface readings of one sample in a moment, with where they are in its list. */
export function surfacesOf(moment: BenchMoment, sample: number): { surface: SurfaceReading; at: number }[] {
  return moment.surfaces.flatMap((surface, at) => (surface.sample === sample ? [{ surface, at }] : []))
}

/** Changes one surface temperature; null takes the reading out, `at` null puts one in. */
export function withSurface(
  readings: BenchReadings,
  index: number,
  { sample, at, shown_C }: { sample: number; at: number | null; shown_C: number | null },
): BenchReadings {
  const moment = readings.moments[index]!
  if (at !== null) {
    const surfaces = moment.surfaces.flatMap((surface, i) =>
      i !== at ? [surface] : shown_C === null ? [] : [{ ...surface, shown_C }],
    )
    return withMoment(readings, index, { surfaces })
  }
  if (shown_C === null) return readings
  const { cover, thermometer } = moment.surfaces[0] ?? { cover: 'bare', thermometer: 'contact' }
  const added: SurfaceReading = { sample, shown_C, cover, thermometer }
  return withMoment(readings, index, { surfaces: [...moment.surfaces, added] })
}

/** Sets cover or thermometer of every surface in a moment. */
export function withAllSurfaces(
  readings: BenchReadings,
  index: number,
  patch: Partial<Pick<SurfaceReading, 'cover' | 'thermometer'>>,
): BenchReadings {
  const surfaces = readings.moments[index]!.surfaces.map((surface) => ({ ...surface, ...patch }))
  return withMoment(readings, index, { surfaces })
}

/** What all surfaces of a moment share, or `mixed`. */
export function sharedBySurfaces<K extends 'cover' | 'thermometer'>(
  moment: BenchMoment,
  key: K,
  empty: SurfaceReading[K],
): SurfaceReading[K] | 'mixed' {
  const found = new Set(moment.surfaces.map((surface) => surface[key]))
  return found.size > 1 ? 'mixed' : ([...found][0] ?? empty)
}

export function withSample(
  readings: BenchReadings,
  index: number,
  patch: Partial<BenchSample>,
): BenchReadings {
  return {
    ...readings,
    samples: readings.samples.map((sample, i) => (i === index ? { ...sample, ...patch } : sample)),
  }
}

/** One more coating on the board, under a name that is free. */
export function withOneMoreSample(readings: BenchReadings): BenchReadings {
  const names = readings.samples.map(({ name }) => name)
  let number = names.length + 1
  while (names.includes(`Coating ${number}`)) number += 1
  return { ...readings, samples: [...readings.samples, { name: `Coating ${number}`, known: null }] }
}

/** Takes a coating and its readings off the board. */
export function withoutSample(readings: BenchReadings, index: number): BenchReadings {
  return {
    ...readings,
    samples: readings.samples.filter((_, i) => i !== index),
    moments: readings.moments.map((moment) => ({
      ...moment,
      surfaces: moment.surfaces
        .filter(({ sample }) => sample !== index)
        .map((surface) => ({ ...surface, sample: surface.sample - (surface.sample > index ? 1 : 0) })),
    })),
  }
}

/** Makes a coating a reference whose optics are known, or a coating to be found. */
export function asReference(readings: BenchReadings, index: number, reference: boolean): BenchReadings {
  return withSample(readings, index, { known: reference ? USUAL_REFERENCE : null })
}
