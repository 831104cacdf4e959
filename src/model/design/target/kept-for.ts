/** Whom or what a room is kept cool for. */
export const KEPT_FOR = ['awake', 'asleep', 'goods', 'plants', 'animals', 'battery'] as const
export type KeptFor = (typeof KEPT_FOR)[number]

/** What is usual for it: a beginning that the user changes. */
export interface UsualTarget {
  /** Operative temperature, °C. */
  readonly limit_C: number
  /** Hours a year allowed above it. */
  readonly allowedHours_h: number
  /** Hours of the day that count; from = until: all day. */
  readonly occupiedFrom_h: number
  readonly occupiedUntil_h: number
  /** Relative humidity that is not to be passed inside, 0…1. */
  readonly mostHumid_frac: number
  /** Where the values come from, for people. */
  readonly source: string
}

/** Usual targets; what no source gives is common practice, no source. */
export const USUAL_TARGETS: Readonly<Record<KeptFor, UsualTarget>> = {
  awake: {
    limit_C: 26,
    allowedHours_h: 40,
    occupiedFrom_h: 8,
    occupiedUntil_h: 22,
    mostHumid_frac: 0.7,
    source: '26 °C: EN 16798-1, category II, from memory; hours and humidity: common practice, no source',
  },
  asleep: {
    limit_C: 26,
    allowedHours_h: 32,
    occupiedFrom_h: 22,
    occupiedUntil_h: 7,
    mostHumid_frac: 0.65,
    source: '26 °C for 1 % of the hours from 22 to 7: CIBSE TM59, from memory; humidity: common practice',
  },
  goods: {
    limit_C: 25,
    allowedHours_h: 20,
    occupiedFrom_h: 0,
    occupiedUntil_h: 0,
    mostHumid_frac: 0.65,
    source: '25 °C: upper end of controlled room temperature, USP, from memory; the rest: common practice',
  },
  plants: {
    limit_C: 30,
    allowedHours_h: 100,
    occupiedFrom_h: 0,
    occupiedUntil_h: 0,
    mostHumid_frac: 0.85,
    source: 'common practice, no source: ask what your plants bear',
  },
  animals: {
    limit_C: 28,
    allowedHours_h: 60,
    occupiedFrom_h: 0,
    occupiedUntil_h: 0,
    mostHumid_frac: 0.8,
    source: 'common practice, no source: ask what your animals bear',
  },
  battery: {
    limit_C: 27,
    allowedHours_h: 20,
    occupiedFrom_h: 0,
    occupiedUntil_h: 0,
    mostHumid_frac: 0.6,
    source:
      '27 °C and 60 %: recommended air into a server, ASHRAE TC 9.9, from memory; hours: common practice',
  },
}

/** True where moving air can be credited: people feel it, goods do not. */
export const feelsAir = (keptFor: KeptFor): boolean => keptFor === 'awake' || keptFor === 'asleep'
