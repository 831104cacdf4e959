export { type ContourLine, type GridPoint, contourLines } from './contours.ts'
export { decay, DECAY_FRACTIONS, DECAY_HALVES } from './decay.ts'
export { latinHypercube, rankCorrelation, seededUniform, slicedHypercube } from './latin-hypercube.ts'
export { linearFit } from './linear-fit.ts'
export { LinearSystem } from './linear-system.ts'
export { interpolateParabolic } from './parabolic.ts'
export {
  type Polynomial5,
  interpolatingPolynomial,
  polynomial,
  slopeAt,
  valueAt,
  weightedSum,
} from './polynomial.ts'
export { median, quantile, ranked } from './quantile.ts'
export { type RandomSource, gaussian, persistentSeries, seededRandom } from './random.ts'
export { bisected } from './root.ts'
export { studentHalfWidth } from './student.ts'
export { eigenSymmetric } from './symmetric.ts'
export { solveTridiagonal } from './tridiagonal.ts'
export {
  type ErrorBlock,
  type FitParameter,
  type FitProblem,
  type FitResult,
  expectedCovariance,
  stepAbout,
  weightedFit,
} from './weighted-fit.ts'
export { choleskyFactor, whitenedBy } from './whitening.ts'
