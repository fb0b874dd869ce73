import { colours, type Colour } from '../draw/index.ts';

/** The colours of drawings where the page is dark; where it is light they are those of paper. */
const dark: Readonly<Record<Colour, string>> = {
  ink: '#f4f4f0', white: '#14171a', faded: '#8c8c8c', fresh: '#4f6273', core: '#343b42', panel: '#22272c', board: '#3c434a', here: '#565e66', blind: '#a3a3a3',
};

const names = Object.keys(dark) as readonly Colour[];
const named = (values: Readonly<Record<Colour, string>>): string => names.map((name) => `--${name}:${values[name]};`).join('');

/** Drawings name their colours by classes. Pictograms, which stand alone elsewhere, have no classes: there the colour itself is looked for. */
const recoloured = (['fill', 'stroke'] as const).flatMap((property) => names.map((name) => {
  const drawn = ['.drawing', '.small', '#stage'].map((place) => `${place} .${property === 'fill' ? 'fill' : 'line'}-${name}`);
  return `${[`.plain [${property}="${colours[name]}"]`, ...drawn].join(',')}{${property}:var(--${name})}`;
})).join('\n');

/**
 * The page's look: black line on white like the booklet, hairlines between groups, no boxes or shadows. Lengths in rem
 * grow with the size of words. Written for browsers of about 2018: no nesting, no `gap` in flex rows, no `inset`, no
 * logical margins; rows follow the reading direction by themselves.
 */
const ground = `
:root{${named(colours)}--words:1;color-scheme:light}
:root.dark{${named(dark)}color-scheme:dark}
html{font-family:system-ui,-apple-system,Roboto,"Noto Sans","Segoe UI",sans-serif;line-height:1.4;-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;overflow-wrap:break-word;word-wrap:break-word;background:var(--white);color:var(--ink)}
h1,p,ul{margin:0;padding:0;font-weight:400}
ul{list-style:none}
svg{display:block}
[hidden]{display:none!important}
b{font-weight:700}
bdi{unicode-bidi:isolate;white-space:nowrap}
button{font:inherit;color:inherit;background:none;border:0;padding:0;margin:0;min-width:48px;min-height:48px;display:flex;align-items:center;justify-content:center;-webkit-tap-highlight-color:transparent;touch-action:manipulation;cursor:pointer}
a{color:inherit;text-decoration:none;-webkit-tap-highlight-color:transparent}
:focus{outline:3px solid var(--ink);outline-offset:-3px}
:focus:not(:focus-visible){outline:0}
.store{position:absolute}
.again,.speaking,#tick{position:relative}
.heard{position:absolute;width:1px;height:1px;overflow:hidden;clip:rect(0 0 0 0);white-space:nowrap}
.scripted{display:none}
.say{display:none}
.worded .say{display:block}
.worded span.say{display:inline;unicode-bidi:isolate}
:lang(ur){font-family:"Noto Nastaliq Urdu","Noto Nastaliq Urdu UI","Jameel Noori Nastaleeq","Urdu Typesetting",system-ui,sans-serif}
:lang(ur) .say,button:lang(ur){line-height:2.2}
:lang(my){font-family:system-ui,"Noto Sans Myanmar","Noto Sans Myanmar UI",Pyidaungsu,"Myanmar Text",Padauk,sans-serif}
:lang(my) .say,button:lang(my){line-height:1.8}
`;

/**
 * Where the page is dark, lines, paper and tints change places; safety signs keep their colours. A pictogram shown by
 * `<use>` sees no class outside of it, only the inherited colours.
 */
const drawings = `
${recoloured}
.plain text,.drawing text,#stage text{fill:var(--ink);font-family:inherit}
.drawing{margin:0 -1rem}
.drawing svg{width:100%;height:auto;max-height:34rem}
#start .drawing svg{max-height:38vh}
.mark{width:3rem;height:3rem;flex:none}
.mark.wide{width:4.5rem}
.mark.sizes{width:9rem;max-width:55%}
.small{display:block;flex:none;max-width:40vw}
.small svg{height:2.75rem;width:auto;max-width:100%}
`;

