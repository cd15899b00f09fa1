/** node src/build/run.mjs tests/bench/coverage.ts: how coverage measured on photos keeps its promises, on drawn photos. */
import { dotsRows, maskCases, maskRow, type Row, tracedRows } from '../files/coverageCases';

const points = (share: number): string => (100 * share).toFixed(1).padStart(6);
const head = '                          true %  error  worst  width  holds %  90 % holds  runs';
const said = (row: Row): string =>
  `${row.what.padEnd(26)}${points(row.share)} ${points(row.error)} ${points(row.worst)} ${points(row.width)}   ${points(row.holds)}      ${points(row.scoredHolds)} ${String(row.runs).padStart(5)}`;

const table = (title: string, rows: readonly Row[]): void => {
  console.log(`\n${title}\n${head}`);
  for (const row of rows) console.log(said(row));
};

table('Traced, corners off by 0.5 % of the width', tracedRows(10, 10));
for (const n of [49, 100]) table(`${n} dots, judged as it is`, dotsRows(n, 500));
table('49 dots, one judgement in twenty a slip', dotsRows(49, 500, 0.05));

console.log(
  `\nMask and 30 check dots, one judgement in twenty a slip\n${head}  mask off  left out  quality turn light noise glare thin leaves`,
);
const rows = [];
for (const made of maskCases) {
  const row = await maskRow(made, 40);
  rows.push(row);
  const { quality, turn = 0, light = 0, noise, glare, thin = 0, leaves = 0 } = made;
  const how = `${quality} ${turn} ${light.toFixed(1)} ${noise} ${glare} ${thin.toFixed(1)} ${leaves.toFixed(2)}`;
  console.log(
    row.runs === 0
      ? `${row.what.padEnd(26)}${points(row.share)}  refused: ${row.refused}  ${how}`
      : `${said(row)}   ${points(row.maskError)}    ${points(row.leftOut)}   ${how}`,
  );
}
const middle = rows.filter(({ case: { coverage } }) => coverage >= 0.01 && coverage <= 0.7);
console.log(`refused between 1 and 70 %: ${middle.filter(({ runs }) => runs === 0).length} of ${middle.length} cases`);

const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
console.log('\nAll masks, by how they are checked             error   width  holds %');
for (const [how, by] of [
  ['30 dots, one in twenty a slip', {}],
  ['the same, those against the mask seen twice', { again: true }],
  ['30 dots, no slip', { slips: 0 }],
  ['60 dots, one in twenty a slip', { dots: 60 }],
  ['100 dots, one in twenty a slip', { dots: 100 }],
] as const) {
  const all: Row[] = [];
  for (const made of maskCases) all.push(await maskRow(made, 20, by));
  const told = all.filter(({ runs }) => runs > 0);
  const of = (figure: (row: Row) => number): string => points(mean(told.map(figure)));
  console.log(`${how.padEnd(46)}${of((r) => r.error)}  ${of((r) => r.width)}   ${of((r) => r.holds)}`);
}
