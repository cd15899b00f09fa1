import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { type Import, importsOf } from './imports';

/** Source files by their path below `src`, e.g. `engine/trade/kinds.ts`. */
export type House = ReadonlyMap<string, string>;

/** An import with the file it reaches (`undefined`: a package). */
export interface Reach extends Import {
  readonly from: string;
  readonly file: string | undefined;
}

export function houseAt(folder: string): House {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile() && /\.tsx?$/.test(f.name) && !f.name.endsWith('.d.ts'))
    .map((f) => join(f.parentPath, f.name));
  return new Map(files.map((f) => [relative(folder, f), readFileSync(f, 'utf8')]));
}

export function reachesOf(house: House): Reach[] {
  return [...house].flatMap(([from, source]) =>
    importsOf(source)
      .filter((i) => !/\.(?:css|json|svg|png|zip)$|\?/.test(i.to))
      .map((i) => ({ ...i, from, file: i.to.startsWith('.') ? fileOf(house, from, i.to) : undefined })),
  );
}

function fileOf(house: House, from: string, to: string): string {
  const path = normalize(join(dirname(from), to));
  const endings = ['', '.ts', '.tsx', '/index.ts', '/index.tsx'];
  return endings.map((e) => normalize(path + e)).find((f) => house.has(f)) ?? path;
}