const pages = `
.page{padding:.5rem 1rem 1.5rem;border-bottom:1px solid var(--faded)}
.page h1{display:flex;align-items:center;flex-wrap:wrap;min-height:56px;}
.page .name{display:block;padding-top:.5rem;font-size:1.75rem;line-height:1.2;font-weight:700}
.numeral{font-size:2.5rem;line-height:3.25rem;font-weight:700;white-space:nowrap;margin:0 .5rem 0 0}
.numeral small{font-size:1.25rem}
[dir=rtl] .numeral{margin:0 0 0 .5rem}
.signed{display:flex;flex-wrap:wrap}
.signed .mark{width:3rem;height:3rem;margin:.125rem}
.round{margin-top:0;margin-bottom:0;font-size:1.375rem}
.round .mark{height:2.25rem}
.carries{display:flex;flex-wrap:wrap;flex:1 1 100%!important;min-width:0}
.worded .carries .told{flex:1 1 100%}
.carries .told{padding:0;min-width:0}
.carries .told .mark{width:4rem;height:4rem}
.carries .say{font-size:calc(1rem*var(--words))}
h1 .say{min-width:0;font-size:calc(1.375rem*var(--words));font-weight:700;margin:0 .75rem}
.row{display:flex;align-items:center;flex-wrap:wrap;margin:.5rem -.375rem}
.row>*{margin:.25rem .375rem}
.row>.say{flex:1}
.speaking{width:100%;min-height:3.5rem;flex-wrap:wrap;border-top:1px solid var(--faded);padding:.25rem 0;font-size:1.125rem}
.speaking bdi{margin:0 .375rem}
.on .speaking{display:flex}
.facts bdi,.crew bdi{white-space:normal}
.facts>div{flex:1;min-width:0}
.facts p{font-size:1.125rem}
.facts .size{font-weight:700}
.facts .print{margin-left:auto;font-size:.875rem}
[dir=rtl] .facts .print{margin-left:.375rem;margin-right:auto}
.crew b{font-size:1.375rem}
.caption{font-size:calc(1.25rem*var(--words));line-height:1.4;margin:.25rem 0 .5rem}
.strip{display:flex;flex-wrap:wrap;margin:.25rem -.25rem}
.strip .mark{margin:.25rem}
.new{display:flex;flex-wrap:wrap;margin:.25rem -.5rem}
.new li{flex-wrap:wrap}
.new li,.parts li{display:flex;align-items:center;margin:.25rem .5rem}
.new div,.parts div{margin:0 .5rem;font-size:1.125rem;line-height:1.3}
.new b,.parts b{font-size:1.5rem}
.parts li{flex-wrap:wrap}
.parts div{min-width:0;flex:1 1 7.5rem}
.parts li{min-height:4.5rem;margin:0;border-top:1px solid var(--faded)}
.parts .small{width:45%}
.parts .small svg{width:100%;height:auto;max-width:14rem;max-height:9rem;margin:.5rem 0}
.parts .say{font-size:calc(1rem*var(--words))}
.signs{display:flex;flex-wrap:wrap;margin:.5rem -.5rem}
.signs li{margin:.5rem;display:flex;align-items:center}
.signs .mark{width:5.5rem;height:5.5rem}
.worded .signs{display:block}
.worded .signs .mark{width:4rem;height:4rem}
.signs .say,.row .say{min-width:0}
.signs .say{margin:0 .75rem;font-size:calc(1.125rem*var(--words))}
.defer{border-top:1px solid var(--faded);padding:.75rem 0;font-size:calc(1rem*var(--words))}
.draft{font-size:calc(.875rem*var(--words))}
.tools{display:flex;flex-wrap:wrap;border-top:1px solid var(--faded);padding:.5rem 0;margin:0 -.25rem}
.tools li{margin:.25rem;text-align:center;min-width:3.5rem}
.tools .mark{margin:0 auto;width:3.5rem;height:3.5rem}
.tools .say{font-size:calc(.875rem*var(--words))}
.worded .tools li{min-width:5rem}
.check{border-top:1px solid var(--faded);padding:.5rem 0;margin:.25rem 0 0}
.check .say{font-size:calc(1rem*var(--words))}
.pair{display:flex;flex-wrap:wrap}
.way{display:flex;align-items:flex-end;margin:.25rem 1rem .25rem 0}
[dir=rtl] .way{margin:.25rem 0 .25rem 1rem}
.way .mark{width:6rem;height:4rem}
.way .verdict{width:1.75rem;height:1.75rem}
.measured{display:flex;align-items:center;font-size:1.5rem}
.measured b{margin:0 .75rem}
.told{display:flex;align-items:center;flex-wrap:wrap;padding:.5rem 0}
.told .mark{width:8rem;height:8rem}
.told .say{flex:1;min-width:40%;margin:0 .75rem;font-size:calc(1.125rem*var(--words))}
.again{display:flex;align-items:center;justify-content:center;min-height:64px;border:3px solid var(--ink);font-size:1.75rem;margin:.75rem 0 .25rem}
.again .mark{margin:0 .75rem}
.unproved{display:flex;align-items:center;font-weight:700}
.unproved .say{margin:0 .5rem}
`;

const panels = `
#all ul{display:flex;flex-wrap:wrap;padding:.5rem 0;border-bottom:1px solid var(--faded)}
#all .run{border-left:4px solid var(--ink);padding-left:.5rem}
[dir=rtl] #all .run{border-left:0;padding-left:0;border-right:4px solid var(--ink);padding-right:.5rem}
#all a{position:relative;display:flex;align-items:center;justify-content:center;width:3.75rem;height:3.75rem;font-size:1.75rem;font-weight:700}
#all a .mark{width:2.5rem;height:2.5rem}
#all .ticked{display:none}
#all .full .ticked{display:block;position:absolute;width:1.5rem;height:1.5rem;right:0;bottom:0}
#all .here{box-shadow:inset 0 0 0 3px var(--ink)}
.panel{padding:.5rem 1rem}
.looks{display:flex;justify-content:space-around;border-bottom:1px solid var(--faded)}
.looks button{min-height:64px;flex:1}
.languages{display:flex;flex-wrap:wrap;padding:.5rem 0}
.languages button{flex:1 0 9rem;min-height:3.5rem;padding:.25rem .5rem;font-size:1.25rem;border-bottom:1px solid var(--faded)}
.languages .chosen{box-shadow:inset 0 0 0 3px var(--ink);font-weight:700}
#stage{flex:1;min-height:0;position:relative;overflow:hidden;touch-action:none;-webkit-user-select:none;user-select:none}
#stage svg,#stage canvas{position:absolute;left:0;top:0;width:100%;height:100%;transform-origin:0 0}
#near{padding:0}
#near .looks{border-top:1px solid var(--faded);border-bottom:0}
`;

