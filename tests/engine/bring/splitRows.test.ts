import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { splitRows } from '../../../src/engine/bring';

const cells = (text: string) => splitRows(text).rows.map((row) => row.cells);

describe('Parting a list into rows', () => {
  it('follows RFC 4180: commas, line breaks and doubled marks inside quotation marks (seen)', () => {
    expect(cells('aaa,"b\r\nbb","c,c"\r\nzzz,"y""y",xxx')).toEqual([
      ['aaa', 'b\r\nbb', 'c,c'],
      ['zzz', 'y"y', 'xxx'],
    ]);
  });

  it('takes lines that end in CR LF, LF or CR, and a last line without an end', () => {
    for (const end of ['\r\n', '\n', '\r'])
      expect(cells(`a,b${end}1,2${end}3,4`), JSON.stringify(end)).toEqual([
        ['a', 'b'],
        ['1', '2'],
        ['3', '4'],
      ]);
  });

  it.each([',', ';', '\t', '|'])('finds out that %j parts the cells', (delimiter) => {
    const text = [
      ['Work', 'Date', 'By'],
      ['Heron, small; old', '2019', 'x'],
      ['Deer', 'spring 2020', ''],
    ]
      .map((row) => row.map((cell) => `"${cell}"`).join(delimiter))
      .join('\n');
    expect(splitRows(text)).toMatchObject({ delimiter });
    expect(cells(text)[1]).toEqual(['Heron, small; old', '2019', 'x']);
  });

  it('is not led astray by commas of decimals and of text where semicolons part the cells', () => {
    expect(splitRows('Werk;Fläche;Datum\nHeron;1,5;12.5.2019\nDeer;2,25;13.5.2019').delimiter).toBe(';');
  });

  it('passes over a mark of the encoding, a line "sep=;" and blank rows, and still counts the lines as the file does', () => {
    const { rows } = splitRows('\ufeffsep=;\r\na;b\r\n\r\n;\r\n"x\r\ny";2\r\nlast;3\r\n');
    expect(rows.map(({ line, cells: [first] }) => [line, first])).toEqual([
      [2, 'a'],
      [5, 'x\r\ny'],
      [7, 'last'],
    ]);
  });

  it('keeps a mark inside a bare cell: 4" nails', () => {
    expect(cells('nails 4",x\nplain,y')).toEqual([
      ['nails 4"', 'x'],
      ['plain', 'y'],
    ]);
  });

  it('says in which line a quotation mark opens that is never closed', () => {
    expect(splitRows('a,b\n1,"two\n3,4\n').unclosed).toBe(2);
    expect(splitRows('a,b\n1,"two"\n').unclosed).toBeUndefined();
  });

  it('gives back the cells of any list another program has written', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', 'ä', ',', ';', '"', '\n', '\r', ' ', '7', '😀') });
    const list = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(list, fc.constantFrom(',' as const, ';' as const, '\t' as const), (rows, delimiter) => {
        const filled = rows.filter((row) => row.some((c) => c.trim() !== ''));
        const text = Papa.unparse(filled, { delimiter, quotes: true });
        expect(splitRows(text, delimiter).rows.map((row) => row.cells)).toEqual(filled);
      }),
      { seed: 20191, numRuns: 2000 },
    );
  });
});
