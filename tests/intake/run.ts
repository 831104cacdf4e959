/** `npm run -s intake-check [-- N [first seed]]`: N tables written at random, read back; every one that is wrong in silence is printed. */
import { tryCase, type Verdict } from './property.ts'

const count = Number(process.argv[2] ?? 20_000)
const first = Number(process.argv[3] ?? 1)
const counts: Record<Verdict, number> = { right: 0, asked: 0, refused: 0, wrong: 0 }
for (let seed = first; seed < first + count; seed++) {
  const { verdict, how, words } = tryCase(seed)
  counts[verdict]++
  if (verdict === 'wrong' || (verdict === 'refused' && process.argv[4] === 'refused'))
    console.log(`${seed} ${verdict}: ${how}\n    ${words}`)
  if ((seed - first + 1) % 1000 === 0) console.error(`${seed - first + 1} of ${count}`)
}
console.log(
  `${count} tables: ${counts.right} read right, ${counts.asked} asked about, ${counts.refused} refused, ${counts.wrong} wrong in silence`,
)
process.exitCode = counts.wrong > 0 ? 1 : 0