/** One page at a time, once the script runs: pages scroll above a fixed row of buttons. */
const scripted = `
.on,.on body{height:100%;overflow:hidden}
.on body{display:flex;flex-direction:column}
.on .scripted{display:flex}
.on #pages{flex:1;min-height:0;overflow-y:auto;-webkit-overflow-scrolling:touch;touch-action:pan-y}
.on .page{display:none;border:0}
.on .page.shown{display:block}
.on .page h1{margin:0 120px 0 0}
.on[dir=rtl] .page h1{margin:0 0 0 120px}
.corner{position:absolute;top:.5rem;right:.5rem}
[dir=rtl] .corner{right:auto;left:.5rem}
.corner button{width:56px;height:56px}
.corner .mark{width:36px;height:36px}
.foot{border-top:1px solid var(--ink);flex-wrap:wrap}
.foot button{flex:1 1 15%;min-height:72px;min-width:0}
.place{flex:0 0 100%;display:flex;align-items:center;font-size:.875rem;line-height:1.25rem}
.place bdi{margin:0 .5rem}
.bar{flex:1;height:6px;background:var(--fresh)}
.reached{display:block;height:6px;background:var(--ink)}
.foot #tick .say{font-size:calc(.75rem*var(--words));line-height:1.1;text-align:center;max-width:100%}
.foot .mark,.looks .mark{width:40px;height:40px}
.foot #tick{flex-direction:column}
.box{position:relative}
.box .ticked{display:none;position:absolute;left:4px;top:-6px}
.full .box .ticked{display:block}
.tally{font-weight:700;font-size:1rem;line-height:1.1}
.tally:empty{display:none}
[dir=rtl] .along{transform:scaleX(-1)}
button[disabled]{visibility:hidden}
.drawing{cursor:pointer}
.on .panel{position:absolute;left:0;top:0;width:100%;height:100%;box-sizing:border-box;background:var(--white);overflow-y:auto;-webkit-overflow-scrolling:touch;display:block}
.on #near{display:flex;flex-direction:column;overflow:hidden}
.on .leave{width:64px;height:64px}
.leave .mark{width:40px;height:40px}
#near .leave{position:absolute;z-index:1;background:var(--white);top:.5rem;left:1rem}
[dir=rtl] #near .leave{left:auto;right:1rem}
.roomy .step.shown{display:grid;grid-template-columns:3fr 2fr;grid-template-rows:auto auto auto auto 1fr;align-items:start;grid-column-gap:1rem;padding-left:.5rem;padding-right:.5rem}
.roomy .step>*{grid-column:2}
.roomy .step .work{display:contents}
.roomy .caption,.roomy .beside{grid-column:2;min-width:0}
.roomy .pictures{grid-column:1;grid-row:1/6;min-width:0}
.roomy .drawing{margin:0}
.roomy .step h1{display:block}
.roomy .step .numeral{display:block;line-height:3.75rem}
.roomy .signed{margin-right:-6.5rem}
[dir=rtl].roomy .signed{margin-right:0;margin-left:-6.5rem}
.on .work .drawing svg{max-height:calc(100vh - 13rem)}
.on.roomy .work .drawing svg{max-height:calc(100vh - 7rem)}
@media (min-width:900px){.page{max-width:64rem;margin:0 auto}.page .name{font-size:2.5rem}}
@media (max-height:480px) and (orientation:landscape){
.on body{flex-direction:row}
.foot{order:1;flex-direction:column;border-top:0;width:80px}
.on .foot{border-left:1px solid var(--ink)}
.on[dir=rtl] .foot{border-left:0;border-right:1px solid var(--ink)}
.foot button{flex:1 1 auto;min-height:48px}
.corner{right:88px}
[dir=rtl] .corner{right:auto;left:88px}
.on #near{flex-direction:row}
#near .looks{flex-direction:column;border:0;width:80px}
.on.roomy .work .drawing svg{max-height:98vh}
.foot{flex-wrap:nowrap}
.place{flex:0 0 auto;width:100%;flex-direction:column}
.place .bar{width:100%;flex:0 0 6px}
}
`;

/** The style of the whole guide. */
export const guideStyle = [ground, drawings, pages, panels, scripted].join('').replace(/\n+/g, '\n').trim();
