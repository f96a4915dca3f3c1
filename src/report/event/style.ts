import { palette } from '../chart/palette.ts';

const variables = (which: 0 | 1) =>
  Object.entries(palette)
    .map(([role, pair]) => `--${role}:${pair[which]}`)
    .join(';');

/**
 * The overview's look: one wide table under a narrow head. Grades are told apart by words and by the weight of
 * the mark before them, never by colour alone. Rows are laid out one by one, which is why their cells state
 * their roles: a table of thousands that is laid out as a whole keeps its reader waiting.
 */
export const style = `
:root{${variables(0)};--sans:system-ui,-apple-system,"Segoe UI","Noto Sans",Roboto,sans-serif;--serif:Charter,"Bitstream Charter","Sitka Text",Cambria,"Noto Serif",Georgia,serif;color-scheme:light dark}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:.9375rem/1.45 var(--sans);font-variant-numeric:lining-nums tabular-nums}
main{padding:2rem 1rem 4rem;max-width:90rem;margin:0 auto}
h1,h2,p,ul{margin:0}
h1{font:600 clamp(1.6rem,1.2rem + 2vw,2.4rem)/1.15 var(--serif);text-wrap:balance}
h2{font:600 1.2rem/1.25 var(--serif);margin-top:2.2rem;border-top:1px solid var(--ink);padding-top:.7rem}
p{max-width:44rem;margin-top:.6rem}
ul{padding-left:1.15rem;max-width:52rem;margin-top:.5rem}
li+li{margin-top:.3rem}
a{color:inherit;text-decoration-color:var(--quiet);text-underline-offset:.18em}
:focus-visible{outline:2px solid var(--a);outline-offset:2px}
.quiet{color:var(--quiet)}
.lead{font-size:1.1rem}
form{display:flex;flex-wrap:wrap;gap:.6rem 1rem;align-items:end;margin-top:1rem}
form[hidden],tr[hidden]{display:none}
label{display:grid;gap:.15rem;font-size:.8125rem;font-weight:600;color:var(--quiet)}
input,select,button{font:inherit;font-weight:400;color:var(--ink);background:var(--paper);border:1px solid var(--quiet);border-radius:2px;padding:.3rem .5rem;min-height:2rem;max-width:18rem}
button{cursor:pointer}
output{color:var(--quiet);padding-bottom:.35rem}
.scroll{overflow-x:auto;margin-top:.8rem}
table,thead,tbody{display:block}
table{min-width:62rem}
tr{display:flex;align-items:stretch}
th,td{flex:3 3 0;min-width:0;text-align:left;padding:.45rem 1rem .45rem 0;border-top:1px solid var(--rule);overflow-wrap:anywhere}
thead{position:sticky;top:0;background:var(--paper);z-index:1}
thead tr{align-items:flex-end}
thead th{border-top:0;border-bottom:1px solid var(--ink)}
.who,.stands{flex:4 4 0}
.few{flex:2 2 0;min-width:5.5rem}
.seen{flex:7 7 0}
th.shown,td.shown{flex:0 0 11rem}
th button{text-align:left;border:0;padding:0;background:none;font-weight:600;min-height:0}
th[aria-sort=ascending] button::after{content:" ↑"}
th[aria-sort=descending] button::after{content:" ↓"}
tbody th{font-weight:400}
tbody tr{content-visibility:auto;contain-intrinsic-size:auto 4rem}
.grade{--edge:0px;padding-left:calc(1.1rem - var(--edge));border-left:var(--edge) solid var(--rule)}
td.grade{--edge:1px}
td.grade.refer{--edge:7px;border-left-style:double;border-left-color:var(--ink);font-weight:600}
td.grade.query{--edge:3px;border-left-color:var(--ink);font-weight:600}
td.grade.lacks{--edge:3px;border-left-style:dotted;border-left-color:var(--ink)}
td ul{list-style:none;padding:0;margin:0}
td li+li{margin-top:.15rem}
td svg{display:block;width:10rem;height:2.25rem;overflow:visible}
.honest{fill:var(--band)}
.axis,.limit{stroke:var(--quiet);stroke-width:1}
.limit{stroke-width:1.5}
.between{stroke:var(--ink);stroke-width:2.5}
.at{fill:var(--ink)}
.field{stroke:var(--haze);stroke-width:4}
.middle{stroke:var(--a);stroke-width:2}
@media (prefers-color-scheme:dark){:root{${variables(1)}}}
@media (max-width:40rem){.scroll{overflow-x:visible}table{min-width:0}tr{flex-wrap:wrap}thead{position:static}thead tr{border-bottom:1px solid var(--ink)}thead th[scope]{flex:0 1 auto;border-bottom:0}tr .few{display:none}tbody tr{border-top:1px solid var(--rule);padding:.45rem 0}tbody th,tbody td{border-top:0;padding-block:.1rem}tbody .seen,tbody td.shown,tbody .stands{flex:1 1 100%}tbody .who,tbody .grade{flex:1 1 40%}tbody .shown{order:1}tbody td.stands{order:2}tbody .shown:empty{display:none}}
@media print{form{display:none}main{padding:0;max-width:none}body{font-size:8pt}thead{position:static}table{min-width:0}th,td{padding-right:.5rem}.who{flex:3 3 0}.few{flex:0 0 4.3rem;min-width:0}th.grade,td.grade{flex:0 0 5.6rem}.stands{flex:5 5 0}th.shown,td.shown{flex:0 0 7.5rem}td svg{width:7rem;height:auto}tbody tr{content-visibility:visible;break-inside:avoid}:root{${variables(0)};color-scheme:light}}
`;
