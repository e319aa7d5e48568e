/** Colours that a shop replaces as --footwell-…: in a light page, and in a dark one. */
export const colours: Record<string, [light: string, dark: string]> = {
  accent: ['#1d5c63', '#7cc4cf'],
  'on-accent': ['#fff', '#0d1416'],
  text: ['#22282b', '#e8ecec'],
  quiet: ['#56626a', '#a9b6b8'],
  surface: ['#fff', '#1c2326'],
  tint: ['#f3f6f5', '#232c2f'],
  line: ['#d5dddd', '#3a4649'],
  stop: ['#a3262a', '#ff9a94'],
  warning: ['#8a5300', '#f3c06b'],
  ok: ['#22653d', '#8fd3a6'],
};

const each = (value: (name: string, light: string, dark: string) => string) =>
  Object.entries(colours).map(([name, [light, dark]]) => `--_${name}: ${value(name, light, dark)};`).join('\n  ');

/* Paper is white: there the dark colours, a shop's own included, would not be read. */
export const style = `
:host {
  ${each((name, light) => `var(--footwell-${name}, ${light})`)}
  --_radius: var(--footwell-radius, 10px);
  display: block;
  container-type: inline-size;
  color: var(--_text);
  font-family: var(--footwell-font, inherit);
  line-height: 1.45;
  font-variant-numeric: tabular-nums;
}
@supports (color: light-dark(#000, #fff)) {
  :host { ${each((name, light, dark) => `var(--footwell-${name}, light-dark(${light}, ${dark}))`)} }
}
:host([hidden]) { display: none; }
* { box-sizing: border-box; }
[hidden] { display: none !important; }
.unseen { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.layout { display: grid; gap: 1.5rem; align-items: start; overflow-wrap: break-word; hyphens: auto; }
.layout > * { min-width: 0; }
.controls:empty { display: none; }
@container (min-width: 56rem) {
  .layout:has(> .controls:not([hidden]) > form) { grid-template-columns: minmax(17rem, 5fr) 12fr; gap: 2.25rem; }
}
h2 { margin: 0 0 .5rem; font-size: 1.05rem; line-height: 1.3; }
p { margin: 0 0 .5rem; }
small { font-size: .84rem; color: var(--_quiet); font-weight: normal; }
ul { margin: 0; padding-inline-start: 1.15rem; }
li + li { margin-top: .45rem; }
:is(td, dd, button, label, legend, option) { hyphens: manual; }
img { display: block; width: 100%; height: auto; aspect-ratio: 3 / 2; object-fit: contain; border-radius: calc(var(--_radius) * .6); background: var(--_tint); }
form img { max-height: 9rem; }
code { font-size: .84rem; }

form { display: grid; gap: 1.25rem; }
form > div:not(.faults) { display: grid; gap: 1.25rem; }
.vehicle { gap: .35rem !important; }
fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
legend, .vehicle label { padding: 0; font-weight: 600; margin-bottom: .45rem; }
.vehicle label { margin: 0; }
select, input:not([type=radio]) {
  font: inherit; color: inherit; width: 100%; min-height: 2.75rem; padding: .4rem .65rem;
  background: var(--_surface); border: 1px solid var(--_quiet); border-radius: calc(var(--_radius) * .6);
}
.choice label { display: flex; gap: .65rem; align-items: baseline; padding: .7rem .8rem; cursor: pointer;
  background: var(--_surface); border: 1px solid var(--_line); border-radius: var(--_radius); }
.choice label + label { margin-top: .5rem; }
.choice label:hover { border-color: var(--_accent); }
.choice label:has(:checked) { border-color: var(--_accent); box-shadow: inset 0 0 0 1px var(--_accent); background: var(--_tint); }
.choice small { display: block; }
.choice input { accent-color: var(--_accent); flex: none; }
.choice label > span { flex: 1; min-width: 0; }
.choice img { margin-bottom: .5rem; }
.priced b { min-width: 0; overflow-wrap: anywhere; }
.priced { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1rem; }
.seats label { min-height: 2.75rem; }
.seats { display: flex; flex-wrap: wrap; gap: .5rem; }
.seats legend { float: left; width: 100%; }
.seats label { flex: 1 1 7rem; margin: 0 !important; }
details { border-top: 1px solid var(--_line); padding-top: .8rem; }
summary { cursor: pointer; font-weight: 600; padding: .3rem 0; min-height: 2.75rem; align-content: center; }
details[open] > summary { margin-bottom: .5rem; }
details > p { color: var(--_quiet); font-size: .9rem; }
.group { margin: 1.1rem 0; }
.group legend { font-size: .95rem; }
.fields { display: grid; grid-template-columns: repeat(auto-fill, minmax(7.4rem, 1fr)); gap: .6rem; align-items: end; }
.field label { display: block; font-size: .84rem; margin-bottom: .2rem; }
.field label small { margin-inline-start: .35em; }
.field input { direction: ltr; text-align: match-parent; }
.field:has([aria-invalid=true]) { grid-column: 1 / -1; }
[aria-invalid=true] { border-color: var(--_stop) !important; box-shadow: inset 0 0 0 1px var(--_stop); }
.fault { margin: .25rem 0 0; color: var(--_stop); font-size: .9rem; }
.fault:empty { display: none; }
.faults ul { list-style: none; padding: 0; }
.faults li + li { margin: 0; }
.faults { border: 2px solid var(--_stop); border-radius: var(--_radius); padding: .8rem 1rem; }
button { font: inherit; font-weight: 600; min-height: 2.75rem; padding: .5rem 1.1rem; cursor: pointer;
  color: var(--_accent); background: transparent; border: 1px solid var(--_accent); border-radius: calc(var(--_radius) * .6); }
button:hover { background: var(--_tint); }
button.book { color: var(--_on-accent); background: var(--_accent); justify-self: start; }
button.book:hover { filter: brightness(1.12); }
button.link { all: unset; display: inline-block; min-height: 2.75rem; align-content: center; cursor: pointer; text-decoration: underline; color: var(--_stop); }
:is(button, input, select, summary, .faults):focus-visible, button.link:focus-visible { outline: 3px solid var(--_accent); outline-offset: 2px; }

.notice { padding: 1rem 1.1rem; border: 1px solid var(--_line); border-radius: var(--_radius); background: var(--_tint); margin-bottom: 1.25rem; }
.notice p:last-child { margin: 0; }
.notice ul { margin-bottom: .8rem; }
.loading::before { content: ''; display: inline-block; width: .8em; height: .8em; margin-inline-end: .6em; border-radius: 50%;
  border: 2px solid var(--_line); border-top-color: var(--_accent); animation: turn 1s linear infinite; }
@keyframes turn { to { rotate: 1turn; } }
@media (prefers-reduced-motion: reduce) { .loading::before { animation: none; } }
.result { display: grid; gap: 1.5rem; }
.result > * { min-width: 0; }
.result[aria-busy=true] { opacity: .45; }

.verdict { display: flex; gap: .9rem; padding: 1rem 1.1rem; border-radius: var(--_radius); background: var(--_tint); color: var(--_ok); }
.verdict.warning { color: var(--_warning); }
.verdict.stop { color: var(--_stop); }
.verdict h2 { margin: 0; font-size: 1.2rem; }
.verdict p { margin: 0; color: var(--_text); }
.sign { flex: none; width: 1.9rem; height: 1.9rem; line-height: 1.9rem; text-align: center; font-weight: 700;
  background: currentColor; -webkit-text-fill-color: var(--_surface); border-radius: 50%; }
.figures { display: grid; grid-template-columns: repeat(auto-fit, minmax(9.3rem, 1fr)); gap: 1.1rem 1.25rem; margin: 0; }
.figure dt { font-size: .9rem; color: var(--_quiet); }
.figure dd { margin: 0; }
.figure strong { display: block; font-size: clamp(1.1rem, 5.5cqi, 1.3rem); line-height: 1.25; text-wrap: balance; font-weight: 650; letter-spacing: -.01em; }
.figure small { display: block; line-height: 1.3; }

.offered { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(19rem, 100%), 1fr)); gap: 1rem; }
.offered article { display: grid; gap: .8rem; align-content: start; grid-template-rows: auto auto 1fr auto; padding: 1rem 1.1rem; border: 1px solid var(--_line); border-radius: var(--_radius); background: var(--_surface); }
.offered h3 { margin: 0; font-size: 1.05rem; }
.offered h3 small { display: block; color: var(--_ok); }
.offered h3 small.warning { color: var(--_warning); }
.offered .figures { grid-template-columns: 1fr 1fr; gap: .7rem 1rem; }
.offered strong { font-size: 1.2rem; }
.offered li + li { margin-top: .2rem; }

.findings:not(details) { border-inline-start: 4px solid; padding-block: .1rem; padding-inline-start: 1rem; }
.findings.stop { border-color: var(--_stop); }
.findings.warning { border-color: var(--_warning); }
.findings.stop h2 { color: var(--_stop); }
.findings.warning h2 { color: var(--_warning); }
.booking { display: flex; flex-wrap: wrap; gap: 1rem 2rem; align-items: center; justify-content: space-between; padding: 1rem 1.1rem;
  border: 2px solid var(--_accent); border-radius: var(--_radius); }
.booking > div { flex: 1 1 16rem; min-width: 0; overflow-wrap: anywhere; }
.booking > div > :is(b, span) { display: block; }
.booking > div > b { font-size: 1.1rem; }
.booking .warning { color: var(--_warning); }
.booking .stop { color: var(--_stop); }
.booking dl { display: flex; flex-wrap: wrap; gap: 0 1.25rem; margin: .3rem 0 0; }
.booking dl div { display: flex; gap: .4rem; }
.booking dt { color: var(--_quiet); }
.booking dd { margin: 0; font-weight: 600; }
.chosen:has(img) { display: flex; flex-wrap: wrap; gap: 1rem; align-items: center; }
.chosen img { width: 11rem; }
.chosen p { margin: 0; }
.paper { display: none !important; }
.safety { background: var(--_tint); border-radius: var(--_radius); padding: 1rem 1.1rem; font-size: .94rem; }

table { border-collapse: collapse; width: 100%; table-layout: fixed; font-size: .94rem; }
caption { text-align: start; font-weight: 600; padding: 0 0 .4rem; }
caption small { display: block; }
caption img { float: inline-end; width: 5rem; margin-inline-start: .8rem; }
th, td { padding-block: .38rem; padding-inline-start: .6rem; text-align: end; vertical-align: baseline; border-top: 1px solid var(--_line); }
th:first-child { text-align: start; padding-inline-start: 0; font-weight: normal; }
thead th, thead td { border-top: 0; color: var(--_quiet); font-weight: normal; font-size: .84rem; vertical-align: bottom; }
td small, th small { display: block; }
td { white-space: nowrap; }
td small { white-space: normal; line-height: 1.2; }
td.words { white-space: normal; }
:is(caption, .additions th, .channels tbody th) { overflow-wrap: anywhere; }
.channels th:first-child { min-width: 5.6em; }
.additions th { min-width: 8em; }
.position { font-size: .92rem; }
.position :is(td, th) { padding-inline-start: .3rem; }
.position tr > :first-child { width: 34%; padding-inline-start: 0; }
.position .together { padding-block: .7rem .2rem; font-size: .84rem; color: var(--_quiet); }
.position tr > :last-child { width: 24%; }
.additions tr > :first-child { width: 50%; }
.channels tr > :first-child { width: 30%; }
@container (max-width: 30rem) { table { table-layout: auto; } .position { font-size: .85rem; } .position tr > :first-child, .channels tr > :first-child { width: auto; } }
.positions { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(21rem, 100%), 1fr)); gap: 1.5rem 2.25rem; align-items: start; margin-bottom: 1.5rem; }
.beside { display: flex; flex-wrap: wrap; gap: 1.25rem 2rem; align-items: center; justify-content: center; }
.beside table { flex: 1 1 17rem; }
.drawing { direction: ltr; flex: 0 1 13rem; width: 13rem; }
.drawing .cabin { fill: var(--_tint); stroke: var(--_line); stroke-width: .03; }
.drawing .windscreen { fill: none; stroke: var(--_quiet); stroke-width: .03; stroke-linecap: round; }
.drawing .seat { fill: var(--_surface); stroke: var(--_quiet); stroke-width: .02; }
.drawing .main { stroke: var(--_accent); stroke-width: .045; }
.drawing .driver { fill: var(--_accent); }
.drawing text { font-size: .12px; fill: var(--_text); }
.position td:last-child { font-weight: 600; }

@media print {
  :host { ${each((_, light) => light)} --_tint: #fff; font-size: 10pt; }
  .paper { display: block !important; }
  .controls, button, details:not([open]), .notice { display: none !important; }
  .layout { display: block; }
  .result { opacity: 1 !important; }
  .sign, .drawing { print-color-adjust: exact; }
  .sign { background: none; border: 2px solid currentColor; -webkit-text-fill-color: currentColor; line-height: calc(1.9rem - 4px); }
  .verdict, .safety { border: 1px solid var(--_line); }
  :is(.verdict, .findings, .safety, .booking, .figure, .beside, .offered article, table, li) { break-inside: avoid; }
  h2 { break-after: avoid; }
}
`;
