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
 * The page's look. A margin column holds what a thing is, the main column what is said of it. Levels are told
 * apart by words and by the weight of the line above them, never by colour alone.
 */
export const style = `
:root{${variables(0)};--serif:Charter,"Bitstream Charter","Sitka Text",Cambria,"Noto Serif",Georgia,serif;--sans:system-ui,-apple-system,"Segoe UI","Noto Sans",Roboto,sans-serif;color-scheme:light dark}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1.0625rem/1.55 var(--serif);font-variant-numeric:lining-nums tabular-nums}
main{max-width:64rem;margin:0 auto;padding:2.5rem 1rem 5rem}
h1,h2,h3,h4,p,ul,ol,dl,figure,table{margin:0}
h1{font-size:clamp(2rem,1.2rem + 3.4vw,3.1rem);line-height:1.08;font-weight:600;letter-spacing:-.015em;text-wrap:balance}
h2{font-size:1.6rem;line-height:1.2;font-weight:600;letter-spacing:-.01em}
h3{font-size:1.3rem;line-height:1.25;font-weight:600}
h4,.eyebrow,dt,caption,th,figcaption,summary,.kind{font-family:var(--sans);font-size:.8125rem;line-height:1.4;font-weight:600;color:var(--quiet);letter-spacing:.01em}
p,li,dd{max-width:40rem;text-wrap:pretty;overflow-wrap:anywhere}
ul,ol{padding-left:1.15rem}
li+li{margin-top:.3rem}
a{color:inherit;text-decoration-color:var(--quiet);text-underline-offset:.18em}
a:hover{text-decoration-thickness:2px}
:focus-visible{outline:2px solid var(--a);outline-offset:3px}
q{quotes:none;font-style:italic}
.lead{font-size:1.2rem;line-height:1.45}
.quiet{color:var(--quiet)}
.fine-print{font-size:.9375rem;color:var(--quiet)}
.row{display:grid;grid-template-columns:minmax(0,1fr);gap:.5rem 2rem}
.row>*{min-width:0}
.flow>*+*{margin-top:.9rem}
section{margin-top:3.25rem}
section>h2{border-top:1px solid var(--ink);padding-top:.7rem;margin-bottom:1.3rem}
.mast{border-top:6px solid var(--ink);padding-top:1.1rem}
.mast .eyebrow{margin-bottom:1.4rem}
.mast .flow{margin-top:1.1rem}
.rests{list-style:none;padding:0}
.rests li{padding:.45rem 0;border-top:1px solid var(--rule);margin:0;max-width:none;display:flex;flex-wrap:wrap;gap:.1rem 1rem;justify-content:space-between}
.rests li:last-child{border-bottom:1px solid var(--rule)}
.cautions ul{list-style:none;padding:0}
.cautions li{padding-left:1.15rem;border-left:3px solid var(--rule)}
.next ol{padding-left:1.4rem}
.finding{margin-top:2.6rem;padding-top:.8rem;border-top:1px solid var(--ink)}
.finding.query{border-top-width:3px}
.finding.refer{border-top:7px double var(--ink)}
.finding .kind{color:var(--ink)}
.finding .kind span{display:block;font-weight:400;color:var(--quiet)}
.claim{font-size:1.2rem;line-height:1.45}
.pair{display:grid;gap:1.2rem 2rem}
.chart{display:block;width:100%;height:auto;overflow:visible}
figure>figcaption{margin-bottom:.5rem;color:var(--ink)}
figure{margin-top:1.4rem}
figure .fine-print{margin-top:.35rem;font-family:var(--sans);font-size:.8125rem}
.narrow{display:none}
dl{display:grid;gap:.55rem}
dl>div{display:grid;grid-template-columns:minmax(0,1fr)}
dd{margin:0}
.scroll{overflow-x:auto;margin-top:.5rem}
table{border-collapse:collapse;font-size:.9375rem;line-height:1.4;width:100%}
caption{text-align:left;padding-bottom:.3rem}
th,td{text-align:left;vertical-align:top;padding:.4rem 1.1rem .4rem 0;border-top:1px solid var(--rule)}
thead th{border-top:0;vertical-align:bottom}
tbody th{font:inherit;color:inherit}
tbody tr:last-child>*{border-bottom:1px solid var(--rule)}
.nowrap{white-space:nowrap}
details{margin-top:.6rem}
summary{cursor:pointer;width:fit-content}
code,.code{font-family:ui-monospace,"SFMono-Regular",Menlo,Consolas,"Noto Sans Mono",monospace;font-size:.8125rem;overflow-wrap:anywhere}
pre{margin:.5rem 0 0;padding:.7rem .9rem;background:var(--band);white-space:pre-wrap;overflow-wrap:anywhere}
footer{margin-top:4rem;border-top:1px solid var(--rule);padding-top:.8rem}
@media screen and (min-width:56rem){.row{grid-template-columns:13rem minmax(0,1fr)}.pair{grid-template-columns:1fr 1fr}dl>div{grid-template-columns:13rem minmax(0,1fr);gap:0 1.5rem}main{padding-inline:2rem}}
@media screen and (max-width:44rem){.wide{display:none}.narrow{display:block}section{margin-top:2.5rem}}
@media screen and (prefers-color-scheme:dark){:root{${variables(1)}}${darkDrawing}}
@media print{:root{color-scheme:light}body{font-size:10pt}main{max-width:none;padding:0}.finding,figure,tr,li,dl>div{break-inside:avoid}h2,h3,h4{break-after:avoid}.scroll{overflow:visible}details::details-content{content-visibility:visible;display:block}summary{list-style:none}a{text-decoration:none}.pair{grid-template-columns:1fr 1fr}@page{margin:16mm 15mm}}
`;
