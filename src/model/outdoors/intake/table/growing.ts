/** A Float64Array that grows as rows arrive, so that no text need be kept. */
export class GrowingColumn {
  #values: Float64Array
  #length = 0

  constructor(capacity = 1024) {
    this.#values = new Float64Array(capacity)
  }

  push(value: number): void {
    if (this.#length === this.#values.length) {
      const larger = new Float64Array(this.#length * 2)
      larger.set(this.#values)
      this.#values = larger
    }
    this.#values[this.#length] = value
    this.#length += 1
  }

  get length(): number {
    return this.#length
  }

  /** What has arrived so far: a view, not a copy. */
  values(): Float64Array {
    return this.#values.subarray(0, this.#length)
  }
}
