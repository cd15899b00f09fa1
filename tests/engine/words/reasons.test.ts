import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inStepDeeds, inStepFaults, inStepRefusals } from '../../../src/actions/in-step/reasonCodes';
import { deedCodes, refusalCodes } from '../../../src/actions/reasonCodes';
import { roundDeedCodes, roundRefusalCodes } from '../../../src/actions/round/reasonCodes';
import { folderReasons } from '../../../src/device/folder';
import { deviceReasonCodes } from '../../../src/device/reasonCodes';
import { agreementReasons } from '../../../src/engine/agreement';
import { bagReasons } from '../../../src/engine/bag';
import { bringReasons } from '../../../src/engine/bring';
import { budgetReasons } from '../../../src/engine/budget';
import { campaignReasons } from '../../../src/engine/campaign';
import { careReasons } from '../../../src/engine/care';
import { changeReasons } from '../../../src/engine/change';
import { colourReasons } from '../../../src/engine/colour';
import { conditionReasons } from '../../../src/engine/condition';
import { exchangeReasons } from '../../../src/engine/exchange';
import { eyeReasons } from '../../../src/engine/eye';
import { firmnessReasons } from '../../../src/engine/firmness';
import { fundReasons } from '../../../src/engine/fund';
import { heatReasons } from '../../../src/engine/heat';
import { holdReasons } from '../../../src/engine/hold';
import { lifeReasons } from '../../../src/engine/life';
import { moneyReasons } from '../../../src/engine/money';
import { optionReasons } from '../../../src/engine/options';
import { siteReasons } from '../../../src/engine/site';
import { kinds } from '../../../src/engine/trade';
import { trendReasons } from '../../../src/engine/trend';
import { watchReasons } from '../../../src/engine/watch';
import { weatherReasons } from '../../../src/engine/weather';
import { yearReasons } from '../../../src/engine/year';
import '../../../src/words/pastStart';
import { deedNamed, sayReason, sentences } from '../../../src/words/en/reasons';
import { paramsOf } from '../../../src/words/en/sentence';

const lists: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  'engine/bag': bagReasons,
  'engine/bring': bringReasons,
  'engine/colour': colourReasons,
  'engine/condition': conditionReasons,
  'engine/care': careReasons,
  'engine/campaign': campaignReasons,
  'engine/change': changeReasons,
  'engine/exchange': exchangeReasons,
  'engine/firmness': firmnessReasons,
  'engine/eye': eyeReasons,
  'engine/life': lifeReasons,
  'engine/trend': trendReasons,
  'engine/year': yearReasons,
  'engine/watch': watchReasons,
  'engine/weather': weatherReasons,
  'engine/heat': heatReasons,
  'engine/hold': holdReasons,
  'engine/budget': budgetReasons,
  'engine/fund': fundReasons,
  'engine/money': moneyReasons,
  'engine/options': optionReasons,
  'engine/site': siteReasons,
  'engine/agreement': agreementReasons,
  device: deviceReasonCodes,
  'device/folder': folderReasons,
  'actions, refusals': refusalCodes,
  'actions, deeds': deedCodes,
  'actions/round, refusals': roundRefusalCodes,
  'actions/round, deeds': roundDeedCodes,
  'actions/in-step, refusals': inStepRefusals,
  'actions/in-step, faults': inStepFaults,
  'actions/in-step, deeds': inStepDeeds,
};
const all = Object.entries(lists).flatMap(([list, codes]) =>
  Object.entries(codes).map(([code, params]) => ({ list, code, params })),
);

/** A value every way of writing a parameter can take; a code in the place of a code. */
const sample = (params: readonly string[]): Record<string, string> =>
  Object.fromEntries(params.map((param) => [param, param === 'code' ? 'deed: place set' : '3']));

/** Parameters a sentence asks for, found by asking it. */
const askedBy = (code: string, params: Readonly<Record<string, string | number>>): Set<string> => {
  const asked = new Set<string>();
  const watched = new Proxy(params, {
    get: (target, key) => {
      asked.add(String(key));
      return target[String(key)];
    },
  });
  sentences[code]?.(paramsOf({ code, params: watched }));
  return asked;
};

describe('sentences of reasons', () => {
  it.each(all)('$list: "$code" has a sentence', ({ code, params }) => {
    expect(sentences[code], code).toBeTypeOf('function');
    const said = sayReason({ code, params: sample(params) });
    expect(said).not.toBe(code);
    expect(said.length).toBeGreaterThan(5);
    expect(said).not.toMatch(/undefined|NaN|\[object/);
  });

  it.each(all)('$list: the sentence of "$code" asks only for parameters its reason carries', ({ code, params }) => {
    const outside = [...askedBy(code, sample(params))].filter((param) => !params.includes(param));
    expect(outside).toEqual([]);
  });

  it('has no sentence for a code nobody gives, so that old words do not pile up', () => {
    const given = new Set(all.map(({ code }) => code).concat(codesInSource()));
    expect(Object.keys(sentences).filter((code) => !given.has(code))).toEqual([]);
  });

  it('ends every sentence that is not the name of a deed with a full stop', () => {
    const open = all
      .filter(({ code }) => !code.startsWith('deed: '))
      .filter(({ code, params }) => !/[.!?]$/.test(sayReason({ code, params: sample(params) })));
    expect(open.map(({ code }) => code)).toEqual([]);
  });

  it('names a kind of finding in words, never by its code', () => {
    const [kind] = kinds.filter(({ id, name }) => id !== name);
    const said = sayReason({ code: 'score: biggest loss', params: { kind: kind?.id ?? '', loss: 0.4 } });
    expect(said).toContain(kind?.name);
    expect(said).not.toContain(`“${kind?.id}”`);
  });

  it('never shows the inner name of a thing, even where the screen does not know it', () => {
    const thing = 'zone/01920000-0000-7000-8000-000000000000';
    const naming = ['zone', 'round', 'from', 'thing', 'insert'];
    for (const { code, params } of all) {
      const named = params.filter((param) => naming.includes(param));
      const given = { ...sample(params), ...Object.fromEntries(named.map((param) => [param, thing])) };
      expect(sayReason({ code, params: given }), code).not.toContain('01920000');
    }
  });

  it('uses what the screen calls a thing where it is told', () => {
    const params = { zone: 'zone/1', index: 40 };
    const said = sayReason({ code: 'score: weakest zone', params }, () => 'zone B, left arm');
    expect(said).toBe('The weakest zone is zone B, left arm, at 40.');
  });

  it('shows a code of a newer version as it came, never as nothing', () => {
    expect(sayReason({ code: 'something: of tomorrow', params: {} })).toBe('Something: of tomorrow');
  });

  it('names the deed that an undo took back', () => {
    expect(deedNamed({ code: 'deed: taken back', params: { code: 'deed: place set' } })).toBe('wrote the place');
  });
});

/** Codes written straight into a reason, outside any list. */
function codesInSource(): string[] {
  const files = (folder: string): string[] =>
    readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
      entry.isDirectory()
        ? files(join(folder, entry.name))
        : /\.tsx?$/.test(entry.name)
          ? [join(folder, entry.name)]
          : [],
    );
  const root = join(import.meta.dirname, '../../../src');
  return ['engine', 'actions', 'device'].flatMap((floor) =>
    files(join(root, floor)).flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/(?:code: |because\()'([^']+)'/g)].flatMap(([, code]) => code ?? []),
    ),
  );
}

it('has a sentence for every code written straight into a reason', () => {
  expect([...new Set(codesInSource())].filter((code) => !Object.hasOwn(sentences, code))).toEqual([]);
});
