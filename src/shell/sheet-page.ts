import { readFileSync } from 'node:fs'
import { escaped } from '#model/handover/drawing'
import { pageFeet } from '#model/handover/sheet'

const STYLE = `body{font:9.5pt/1.35 system-ui,sans-serif;color:#111;background:#fff;max-width:190mm;margin:0 auto;padding:6mm}
h1,h2{font-family:Georgia,serif;margin:.4em 0 .2em}h2{font-size:1.15em}h2,h3{break-after:avoid}h3{margin:.4em 0 .1em}small{font-weight:400}
.headline{font-weight:600;font-size:1.15em}.warn{border:2px solid #000;padding:.3em .6em}
figure{margin:0 0 1em;break-inside:avoid}.both{display:flex;flex-wrap:wrap;gap:.8em}.both .code{flex:1 1 40mm}.qr{flex:none}.draw{overflow-x:auto}.draw svg{display:block;zoom:1.14}p{margin:.2em 0}
dl{display:grid;grid-template-columns:9em 1fr;gap:0 .8em;margin:0}.key{display:block;columns:2}.key div{display:grid;grid-template-columns:4.2em 1fr;break-inside:avoid}
dt{font-weight:600}dd{margin:0}table{border-collapse:collapse;width:100%}
td,th{text-align:left;vertical-align:top;padding:.1em .6em .1em 0;border-bottom:1px solid #bbb}
.amount,.number{text-align:right;white-space:nowrap;font-variant-numeric:tabular-nums}li{margin-bottom:.25em;break-inside:avoid}
.code{font-family:monospace;overflow-wrap:anywhere;border:1px solid #666;padding:.3em}@media print{body{padding:0;max-width:none;font-size:8.2pt;line-height:1.24}.draw{overflow:visible}.draw svg{zoom:1}figure{margin:0 0 .6em}.key{columns:3}.beside{display:grid;grid-template-columns:auto 1fr;gap:3mm}.beside .key{columns:1}.columns{columns:2;column-gap:6mm;font-size:7.9pt}.columns dl{grid-template-columns:6.5em 1fr}.columns ul{padding-left:1.4em;margin:.2em 0}.columns ol{padding-left:2.2em;margin:.2em 0}}.whole{break-inside:avoid}`

/** One file of its own: no script, nothing fetched. */
export function page(title: string, body: readonly string[], notBuildable = false): string {
  const feet = pageFeet({ title, made: madeWith(), address: '', notBuildable })
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}: builder’s sheet</title><style>${STYLE}${feet}</style></head>
<body>
${body.filter((piece) => piece !== '').join('\n')}
</body></html>
`
}

/** The day and the version. */
function madeWith(): string {
  const now = new Date()
  const two = (n: number): string => String(n).padStart(2, '0')
  const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
    version: string
  }
  return `Made ${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())} with Duskbank ${manifest.version}`
}
