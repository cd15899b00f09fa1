/** One import as written: where to, and whether it is there when the program runs (a type is not), at once or later. */
export interface Import {
  readonly to: string;
  readonly kind: 'value' | 'type' | 'lazy';
}

const textOrComment = /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\/[^\n]*|\/\*[\s\S]*?\*\//g;
// A statement starts its line, which keeps texts that speak of imports out.
const fromClause = /^[ \t]*(?:import|export)\s+(type\s+)?([\w$*{}\s,]*?)\s*\bfrom\s*['"]([^'"]+)['"]/gm;
const bareImport = /^[ \t]*import\s*['"]([^'"]+)['"]/gm;
const lazyImport = /\bimport\s*\(\s*['"]([^'"]+)['"]\s*\)/g;
const workerAddress = /\bnew URL\(\s*['"](\.[^'"]+)['"]\s*,\s*import\.meta\.url/g;

export function importsOf(source: string): Import[] {
  const code = withoutComments(source);
  const found: Import[] = [];
  for (const [, type, names, to] of code.matchAll(fromClause)) {
    found.push({ to: to!, kind: type || onlyTypes(names!) ? 'type' : 'value' });
  }
  for (const [, to] of code.matchAll(bareImport)) found.push({ to: to!, kind: 'value' });
  for (const pattern of [lazyImport, workerAddress]) {
    for (const [, to] of code.matchAll(pattern)) found.push({ to: to!, kind: 'lazy' });
  }
  return found;
}

export function withoutComments(source: string): string {
  return source.replace(textOrComment, (_, text?: string) => text ?? ' ');
}

export function withoutCommentsAndTexts(source: string): string {
  return source.replace(textOrComment, (_, text?: string) => (text ? "''" : ' '));
}

/** `{ type A, type B }` leaves nothing behind when it runs. */
function onlyTypes(names: string): boolean {
  const listed = /^\{([^}]*)\}$/.exec(names.trim())?.[1];
  const each = listed
    ?.split(',')
    .map((n) => n.trim())
    .filter(Boolean);
  return each !== undefined && each.length > 0 && each.every((n) => n.startsWith('type '));
}
