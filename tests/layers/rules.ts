import { dirname } from 'node:path';
import { type House, type Reach, reachesOf } from './house';
import { withoutCommentsAndTexts } from './imports';
import {
  forbiddenFolders,
  longestFile,
  longestTable,
  longTables,
  mayOpenPagesLazily,
  secondDoors,
  table,
  unknownToEngine,
} from './table';

/** Everything in this house that the table forbids, one sentence each. */
export function faultsIn(house: House): string[] {
  const reaches = reachesOf(house);
  return [
    ...[...house.keys()].flatMap(homeless),
    ...reaches.flatMap((reach) => nowhere(house, reach)),
    ...reaches.flatMap(notAllowed),
    ...reaches.flatMap(pastTheDoor),
    ...reaches.flatMap(awayFromHome),
    ...circles(reaches),
    ...[...house].flatMap(([file, source]) => [...knownToEngine(file, source), ...tooLong(file, source)]),
  ];
}

/** The part a file belongs to: the longest name in the table that its path starts with. */
export function partOf(file: string): string | undefined {
  const names = Object.keys(table).filter((name) => file === name || file.startsWith(`${name}/`));
  const longest = names.sort((a, b) => b.length - a.length)[0];
  // `device` itself holds single files only: a folder in it is a part of its own. So with engine and screens, which are no parts.
  return longest === 'device' && dirname(file) !== 'device' ? undefined : longest;
}

function homeless(file: string): string[] {
  const bad = dirname(file)
    .split('/')
    .find((folder) => forbiddenFolders.includes(folder));
  return [
    ...(bad ? [`${file}: a folder called ${bad} says nothing of what is in it`] : []),
    ...(partOf(file) ? [] : [`${file}: ${dirname(file)} is not in tests/layers/table.ts`]),
  ];
}

function nowhere(house: House, { from, file }: Reach): string[] {
  return file === undefined || house.has(file) ? [] : [`${from}: imports ${file}, and there is no such file`];
}

function notAllowed({ from, file, kind }: Reach): string[] {
  if (file === undefined) return [];
  const here = partOf(from);
  const there = partOf(file);
  if (!here || !there || here === there) return [];
  if (here === mayOpenPagesLazily && kind === 'lazy' && there.startsWith('screens/')) return [];
  return table[here]!.imports.includes(there) ? [] : [`${from}: ${here} may not import ${there}`];
}

/** Inside a part and the parts below it files see each other; from anywhere else they see its index only. */
function pastTheDoor({ from, file }: Reach): string[] {
  if (file === undefined || secondDoors.includes(file) || !/\.tsx?$/.test(file)) return [];
  const here = partOf(from);
  const there = partOf(file);
  if (!here || !there || here === there || here.startsWith(`${there}/`)) return [];
  // Screens are opened by their files; a single file of device (clock, ids) is a feature, and its own door.
  const isDoor = file === `${there}/index.ts` || there === 'device' || there.startsWith('screens/');
  return isDoor ? [] : [`${from}: imports ${file} past the door of ${there}`];
}

function awayFromHome({ from, to, file }: Reach): string[] {
  const here = partOf(from);
  if (file !== undefined || !here) return [];
  const name = to.startsWith('node:')
    ? 'node:'
    : to
        .split('/')
        .slice(0, to.startsWith('@') ? 2 : 1)
        .join('/');
  if (table[here]!.packages?.includes(name)) return [];
  return [`${from}: ${to} is not at home in ${here}`];
}

/** Files that need each other before either can run. A lazy import or a type is no such need. */
function circles(reaches: readonly Reach[]): string[] {
  const needs = new Map<string, string[]>();
  for (const { from, file, kind } of reaches) {
    if (file && kind === 'value') needs.set(from, [...(needs.get(from) ?? []), file]);
  }
  const done = new Set<string>();
  const faults: string[] = [];
  const visit = (file: string, path: readonly string[]) => {
    const at = path.indexOf(file);
    if (at >= 0) faults.push(`${[...path.slice(at), file].join(' -> ')}: a circle`);
    if (at >= 0 || done.has(file)) return;
    for (const next of needs.get(file) ?? []) visit(next, [...path, file]);
    done.add(file);
  };
  for (const file of needs.keys()) visit(file, []);
  return faults;
}

function knownToEngine(file: string, source: string): string[] {
  if (!file.startsWith('engine/')) return [];
  const code = withoutCommentsAndTexts(source);
  return unknownToEngine.flatMap((name) => {
    const found = name.exec(code)?.[0];
    return found ? [`${file}: the engine knows no ${found}`] : [];
  });
}

function tooLong(file: string, source: string): string[] {
  const lines = source.trimEnd().split('\n').length;
  const ceiling = file in longTables ? longestTable : longestFile;
  return lines > ceiling ? [`${file}: ${lines} lines, ${ceiling} is the ceiling`] : [];
}
