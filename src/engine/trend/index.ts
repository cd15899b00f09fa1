/** Whether a series rises or falls over the years, how fast, and how far it may be carried on. */
export { type MannKendall, mannKendall, varianceOfS } from './mannKendall';
export { type Point, type TheilSen, theilSen } from './theilSen';
