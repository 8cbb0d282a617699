/** Black on white whatever the screen looks like, with room for a pen. */
export const paperLook = `
:host { all: initial; display: block; color-scheme: only light; forced-color-adjust: none; }
* { box-sizing: border-box; margin: 0; padding: 0; }
article { color: #000; background: #fff; font: 10.5pt/1.35 Arial, Helvetica, "Liberation Sans", sans-serif; overflow-wrap: anywhere; display: grid; gap: 4mm; text-align: start; }
header { display: grid; gap: 1mm; border-block-end: 1pt solid #000; padding-block-end: 2mm; }
h1 { font-size: 16pt; line-height: 1.15; }
h2, h4 { font-size: 11pt; break-after: avoid; }
.close { display: grid; gap: 1mm; }
.lesser { color: #333; font-size: 9.5pt; }
.note { display: block; font-weight: 400; }
.plain { padding-inline-start: 5mm; }
.box { flex: none; display: inline-block; inline-size: 4.5mm; block-size: 4.5mm; border: .75pt solid #000; }
.unseen { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
.lines { inline-size: 100%; border-collapse: collapse; }
.lines :is(th, td) { text-align: start; vertical-align: top; font-weight: 400; padding: 1.2mm 0; border-block-end: .5pt solid #777; }
.lines td { text-align: end; white-space: nowrap; padding-inline-start: 6mm; font-variant-numeric: tabular-nums; }
.lines tfoot :is(th, td) { font-weight: 700; border-block-start: 1pt solid #000; border-block-end: 0; }
.lines tr, .looks > li, .terms, .loans { break-inside: avoid; }
.offer { border: 1.2pt solid #000; padding: 2mm 3mm; font-weight: 700; }
.looks { list-style: none; display: grid; }
.looks > li { display: grid; grid-template-columns: auto auto 1fr; gap: 0 2.5mm; padding-block: 1.6mm; border-block-end: .5pt solid #777; }
.looks h2 { display: inline; }
.line { display: flex; gap: 3mm; align-items: flex-end; padding-block-start: 3mm; }
.line > span { flex: 1; border-block-end: .5pt solid #000; block-size: 5mm; }
.write > span { display: block; border-block-end: .5pt solid #000; block-size: 8mm; }
.terms { border: .5pt dashed #000; padding: 2mm 3mm; font-size: 9.5pt; }
`;
