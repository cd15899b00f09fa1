import { z } from './zod';

/** The sorts of value bodies are made of, each with its bounds. */
export const text = (most: number, least = 0) =>
  least > 0 ? z.string().check(z.minLength(least), z.maxLength(most)) : z.string().check(z.maxLength(most));

export const pattern = (expression: RegExp, most?: number) =>
  most === undefined ? z.string().check(z.regex(expression)) : z.string().check(z.maxLength(most), z.regex(expression));

export const whole = (least: number, most?: number) =>
  most === undefined ? z.int().check(z.gte(least)) : z.int().check(z.gte(least), z.lte(most));

export const number = (least: number, most?: number) =>
  most === undefined ? z.number().check(z.gte(least)) : z.number().check(z.gte(least), z.lte(most));

/** Above nought. */
export const positive = (most?: number) =>
  most === undefined ? z.number().check(z.positive()) : z.number().check(z.positive(), z.lte(most));

export const listOf = <T extends z.core.SomeType>(each: T, least: number, most?: number) => {
  const list = z.array(each);
  if (least > 0 && most !== undefined) return list.check(z.minLength(least), z.maxLength(most));
  return most === undefined ? list.check(z.minLength(least)) : list.check(z.maxLength(most));
};

/** A share, 0 to 1. */
export const fraction = number(0, 1);

/** A field that need not be there. */
export const maybe = z.optional;

export const note = maybe(text(4000));
