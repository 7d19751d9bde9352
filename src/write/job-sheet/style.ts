import { FACE } from '../face.ts';
import { INK, RED, SOFT } from '../ink.ts';

/**
 * The look of the job sheet, on screen and on paper. The prime of feet is left to another face: this one spaces it too wide.
 * @param paper a page size of CSS Paged Media
 */
export const styleOf = (paper: string): string => `
@font-face { font-family: Sheet; src: url(${FACE}) format('woff'); unicode-range: U+0-2031, U+2033-FFFF; }
@page { size: ${paper} portrait; margin: 13mm 14mm; }
:root { --ink: ${INK}; --soft: ${SOFT}; --line: #cdbfa6; --paper: #fdfaf3; --red: ${RED}; }
* { box-sizing: border-box; }
html { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { margin: 0 auto; padding: 8mm 6mm; max-width: 190mm; background: var(--paper); color: var(--ink); font: 10.5pt/1.42 Sheet, sans-serif; }
h1 { margin: 0; font-size: 27pt; line-height: 1.1; }
h2 { margin: 8mm 0 2.5mm; padding-bottom: 1mm; border-bottom: .6mm solid var(--ink); font-size: 16pt; line-height: 1.2; break-after: avoid; }
h3 { margin: 5mm 0 1mm; font-size: 12.5pt; line-height: 1.25; break-after: avoid; }
h1, h2, h3 { font-weight: 500; }
p { margin: 0 0 1.6mm; }
ul, ol { margin: 0; padding: 0; list-style: none; }
.soft { color: var(--soft); }
.head { display: flex; justify-content: space-between; align-items: flex-end; gap: 8mm; padding-bottom: 3mm; border-bottom: 1.1mm solid var(--ink); }
.head .kind { white-space: nowrap; font-size: 12pt; }
.says { margin: 2mm 0 0; font-size: 11.5pt; line-height: 1.35; }
.figures { display: flex; flex-wrap: wrap; margin: 4mm 0 0; border: .25mm solid var(--line); border-width: .25mm 0 0 .25mm; }
.figures div { flex: 1 1 auto; padding: 1.2mm 2.4mm 1.5mm; border: .25mm solid var(--line); border-width: 0 .25mm .25mm 0; }
.figures dt { font-size: 8.5pt; color: var(--soft); }
.figures dd { margin: 0; font-size: 16pt; line-height: 1.2; white-space: nowrap; }
.figures small { font-size: 12pt; color: var(--soft); }
.figure svg { display: block; margin: 0 auto; }
.beside.left { margin-top: 5mm; }
.tall .beside.left { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: 8mm; align-items: start; }
.left > .lists { font-size: 9.6pt; line-height: 1.34; }
.left > .lists .tick li { margin-bottom: .7mm; }
.wide .left > .lists { columns: 3; column-gap: 7mm; margin-top: 4mm; }
.lists section { break-inside: avoid; }
.left > .lists h3 { margin-top: 0; }
.tall .left > .lists section, .tall .left > .lists p + section { margin-top: 3.5mm; }
.left > .lists td:first-child { white-space: nowrap; }
.beside.right { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0 7mm; align-items: start; margin-top: 7mm; }
.right > .lists h3 { margin-top: 0; }
.tick li, .steps li { position: relative; padding-left: 6mm; margin-bottom: 1mm; break-inside: avoid; }
.tick li::before, .steps li::before, td.box::before { content: ''; position: absolute; left: 0; top: .9mm; width: 3.4mm; height: 3.4mm; border: .3mm solid var(--ink); background: #fff; }
.steps { font-size: 12pt; line-height: 1.36; max-width: 168mm; }
.steps li { padding-left: 8mm; margin-bottom: 1.4mm; }
.steps li::before { top: 1mm; width: 4.2mm; height: 4.2mm; }
h3 .no { display: inline-block; min-width: 6.4mm; margin-right: 2.6mm; padding: 0 1mm; border: .4mm solid var(--red); border-radius: 4mm; text-align: center; line-height: 5.6mm; font-size: 11pt; color: var(--red); }
td.box { position: relative; width: 6mm; }
td.box::before { left: 1mm; top: 1.5mm; }
.care { margin-top: 7mm; padding: 2.5mm 5mm; border: .5mm solid var(--red); border-left-width: 2.5mm; break-inside: avoid; }
.care h2 { margin: 0 0 1.5mm; padding: 0; border: 0; color: var(--red); }
.care dl { margin: 0; display: grid; grid-template-columns: auto 1fr; gap: 1mm 4mm; }
.care dt { white-space: nowrap; }
.care dd { margin: 0; }
.care .last { margin: 2mm 0 0; }
table { width: 100%; border-collapse: collapse; }
caption { text-align: left; padding-bottom: 1.5mm; color: var(--soft); }
thead { display: table-header-group; }
th { text-align: left; font-weight: 500; font-size: 8.5pt; color: var(--soft); border-bottom: .4mm solid var(--ink); padding: .6mm 2mm .6mm 0; vertical-align: bottom; }
td { border-bottom: .25mm solid var(--line); padding: 1.1mm 2mm 1.1mm 0; vertical-align: top; }
tr { break-inside: avoid; }
td.read, th.read { text-align: right; padding-right: 4mm; white-space: nowrap; }
td.read { font-size: 16pt; line-height: 1.1; }
td.no { color: var(--soft); width: 8mm; }
.rows { columns: 2; column-gap: 9mm; }
section.half { display: inline-block; width: 47.5%; margin-right: 2.4%; vertical-align: top; break-inside: avoid; }
.swatch { display: inline-block; width: 5mm; height: 5mm; margin-right: 1.5mm; border: .25mm solid var(--soft); vertical-align: -1mm; }
.n { white-space: nowrap; }
b { font-weight: 500; }
.f { font-feature-settings: 'frac'; }
.page { break-before: page; }
.page + h2, .page + .care { margin-top: 8mm; }
.lay th[scope='rowgroup'] { padding-top: 2.5mm; font-size: 10.5pt; color: var(--ink); border-bottom: .25mm solid var(--line); }
.lay tbody { break-inside: avoid; }
.lay td:nth-child(4) { white-space: nowrap; }
@media print { .page + h2, .page + .care { margin-top: 0; } body { padding: 0; max-width: none; background: #fff; } }
`;
