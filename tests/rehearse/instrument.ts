/** Signal of a thermometer of 8–14 µm by Planck's law, integrated apart from the model's own band (8–13 µm). */
const C1 = 3.741771852e-16
const C2 = 1.438776877e-2
const STEPS = 60

/** Emission of a black surface between 8 and 14 µm, W/m². */
export function instrumentSignal(temp_C: number): number {
  const kelvin = temp_C + 273.15
  const step = 6e-6 / STEPS
  let sum = 0
  for (let i = 0; i < STEPS; i++) {
    const wave = 8e-6 + (i + 0.5) * step
    sum += (C1 / wave ** 5 / Math.expm1(C2 / (wave * kelvin))) * step
  }
  return sum
}

/** Temperature a black surface has at a signal, °C. */
export function bandTemperature_C(signal: number): number {
  let [low, high] = [-60, 150]
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (instrumentSignal(middle) < signal) low = middle
    else high = middle
  }
  return (low + high) / 2
}
