import { Spine } from '#model/answer.ts'
import { defaultScenario } from '#model/scenario/schema.ts'
import { drawnScenarios } from '#model/scenario/draws.ts'
import { sampleWeather } from '../../src/shell/samples.ts'
const record = sampleWeather('continental'); const s = defaultScenario(); const spine = new Spine()
const a = spine.answer(s, record)
const draws = drawnScenarios(s, 256).slice(0, 30)
const roofs = Array.from({ length: 60 }, (_, i) => ({ ...s, room: { ...s.room, roofU_Wm2K: 0.35 - i * 0.003 } }))
const m: any = (spine as any).memory; const orig = m.recall
const spent = new Map<string, number>(); const stack: number[] = []
m.recall = (stage: string, key: any, make: any) => orig(stage, key, () => { const t = performance.now(); stack.push(0); const v = make(); const total = performance.now() - t; const inner = stack.pop()!; spent.set(stage, (spent.get(stage) ?? 0) + total - inner); if (stack.length) stack[stack.length - 1]! += total; return v })
for (const [name, list] of [['draws', draws], ['roofs', roofs], ['draws', draws], ['roofs', roofs]] as const) { spent.clear(); const t = performance.now(); const ts: number[] = []; for (const d of list) { const t0 = performance.now(); spine.about(d as any, record, a.sizing); ts.push(performance.now() - t0) } const all = performance.now() - t
ts.sort((x, y) => x - y)
console.log(name, 'each', (all / list.length).toFixed(1), 'p50', ts[ts.length >> 1]!.toFixed(1), 'p95', ts[Math.floor(ts.length * .95)]!.toFixed(1), Object.fromEntries([...spent].map(([k, v]) => [k, +(v / list.length).toFixed(2)]))) }
