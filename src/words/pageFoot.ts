import { paperLayout } from './en/paperLayout';

/** As a text in a style sheet: nothing in it ends the text or begins anything else. */
const asCssText = (text: string): string =>
  `"${text.replace(/[^\p{L}\p{N} .,:;·()/+–-]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;

/** The sheet of printed pages and the line at the foot of each, with page x of y. Browsers that draw no page margins leave it out. */
export const pageFoot = (line: string, size: string, margin = ''): string => {
  const { page, of } = paperLayout.pageOf;
  const font = 'font:8pt/1.3 system-ui,sans-serif;color:#000;vertical-align:top;padding-top:3mm';
  return `@page{size:${size};${margin && `margin:${margin};`}
@bottom-left{content:${asCssText(line)};text-align:left;width:82%;${font}}
@bottom-right{content:${asCssText(page)} counter(page) ${asCssText(of)} counter(pages);${font}}}`;
};
