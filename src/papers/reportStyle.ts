import type { Html } from './html';

/** Plain enough for paper and for browsers to come. */
export const reportStyle: Html = {
  html: `
body{margin:0 auto;padding:2rem 1.5rem;max-width:60rem;color:#221a13;background:#fffdf8;font:1.0625rem/1.5 "Iowan Old Style","Palatino Linotype",Palatino,"URW Palladio L",serif}
h1{margin:0;font-size:2.25rem}h2{margin:2.5rem 0 .5rem;font-size:1.6rem;border-bottom:1px solid #77644f}h3{margin:1.75rem 0 .5rem;font-size:1.2rem}
small{color:#4c3f33;font-size:.85em}.name{margin:.25rem 0 1rem;font-size:1.4rem}.figure{font-size:1.2rem}
.mark{padding:.5rem .75rem;border-left:4px solid #6a4120;background:#efe9dd}
dl{display:grid;grid-template-columns:max-content 1fr;gap:.25rem 1.5rem}dt{color:#4c3f33}dd{margin:0}
table{width:100%;border-collapse:collapse;font-size:.95rem}th,td{padding:.35rem .6rem .35rem 0;text-align:left;vertical-align:top;border-bottom:1px solid #d8c9b0}thead th{border-bottom:2px solid #77644f}
td.whole{white-space:nowrap}td ul{margin:0;padding-left:1.1rem}tr,figure,li{break-inside:avoid}aside{margin-top:2rem;padding:.25rem 1.25rem 1rem;border:1px dashed #77644f}
.pictures{display:grid;grid-template-columns:repeat(auto-fill,minmax(11rem,1fr));gap:1rem}figure{margin:0}figure img{display:block;width:100%;height:10rem;object-fit:contain;background:#ece3d2}figcaption{font-size:.9rem}
a{color:#6a4120;overflow-wrap:anywhere}
@media print{body{padding:0;max-width:none;background:none;font-size:10.5pt}section{break-before:page}header+main>section:first-child{break-before:auto}a{color:inherit;text-decoration:none}}
`,
};
