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
const told = rows.filter(({ runs }) => runs > 0);
const middle = rows.filter(({ share }) => share >= 0.01 && share <= 0.7);
console.log(
  `intervals that hold the truth: ${points(told.reduce((sum, { holds }) => sum + holds, 0) / told.length)} %; refused between 1 and 70 %: ${middle.filter(({ runs }) => runs === 0).length} of ${middle.length}`,
);
