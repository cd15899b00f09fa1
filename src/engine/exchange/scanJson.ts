import type { Reason } from '../record';
import { limits } from './limits';
import { because, quoted } from './reasonCodes';

/** Names that reach into how objects are made: no field of ours is called so, and none is taken. */
const notAllowed = new Set(['__proto__', 'constructor', 'prototype']);

/** One open object or array: the names it has so far, or the place in the array; and where in the text we stand. */
interface Open {
  readonly names: Set<string> | null;
  at: string | number;
  /** The next text is a name, not a value. */
  nameNext: boolean;
}

const pathOf = (stack: readonly Open[]): string =>
  stack
    .map(({ at }) => (typeof at === 'number' ? `[${at}]` : at === '' ? '' : `.${quoted(at)}`))
    .join('')
    .replace(/^\./, '');

const code = (char: string): number => char.charCodeAt(0);
const quote = code('"');
const backslash = code('\\');
const brace = { open: code('{'), close: code('}') };
const bracket = { open: code('['), close: code(']') };
const comma = code(',');
const minus = code('-');
const isDigit = (c: number): boolean => c >= 48 && c <= 57;

/** The index just after the closing quotation mark, or -1 where the text ends first. */
const endOfText = (text: string, start: number): number => {
  for (let i = start + 1; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === backslash) i++;
    else if (c === quote) return i + 1;
  }
  return -1;
};

const numberAt = /-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/y;

const numberProblem = (found: string, stack: readonly Open[]): Reason | undefined => {
  const value = Number(found);
  const place = () => ({ where: pathOf(stack), found: quoted(found) });
  if (!Number.isFinite(value)) return because('number too large', place());
  return Number.isInteger(value) && !Number.isSafeInteger(value) ? because('number not exact', place()) : undefined;
};

/** The text between quotation marks as it is meant; undefined where it is no JSON text (the parser says so later). */
const meant = (token: string): string | undefined => {
  if (!token.includes('\\')) return token.slice(1, -1);
  try {
    return JSON.parse(token) as string;
  } catch {
    return undefined;
  }
};

/**
 * Goes once over JSON text, without recursion, before it is parsed: what a parser would let pass in silence (a name twice, half a
 * character, a number it cannot hold, names that reach into the machinery) or choke on (100,000 brackets) is found here.
 * Gives the first problem, or undefined. Whether the text is JSON at all is left to the parser, except for an end in the middle.
 */
export const scanJson = (text: string): Reason | undefined => {
  const stack: Open[] = [];
  for (let i = 0; i < text.length; ) {
    const c = text.charCodeAt(i);
    const top = stack[stack.length - 1];
    if (c === quote) {
      const end = endOfText(text, i);
      if (end < 0) return because('file cut off');
      const problem = textProblem(text, i, end, stack);
      if (problem) return problem;
      i = end;
      continue;
    }
    if (c === brace.open || c === bracket.open) {
      if (stack.length >= limits.depth) return because('nested too deep', { where: pathOf(stack), most: limits.depth });
      const object = c === brace.open;
      stack.push({ names: object ? new Set() : null, at: object ? '' : 0, nameNext: object });
    } else if (c === brace.close || c === bracket.close) {
      stack.pop();
    } else if (c === comma && top) {
      if (top.names) top.nameNext = true;
      else top.at = (top.at as number) + 1;
    } else if (c === minus || isDigit(c)) {
      numberAt.lastIndex = i;
      const found = numberAt.exec(text)?.[0];
      if (found) {
        const problem = numberProblem(found, stack);
        if (problem) return problem;
        i += found.length;
        continue;
      }
    }
    i++;
  }
  return stack.length > 0 ? because('file cut off') : undefined;
};

const textProblem = (text: string, start: number, end: number, stack: readonly Open[]): Reason | undefined => {
  const top = stack[stack.length - 1];
  const isName = top?.names && top.nameNext;
  const token = text.slice(start, end);
  if (token.length - 2 > limits.text) return because('text too long', { where: pathOf(stack), most: limits.text });
  const value = meant(token);
  if (value === undefined) return undefined;
  if (isName) {
    top.nameNext = false;
    const above = pathOf(stack.slice(0, -1));
    if (notAllowed.has(value)) return because('name not allowed', { where: above, found: value });
    if (top.names?.has(value)) return because('same name twice', { where: above, found: quoted(value) });
    top.names?.add(value);
    top.at = value;
  }
  // Raw text is sound UTF-8 already, so half a character can only come from an escape.
  if (token.includes('\\') && /\p{Surrogate}/u.test(value))
    return because('broken character', { where: pathOf(stack) });
  return undefined;
};
