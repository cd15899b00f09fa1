import { describe, expect, it } from 'vitest';
import { because, conditionReasons, constants } from '../../../src/engine/condition';

const sources = import.meta.glob<string>('../../../src/engine/condition/*.ts', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const text = Object.entries(sources)
  .filter(([path]) => !path.endsWith('reasonCodes.ts'))
  .map(([, source]) => source)
  .join('\n');

describe('reason codes', () => {
  it('are all given somewhere: a sentence nobody can meet is not asked for', () => {
    const unused = Object.keys(conditionReasons).filter((code) => !text.includes(`'${code}'`));
    expect(unused).toEqual([]);
  });

  it('carry the parameters they promise', () => {
    expect(because('class: stop word', { kind: 'pits-new' })).toEqual({
      code: 'class: stop word',
      params: { kind: 'pits-new' },
    });
    expect(because('class: no finding')).toEqual({ code: 'class: no finding', params: {} });
  });
});

describe('constants', () => {
  it('each say what they are and where they come from', () => {
    for (const [name, { what, source }] of Object.entries(constants)) {
      expect(what, name).not.toBe('');
      expect(source.text, name).not.toBe('');
    }
  });
});
