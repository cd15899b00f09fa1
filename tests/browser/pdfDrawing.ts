import { inflateSync } from 'node:zlib';

/** A filled rectangle on paper; millimetres from the left and lower edge of the sheet, and its colour from 0 to 1. */
export interface Filled {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill: readonly number[];
}

export interface SheetDrawn {
  readonly width: number;
  readonly height: number;
  readonly filled: readonly Filled[];
}

const millimetre = 72 / 25.4;

/**
 * What Chromium drew on each sheet of a PDF: sizes of sheets, and rectangles filled, read from the page's own drawing (ISO 32000-1,
 * 8.3.4 coordinates, 8.5.2 paths). Only what Chromium writes is read; another writer's PDF may say the same otherwise.
 */
export const sheetsOf = (pdf: Buffer): SheetDrawn[] => {
  const text = pdf.toString('latin1');
  const boxes = [...text.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)];
  const drawings = streamsOf(pdf, text).filter((drawing) => /\bre\b/.test(drawing) && /\bcm\b/.test(drawing));
  if (boxes.length !== drawings.length)
    throw new Error(`The PDF has ${boxes.length} sheets and ${drawings.length} drawings.`);
  return boxes.map(([, width, height], i) => ({
    width: Number(width) / millimetre,
    height: Number(height) / millimetre,
    filled: filledIn(drawings[i] ?? ''),
  }));
};

const streamsOf = (pdf: Buffer, text: string): string[] =>
  [...text.matchAll(/FlateDecode[\s\S]*?stream\r?\n/g)].flatMap((start) => {
    const from = start.index + start[0].length;
    try {
      return [inflateSync(pdf.subarray(from, text.indexOf('endstream', from))).toString('latin1')];
    } catch {
      return [];
    }
  });

/** Only scaling and moving: a card that was turned would be a fault of its own. */
interface State {
  readonly scale: readonly [number, number];
  readonly shift: readonly [number, number];
  readonly fill: readonly number[];
}

const filledIn = (drawing: string): Filled[] => {
  const found: Filled[] = [];
  const stack: State[] = [];
  let state: State = { scale: [1, 1], shift: [0, 0], fill: [0, 0, 0] };
  let pending: Filled[] = [];
  let numbers: number[] = [];
  for (const word of drawing.split(/\s+/)) {
    const value = Number(word);
    if (word !== '' && !Number.isNaN(value)) {
      numbers.push(value);
      continue;
    }
    if (word === 'q') stack.push(state);
    if (word === 'Q') state = stack.pop() ?? state;
    if (word === 'cm') state = within(state, numbers);
    if (word === 'rg') state = { ...state, fill: numbers.slice(-3) };
    if (word === 're') pending.push(onPaper(state, numbers));
    if (word === 'f' || word === 'f*') found.push(...pending);
    if (word === 'f' || word === 'f*' || word === 'n') pending = [];
    numbers = [];
  }
  return found;
};

const within = ({ scale, shift, fill }: State, [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]: number[]): State => {
  if (b !== 0 || c !== 0) throw new Error('The drawing is turned.');
  return {
    scale: [scale[0] * a, scale[1] * d],
    shift: [shift[0] + scale[0] * e, shift[1] + scale[1] * f],
    fill,
  };
};

const onPaper = ({ scale, shift, fill }: State, [x = 0, y = 0, width = 0, height = 0]: number[]): Filled => {
  const ends = (from: number, size: number, axis: 0 | 1) =>
    [from, from + size].map((at) => (shift[axis] + scale[axis] * at) / millimetre).sort((p, q) => p - q);
  const [left = 0, right = 0] = ends(x, width, 0);
  const [low = 0, high = 0] = ends(y, height, 1);
  return { x: left, y: low, width: right - left, height: high - low, fill };
};
