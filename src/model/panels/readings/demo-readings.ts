import {
  USUAL_BOARD,
  type BenchMoment,
  type BenchReadings,
  type Cover,
  type Light,
  type WindClass,
} from './reading.ts'

function moment(
  time: string,
  light: Light,
  wind: WindClass,
  air: { airTemp_C: number; dewPoint_C: number; sun_Wm2: number | null },
  shown_C: readonly number[],
  cover: Cover = 'bare',
): BenchMoment {
  return {
    time,
    ...air,
    light,
    skyLongwave_Wm2: null,
    cloud_frac: 0,
    wind,
    wind_ms: null,
    surfaces: shown_C.map((value, sample) => ({ sample, shown_C: value, cover, thermometer: 'contact' })),
  }
}

const SUMMER_NIGHT = { dewPoint_C: -6, sun_Wm2: null }

/**
 * Example field notes, invented: worked out with the full plate balance for Pot A (0.935 / 0.93), Pot B (0.87 / 0.90)
 * and the reference (0.80 / 0.90), reading errors added, rounded to 0.1 K.
 */
export const DEMO_READINGS: BenchReadings = {
  basis: 'Invented for this tool: computed surface temperatures with reading errors added.',
  board: {
    ...USUAL_BOARD,
    film: {
      solarTransmittance_frac: 0.9,
      solarReflectance_frac: 0.08,
      windowTransmittance_frac: 0.86,
      windowReflectance_frac: 0.08,
      offWindowTransmittance_frac: 0.8,
      offWindowReflectance_frac: 0.08,
      gap_m: 0.02,
      flutter_frac: 0,
    },
  },
  samples: [
    { name: 'Pot A', known: null },
    { name: 'Pot B', known: null },
    {
      name: 'White wall paint',
      known: {
        solarReflectance_frac: 0.8,
        solarReflectanceSd_frac: 0.02,
        emittance_frac: 0.9,
        emittanceSd_frac: 0.02,
      },
    },
  ],
  moments: [
    moment('12:10', 'sun', 'calm', { airTemp_C: 30, dewPoint_C: 4, sun_Wm2: 920 }, [23.7, 30.4, 35.8]),
    moment('15:30', 'sun', 'breezy', { airTemp_C: 30, dewPoint_C: 4, sun_Wm2: 700 }, [25.6, 29.1, 31.7]),
    moment('16:00', 'shade', 'calm', { airTemp_C: 29, dewPoint_C: 4, sun_Wm2: null }, [16.1, 16.5, 17.3]),
    moment('22:00', 'night', 'breezy', { airTemp_C: 18, ...SUMMER_NIGHT }, [10.3, 10.9, 11.0]),
    moment('23:30', 'night', 'calm', { airTemp_C: 20, ...SUMMER_NIGHT }, [8.1, 9.2, 8.8]),
    moment(
      '12:40 next day, under film',
      'sun',
      'calm',
      { airTemp_C: 31, dewPoint_C: 4, sun_Wm2: 880 },
      [26.6, 33.6, 39.7],
      'film',
    ),
  ],
  infraredSetting_frac: 0.95,
}
