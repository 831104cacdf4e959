import type { HoursForm, RunSetting } from './run-setting.ts'
import { HEAD, MODULE, STATE_AT, TABLES } from './hours-wasm.ts'
import { bytesOf } from './letters.ts'
import { WasmColumns, type WasmMemory } from './wasm-memory.ts'

interface Exports {
  readonly memory: WasmMemory
  readonly run: () => void
}
/** What is used of WebAssembly, which is no part of the language's own library. */
interface WebAssembly {
  readonly Module: new (bytes: Uint8Array) => object
  readonly Instance: new (module: object, asked: { readonly Math: Math }) => { readonly exports: Exports }
}

const NUMBER_BYTES = 8

/**
 * The hours in WebAssembly; null where there is none, or where the page's rules forbid it.
 * @param most_bytes  of its memory before columns are given up
 */
export function inWebAssembly(most_bytes?: number): HoursForm | null {
  const { WebAssembly } = globalThis as unknown as { WebAssembly?: WebAssembly }
  if (WebAssembly === undefined) return null
  try {
    const { exports } = new WebAssembly.Instance(new WebAssembly.Module(bytesOf(MODULE)), { Math })
    return formOf(exports, most_bytes)
  } catch {
    return null
  }
}

function formOf({ memory, run }: Exports, most_bytes?: number): HoursForm {
  const columns = new WasmColumns(memory, most_bytes)
  for (const [at, table] of TABLES) columns.numbers.set(table, at / NUMBER_BYTES)
  return (setting) => {
    const own = new WasmRun(columns, run, setting)
    return () => own.steps()
  }
}

/** One run: its state is in the memory only while it is stepped. */
class WasmRun {
  private readonly held: WasmColumns
  private readonly run: () => void
  private readonly setting: RunSetting
  private readonly head: Int32Array
  private generation = 0
  private restRows: Float64Array | null = null

  constructor(held: WasmColumns, run: () => void, setting: RunSetting) {
    const { state } = setting
    this.held = held
    this.run = run
    this.setting = setting
    this.head = new Int32Array(state.buffer, state.byteOffset)
  }

  steps(): void {
    const { held, setting, head } = this
    const { columns, whole, state } = setting
    if (this.generation !== held.generation || this.restRows !== columns.restRows) this.place()
    held.fill(columns.restRows, setting.restFilled)
    head[0] = whole.fromRun
    head[1] = whole.toRun
    held.numbers.set(state, STATE_AT / NUMBER_BYTES)
    this.run()
    const { numbers } = held
    const end = STATE_AT / NUMBER_BYTES + state.length
    state.set(numbers.subarray(STATE_AT / NUMBER_BYTES, end))
    for (let run = whole.fromRun; run < whole.toRun; run++) {
      const hour = run % whole.hours
      columns.room_C[hour] = numbers[end + hour]!
    }
  }

  /** Says where everything is in the memory. */
  private place(): void {
    const { held, setting, head } = this
    const { columns, whole, state } = setting
    const end = STATE_AT + state.byteLength
    const places = new Map<string, number>([['room_C', end]])
    const ownOf = HEAD.columns.filter((name) => columns[name].buffer === state.buffer)
    for (const name of ownOf) places.set(name, STATE_AT + columns[name].byteOffset)
    const others = HEAD.columns.filter((name) => !places.has(name))
    const at = held.hold(
      others.map((name) => columns[name]),
      columns.restRows,
      end + columns.room_C.byteLength,
    )
    others.forEach((name, i) => places.set(name, at[i]!))
    head.set([
      ...HEAD.whole.map((name) => whole[name]),
      ...HEAD.columns.map((name) => places.get(name)!),
      ...HEAD.lengths.map((name) => columns[name].length),
    ])
    this.generation = held.generation
    this.restRows = columns.restRows
  }
}
