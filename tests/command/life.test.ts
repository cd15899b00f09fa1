import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/command/runCommand';

const run = (csv: string | Uint8Array) =>
  runCommand(['life', 'lives.csv'], () => (typeof csv === 'string' ? new TextEncoder().encode(csv) : csv));
const groupsOf = (csv: string) => {
  const { code, out, err } = run(csv);
  expect([code, err]).toEqual([0, '']);
  expect(out).not.toMatch(/NaN|Infinity/);
  return JSON.parse(String(out)).groups;
};

describe('survey life', () => {
  it('prints steps and curve of each group, as the published data have them', () => {
    const { code, out } = run(readFileSync(join(import.meta.dirname, '../files/cosmesis.csv')));
    expect(code).toBe(0);
    const { groups } = JSON.parse(String(out));
    expect(groups.map(({ group, n }: { group: string; n: number }) => [group, n])).toEqual([
      ['1', 46],
      ['2', 49],
    ]);
    expect(groups[0].turnbull.at(-1)).toEqual({ left: 46, right: 48, mass: expect.closeTo(0.465558, 5) });
    expect(groups[1].turnbull).toContainEqual({ left: 34, right: 34, mass: expect.closeTo(0.100651, 5) });
    expect(groups[0].weibull).toEqual({
      shape: { value: expect.closeTo(1.12041, 5), low: expect.closeTo(0.76795, 3), high: expect.closeTo(1.55728, 3) },
      scale: { value: expect.closeTo(57.52453, 4), low: expect.any(Number), high: expect.any(Number) },
      median: { value: expect.closeTo(41.47487, 4), low: expect.closeTo(30.5921, 3), high: expect.closeTo(61.6564, 3) },
      logLikelihood: expect.closeTo(-64.59213928, 6),
    });
  });

  it('takes columns in any order, a mark at the start of the file, other line ends, quotes, semicolons and decimal commas', () => {
    const plain = groupsOf('lower,upper,group\n1.5,2,"a, b"\n3,,"a, b"\n');
    expect(groupsOf('\ufeffgroup;Upper;Lower\r\n"a, b";2;1,5\r\n"a, b";;3\r\n')).toEqual(plain);
    expect(plain[0].group).toBe('a, b');
    expect(groupsOf('lower,upper\n1.5,2\n3,\n\n')[0]).toEqual({ ...plain[0], group: '' });
  });

  it('reads an empty lower end as 0, and gives the mass past all looks an open end', () => {
    expect(groupsOf('lower,upper\n,5\n4,\n9,\n')).toEqual(groupsOf('lower,upper\n0,5\n4,\n9,\n'));
    expect(groupsOf('lower,upper\n1,2\n4,\n')[0].turnbull.at(-1)).toEqual({ left: 4, right: null, mass: 0.5 });
  });

  it.each([
    ['nothing seen to end', '4,\n5,\n', /seen to end/],
    ['nothing known at all', '0,\n0,\n', /seen to end/],
    ['all over at the first look', '0,5\n,4\n', /over at the first look/],
    ['one interval', '3,5\n', /One interval alone/],
    ['identical intervals', '3,5\n3,5\n3,5\n', /no maximum/],
    ['one time only, seen happen', '4,4\n4,4\n', /no maximum/],
    ['a moment that suits all', '0,5\n2,9\n4,\n', /no maximum/],
    ['over before, lasting after', '0,5\n10,\n', /no maximum/],
  ])('gives no curve but the reason: %s', (_, rows, why) => {
    const [group] = groupsOf(`lower,upper\n${rows}`);
    expect(group.weibull).toBeNull();
    expect(group.reason).toMatch(why);
    expect(group.turnbull.reduce((sum: number, m: { mass: number }) => sum + m.mass, 0)).toBeCloseTo(1, 9);
  });

  it.each([
    ['', /no column “lower” and no column “upper”\. It is empty/],
    ['from,to\n1,2\n', /names “from”, “to”\. Write a first line/],
    ['lower,upper\n', /no row/],
    ['group;lower;upper\na;1.500;2000\n', /Line 2: the lower end “1.500” can be read two ways/],
    ['lower,upper\n1,2\nx,3\n', /Line 3: the lower end “x” is no number/],
    ['lower,upper\n1,2e999\n', /Line 2: the upper end “2e999” is no number/],
    ['lower,upper\n-1,2\n', /Line 2: the lower end -1 is under 0/],
    ['lower,upper\n5,2\n', /Line 2: the lower end 5 is over the upper end 2/],
    ['lower,upper\n0,0\n', /Line 2: both ends are 0/],
    ['lower,upper\n1,2\n1,5,2\n', /Line 3: there are 3 cells under 2 columns\. .*decimal/],
    ['lower,upper,group\n1,2,"a\n3,4,b\n', /Line 2: a quotation mark is opened and never closed/],
    ['lower,upper,Upper\n1,2,3\n', /names “upper” twice/],
    ['lower,upper\n1,1e40\n', /Line 2: the upper end 1e40 is beyond .*another unit/],
    ['lower,upper\n1e-40,1\n', /Line 2: the lower end 1e-40 is beyond .*another unit/],
  ])('says what is wrong, where, and what to do: %j', (csv, said) => {
    const { code, out, err } = run(csv);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(said);
  });

  it('says which columns it does not read', () => {
    const { code, err } = run('lower,upper,treat\n1,2,x\n4,,y\n');
    expect([code, err]).toEqual([0, 'Not read: “treat”. Only lower, upper and group are.']);
  });

  it('takes ten thousand intervals', () => {
    let state = 1;
    const uniform = () => {
      state = (state * 16807) % 2147483647;
      return state / 2147483647;
    };
    const rows = Array.from({ length: 10_000 }, () => {
      const t = 10 * (-Math.log(uniform())) ** (1 / 1.5);
      const end = uniform() < 0.2 ? '' : (t + 4 * uniform()).toFixed(3);
      return `${Math.max(0, t - 3 * uniform()).toFixed(3)},${end}`;
    });
    const [group] = groupsOf(`lower,upper\n${rows.join('\n')}\n`);
    expect(group.n).toBe(10_000);
    expect(group.weibull.shape.value).toBeGreaterThan(1.4);
    expect(group.weibull.shape.value).toBeLessThan(1.7);
  });
});
