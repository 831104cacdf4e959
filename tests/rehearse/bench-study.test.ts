/* A small bench study; the whole is `npm run -s rehearse -- bench`. */
import { describe, expect, test } from 'vitest'
import { benchStudy, coverage_pct, reachedBy, studyLine } from './bench-study.ts'

describe('300 simulated samples of known truth', () => {
  // Three standard deviations of a share of 0.9 among 300 are 5 %.
  test.each(benchStudy(300, 41).map((study) => ({ ...study })))(
    '$name: 90 % intervals hold, and are narrow enough',
    (study) => {
      console.log(studyLine(study))
      expect(coverage_pct(study)).toBeGreaterThan(80)
      expect(reachedBy(study, 2.2)).toBe(true)
    },
  )
})
