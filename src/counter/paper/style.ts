import { lineUpStyle } from '../../drawing/style.ts';
import { columnGap, footHeight, insideOf, type SheetSize } from './sizes.ts';

/** Black on white whatever the screen looks like, nothing smaller than nine points. */
const look = `
:host { all: initial; display: block; color-scheme: only light; forced-color-adjust: none; }
* { box-sizing: border-box; margin: 0; padding: 0; }
.page { --ink: #000; --paper: #fff; --accent: #000; --line: #555; --muted: #333; --alert: #000; --acre-ink: #000;
  position: relative; overflow: visible; break-inside: avoid; background: #fff; color: #000;
  font: 9.5pt/1.2 Arial, Helvetica, "Liberation Sans", sans-serif; text-rendering: geometricPrecision; font-kerning: normal; overflow-wrap: anywhere; text-align: start; }
.page + .page { break-before: page; }
.part { display: flow-root; padding-block-end: 1.8mm; break-inside: avoid; }
.columns { display: flex; align-items: flex-start; }
.column { flex: 1 1 0; min-inline-size: 0; display: flex; flex-direction: column; }
footer { position: absolute; inset-inline: 0; inset-block-end: 0; display: flex; justify-content: space-between; gap: 4mm; border-block-start: .5pt solid #000; padding-block-start: 1mm; font-size: 9pt; white-space: nowrap; }
footer span:first-child { overflow: hidden; text-overflow: ellipsis; }
h1 { font-size: 15pt; line-height: 1.15; margin-block: 1.5mm .5mm; }
h2 { font-size: 10.5pt; line-height: 1.2; border-block-end: .5pt solid #000; padding-block-end: .3mm; margin-block-end: .8mm; }
h3 { font-size: 11pt; line-height: 1.2; }
h4 { font-size: 9pt; font-weight: 700; margin-block-start: .4mm; }
ul, ol { list-style: none; }
li { break-inside: avoid; }
.lesser, .code, .machine,  .answers, .cautions, .checks { font-size: 9pt; }
.lesser { color: #333; }
.head { display: flex; gap: 6mm; justify-content: space-between; align-items: flex-start; }
.dealer { line-height: 1.2; }
.code { display: flex; gap: 3mm; align-items: flex-start; flex: 0 1 94mm; text-align: end; line-height: 1.2; }
.code p + p { margin-block-start: 1mm; }
.typed { font-family: ui-monospace, "DejaVu Sans Mono", Menlo, Consolas, monospace; direction: ltr; unicode-bidi: isolate; overflow-wrap: normal; }
.qr { flex: none; inline-size: 30mm; block-size: 30mm; }
.qr svg { display: block; inline-size: 100%; block-size: 100%; }
.cut { font-size: 9pt; font-style: italic; margin-block-start: 1mm; }
.notice { border: 1.5pt solid #000; padding: 1.2mm 2mm; }
.notice h2 { border: 0; }
.points > li, .checks > li { display: flex; gap: 1.5mm; }
.mark { flex: none; inline-size: 2.5mm; font-weight: 700; text-align: center; }
.box { flex: none; display: inline-block; inline-size: 3.2mm; block-size: 3.2mm; border: .75pt solid #000; margin-block-start: .3mm; }
.answers, .cautions, .checks { columns: 2; column-gap: 6mm; }
.answers.narrow { columns: 3; column-gap: 5mm; }
.answers p { break-inside: avoid; }
.label { font-style: italic; }
.checks > li { margin-block-end: .6mm; }
.more { font-style: italic; }
.machine { border: .75pt solid #000; padding: 1.5mm 2mm; }
.machine header { display: flex; gap: 2.5mm; align-items: flex-start; }
.machine header > div { flex: 1; }
.rank { flex: none; inline-size: 7mm; block-size: 7mm; border: 1pt solid #000; border-radius: 50%; text-align: center; line-height: 6.4mm; font-weight: 700; }
.machine h3 { font-size: 11pt; }
.price { text-align: end; max-inline-size: 62mm; line-height: 1.2; }
.two { display: grid; grid-template-columns: 1fr 1fr; gap: 5mm; }
.units > li, .sums > li, .plain > li { padding-inline-start: 3mm; text-indent: -3mm; }
.units > li::before, .sums > li::before, ul.plain > li::before { content: "•"; display: inline-block; inline-size: 3mm; text-indent: 0; }
ol.plain { counter-reset: way; }
ol.plain > li { counter-increment: way; padding-inline-start: 5mm; text-indent: -5mm; }
ol.plain > li::before { content: counter(way) "."; display: inline-block; inline-size: 5mm; text-indent: 0; }
.drawing svg { display: block; }
.question h3 { max-inline-size: 100%; font-size: 9pt; line-height: 1.15; }
.part:has(> .pen-7), .part:has(> .pen-6) { padding-block-end: 1.2mm; }
.question h3 .lesser { font-weight: 400; }
.number { display: inline-block; min-inline-size: 4mm; }
.question { display: flex; flex-wrap: wrap; column-gap: 2.5mm; align-items: flex-end; }
.field { flex: 1 1 auto; max-inline-size: 100%; display: flex; flex-wrap: wrap; align-items: flex-end; column-gap: 2.2mm; font-size: 9pt; line-height: 1.15; }
.ticked { row-gap: .6mm; padding-block: .6mm; }
.written { flex-wrap: nowrap; column-gap: 1.5mm; }
.pen-9 .written { min-block-size: 9mm; } .pen-8 .written { min-block-size: 8mm; } .pen-7 .written { min-block-size: 7mm; } .pen-6 .written { min-block-size: 6mm; }
.written:has(> .wide) { flex-wrap: wrap; }
.written > .label { flex: 0 1 auto; }
.line { flex: 1 1 15mm; min-inline-size: 15mm; border-block-end: .5pt solid #000; align-self: flex-end; block-size: 4.5mm; }
.unit { flex: none; }
.wide { flex: 1 0 100%; }
.option { display: inline-flex; align-items: flex-start; gap: 1.2mm; }
.option:has(.line) { align-items: flex-end; }
.option > .line { flex: none; inline-size: 18mm; }
.list { display: grid; grid-template-columns: 1fr 1fr 1fr; column-gap: 8mm; row-gap: 1.2mm; }
.list { flex-basis: 100%; }
.list .second { margin-inline-start: auto; }
.form-head > [data-part] { margin-block-start: 1.5mm; }
.form-head header { display: flex; justify-content: space-between; align-items: baseline; gap: 4mm; }
.form-head h1 { margin-block: 0 .5mm; }
.second .box { border-width: 2pt; }
`;

/** How a paper looks on a sheet of that size; its lengths are those the room is reckoned with. */
export function paperStyle(size: SheetSize): string {
  const { width, height } = insideOf(size);
  return `${look}${lineUpStyle}
.page { inline-size: ${width}mm; block-size: ${height}mm; padding-block-end: ${footHeight}mm; }
.columns { gap: ${columnGap}mm; }`;
}
