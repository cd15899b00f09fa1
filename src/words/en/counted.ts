/** "1 line", "3 lines". */
export const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
