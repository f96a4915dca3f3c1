import { palette } from '../chart/palette.ts';

/** Colours by which the dark style replaces those that a drawing carries itself. */
const darkDrawing = Object.entries(palette)
  .map(([role, [, dark]]) => `.s-${role}{stroke:${dark}}.f-${role}{fill:${dark}}`)
  .join('');

const variables = (which: 0 | 1) =>
  Object.entries(palette)
    .map(([role, pair]) => `--${role}:${pair[which]}`)
    .join(';');

/**
 * The page's look: a margin column holds the headings, which stay in sight while their section passes; the
 * main column holds what is said. Levels are told apart by words and by the weight of the line above them,
 * never by colour alone. The main column is as wide as a drawing, 760 px.
 * Paper gets what is argued about: what the page folds away is left out there and said to be, and neither a
 * drawing nor a finding that fits on a page is cut in two.
 */
export const style = `
:root{${variables(0)};--serif:Charter,"Bitstream Charter","Sitka Text",Cambria,"Noto Serif",Georgia,serif;--sans:system-ui,-apple-system,"Segoe UI","Noto Sans",Roboto,sans-serif;--mono:ui-monospace,"SFMono-Regular",Menlo,Consolas,"Noto Sans Mono",monospace;color-scheme:light dark}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1.0625rem/1.55 var(--serif);font-variant-numeric:lining-nums tabular-nums}
main{max-width:66.5rem;margin:0 auto;padding:2rem 1rem 4rem}
h1,h2,h3,h4,p,ul,ol,dl,figure,table{margin:0}
h1{font-size:clamp(2rem,1.3rem + 3vw,3rem);line-height:1.08;font-weight:600;letter-spacing:-.015em;text-wrap:balance}
h2{font-size:1.3rem;line-height:1.2;font-weight:600;letter-spacing:-.005em;text-wrap:balance}
h3{font-size:1.4rem;line-height:1.25;font-weight:600;letter-spacing:-.005em}
h4,.eyebrow,dt,caption,th,figcaption,summary{font-family:var(--sans);font-size:.8125rem;line-height:1.45;font-weight:600;color:var(--quiet)}
p,li,dd{max-width:41rem;text-wrap:pretty;overflow-wrap:anywhere}
ul,ol{padding-left:1.15rem}
li+li{margin-top:.35rem}
a{color:inherit;text-decoration-color:var(--quiet);text-underline-offset:.18em}
a:hover{text-decoration-thickness:2px}
:focus-visible{outline:2px solid var(--a);outline-offset:3px}
:target{scroll-margin-top:1rem}
q{quotes:none;font-style:italic}
.lead{font-size:1.2rem;line-height:1.45}
.quiet{color:var(--quiet)}
.fine-print{font-family:var(--sans);font-size:.8125rem;line-height:1.5;color:var(--quiet)}
.flow>*+*{margin-top:1rem}
.row{display:grid;grid-template-columns:minmax(0,1fr);gap:1rem 2.5rem;border-top:1px solid var(--ink);padding-top:.85rem;margin-top:3rem}
.row>*{min-width:0}
.row.refer{border-top:7px double var(--ink)}
.row.query{border-top-width:3px}
.mast{border-top-width:7px;margin-top:0;padding-top:1.2rem}
.mast h1{margin-top:-.2rem}
.rests{list-style:none;padding:0;margin-top:.4rem}
.rests li{padding:.55rem 0;border-top:1px solid var(--rule);margin:0;max-width:none;display:grid;grid-template-columns:minmax(0,1fr) auto;gap:0 1.5rem}
.rests li:last-child{border-bottom:1px solid var(--rule)}
.rests p{grid-column:1/-1;color:var(--quiet);font-size:.9375rem;line-height:1.45}
.cautions ul{list-style:none;padding:.1rem 0 .1rem 1.1rem;border-left:3px solid var(--ink)}
.finding+.finding{margin-top:3rem;border-top:1px solid var(--rule);padding-top:1.1rem}
.finding>*+*{margin-top:1rem}
.finding .eyebrow+h3{margin-top:.1rem}
.finding .eyebrow code{font-weight:400;margin-left:.6em}
.claim{font-size:1.2rem;line-height:1.45}
.sides{display:grid;gap:1.2rem 2.5rem;margin-top:1.6rem}
.sides ul,.sides+dl{margin-top:.35rem}
.finding .sides+dl{margin-top:1.4rem}
figure{max-width:47.5rem;margin-top:1.7rem}
.row>div>figure:first-child{margin-top:.2rem}
figure>figcaption{margin-bottom:.4rem;color:var(--ink)}
.chart{display:block;width:100%;height:auto;overflow:visible}
figure .fine-print{margin-top:.4rem;max-width:44rem}
.narrow,[hidden]{display:none!important}
.paper{display:none}
.tools{display:flex;flex-wrap:wrap;gap:.4rem;align-items:center;margin-bottom:.7rem;font-family:var(--sans);font-size:.8125rem}
button,select{font:inherit;color:var(--ink);background:none;border:1px solid var(--quiet);border-radius:2px;padding:.3rem .7rem;cursor:pointer;min-height:2rem}
select{flex:1 1 14rem;max-width:100%;min-width:0}
option{color:var(--ink);background:var(--paper)}
button:hover,select:hover{border-color:var(--ink)}
output{flex-basis:100%;min-height:2.9em;color:var(--quiet)}
.live{touch-action:pan-y;user-select:none;cursor:crosshair}
.cursor{stroke:var(--ink);stroke-width:1;pointer-events:none}
rect.cursor{fill:var(--mark);fill-opacity:.6;stroke:none}
dl{display:grid;gap:.5rem}
dl>div{display:grid;grid-template-columns:minmax(0,1fr)}
dd{margin:0}
dt{padding-top:.2rem}
.checks dl{gap:0}.checks dl>div{padding:.5rem 0;border-top:1px solid var(--rule)}.checks dl>div:first-child{border-top:0;padding-top:0}.checks dt{padding-top:.15rem}
.mast dl{gap:.65rem}
.mast dd{font-size:.9375rem;line-height:1.4}
.part+.part{margin-top:2.2rem}
.part>*+*{margin-top:.7rem}
.part h3{font-size:1.15rem}
.scroll{overflow-x:auto;margin-top:.5rem}
table{border-collapse:collapse;font-size:.9375rem;line-height:1.4;width:100%}
caption{text-align:left;padding-bottom:.3rem}
th,td{text-align:left;vertical-align:top;padding:.45rem 1.2rem .45rem 0;border-top:1px solid var(--rule)}
thead th{border-top:0;vertical-align:bottom;white-space:nowrap}
tbody th{font:inherit;color:inherit}
tbody tr:last-child>*{border-bottom:1px solid var(--rule)}
.numbers td,.numbers th{white-space:nowrap}
details{margin-top:.6rem}
summary{cursor:pointer;width:fit-content}
code{font-family:var(--mono);font-size:.8125rem;overflow-wrap:anywhere}
pre{margin:.5rem 0 0;padding:.7rem .9rem;background:var(--band);white-space:pre-wrap;overflow-wrap:anywhere}
@media screen and (min-width:60rem){main{padding-inline:2rem}.row{grid-template-columns:12rem minmax(0,47.5rem)}.row>h2{position:sticky;top:1rem;align-self:start}.sides{grid-template-columns:1fr 1fr}.row>:not(.facts) dl>div{grid-template-columns:13rem minmax(0,1fr);gap:0 1.5rem}.mast>.facts{order:-1}}
@media screen and (max-width:30rem){.rests li{grid-template-columns:minmax(0,1fr)}}
@media screen and (max-width:44rem){.wide{display:none}.narrow:not([hidden]){display:block!important}.row{margin-top:2.4rem}}
@media screen and (prefers-color-scheme:dark){:root{${variables(1)}}${darkDrawing}}
@media print{:root{color-scheme:light;font-size:12.5px}@page{margin:15mm}main{max-width:none;padding:0}.tools{display:none}.f-paper{fill:none}a{text-decoration:none}.scroll{overflow:visible}.numbers td,.numbers th{white-space:normal}.row{display:block;margin-top:1.6rem}.row>div{margin-top:.8rem}.finding+.finding{margin-top:1.6rem}.part+.part{margin-top:1.2rem}figure{max-width:none;margin-top:1.2rem}.sides{grid-template-columns:1fr 1fr}dl>div{grid-template-columns:11rem minmax(0,1fr);gap:0 1.5rem}.finding,figure,.sides,tr,li,dl>div{break-inside:avoid}h1,h2,h3,h4,figcaption,.eyebrow,.claim,summary{break-after:avoid}p.paper{display:block}summary{list-style:none}details:not([open])>summary>.paper{display:inline}figure details:not([open]),.workings details:not([open]){display:none}}
`;
