import { expect, test } from 'vitest';
import { houseAt } from './layers/house';
import { importsOf } from './layers/imports';
import { faultsIn } from './layers/rules';

test('every file imports only what its floor may, through doors, without circles, clock or network in the engine', () => {
  expect(faultsIn(houseAt('src'))).toEqual([]);
});

const sound = {
  'engine/trade/index.ts': "export { kinds } from './kinds';",
  'engine/trade/kinds.ts':
    '// new Date() and fetch() in a comment, and "Date.now" in a text\nexport const kinds = ["Date.now"];',
  'engine/record/index.ts': "import { kinds } from '../trade';\nexport const window = { document: kinds };",
  'engine/record/schemas.ts': "import { z } from 'zod';\nexport const body = z.string();",
  'engine/exchange/index.ts': "import { body } from '../record/schemas';\nexport const read = body;",
  'device/clock.ts': 'export const now = () => Date.now();',
  'device/store/index.ts': "import Dexie from 'dexie';\nimport { now } from '../clock';\nexport default [Dexie, now];",
  'actions/index.ts': "export { startRound } from './round';\nexport type { Desk } from './desk';",
  'actions/desk.ts': "import store from '../device/store';\nexport interface Desk { store: typeof store }",
  'actions/round/index.ts': "import type { Desk } from '../desk';\nexport const startRound = (d: Desk) => d;",
  'screens/round/Round.tsx': "import { startRound } from '../../actions';\nexport const Round = () => startRound;",
  'screens/shell/routes.tsx':
    "import { lazy } from 'react';\nexport const round = lazy(() => import('../round/Round'));",
};

test('a sound house has no fault', () => {
  expect(faultsIn(new Map(Object.entries(sound)))).toEqual([]);
});

test.each<[promise: string, planted: Record<string, string>, fault: string]>([
  ['an import upwards', { 'engine/trade/kinds.ts': "import '../../actions';" }, 'engine/trade may not import actions'],
  [
    'an import between engine folders',
    { 'engine/trade/kinds.ts': "import type { A } from '../record';" },
    'engine/trade may not import engine/record',
  ],
  [
    'a screen on the store',
    { 'screens/round/Round.tsx': "import s from '../../device/store';" },
    'may not import device/store',
  ],
  [
    'a screen on a screen',
    { 'screens/carry/Carry.tsx': "import { Round } from '../round/Round';" },
    'may not import screens/round',
  ],
  [
    'a page in the start code',
    { 'screens/shell/routes.tsx': "import { Round } from '../round/Round';" },
    'may not import screens/round',
  ],
  [
    'words in a deed',
    { 'actions/desk.ts': "import { w } from '../words';", 'words/index.ts': '' },
    'actions may not import words',
  ],
  [
    'an import past a door',
    { 'actions/desk.ts': "import { k } from '../engine/trade/kinds';" },
    'past the door of engine/trade',
  ],
  [
    'a lazy import past a door',
    { 'actions/desk.ts': "void import('../engine/trade/kinds');" },
    'past the door of engine/trade',
  ],
  [
    'a door passed inside actions',
    { 'screens/round/Round.tsx': "import type { Desk } from '../../actions/desk';" },
    'past the door of actions',
  ],
  [
    'a door passed between deeds',
    { 'actions/carry/index.ts': "import { r } from '../round/round';", 'actions/round/round.ts': '' },
    'past the door of actions/round',
  ],
  ['Dexie outside the store', { 'actions/desk.ts': "import Dexie from 'dexie';" }, 'dexie is not at home in actions'],
  [
    'React outside the screens',
    { 'actions/desk.ts': "import { useState } from 'react';" },
    'react is not at home in actions',
  ],
  ['a package nobody owns', { 'screens/round/Round.tsx': "import _ from 'lodash/get';" }, 'lodash/get is not at home'],
  ['a circle', { 'engine/trade/kinds.ts': "import { kinds } from '.';" }, 'a circle'],
  [
    'the clock in the engine',
    { 'engine/trade/kinds.ts': 'export const at = new Date(2026, 1, 1);' },
    'knows no new Date(',
  ],
  ['chance in the engine', { 'engine/trade/kinds.ts': 'export const x = Math.random();' }, 'knows no Math.random'],
  ['the network in the engine', { 'engine/trade/kinds.ts': "export const x = () => fetch('/x');" }, 'knows no fetch'],
  ['the page in the engine', { 'engine/trade/kinds.ts': 'export const x = () => window.name;' }, 'knows no window'],
  ['a folder the table does not know', { 'engine/tides/index.ts': '' }, 'engine/tides is not in tests/layers/table.ts'],
  ['a folder of device the table does not know', { 'device/radio/index.ts': '' }, 'device/radio is not in'],
  ['a folder whose name says nothing', { 'actions/utils/index.ts': '' }, 'a folder called utils'],
  ['a file of 301 lines', { 'actions/desk.ts': 'x\n'.repeat(301) }, '301 lines, 300 is the ceiling'],
  ['an import of what is not there', { 'actions/desk.ts': "import { x } from './gone';" }, 'there is no such file'],
])('%s is found', (_, planted, fault) => {
  const found = faultsIn(new Map(Object.entries({ ...sound, ...planted })));
  expect(found.filter((f) => f.includes(fault))).toHaveLength(1);
});

test('the scanner tells values, types and lazy imports apart, and is not fooled by comments', () => {
  const source = `
    import { a, type B } from './a';
    import type { C } from './c';
    import { type D, type E } from './d';
    export * from './e';
    export type * from './f';
    import './g';
    // import './not';
    const text = "import x from './neither'";
    const page = () => import('./h');
    const worker = new Worker(new URL('./i.ts', import.meta.url));`;
  expect(importsOf(source).map((i) => `${i.kind} ${i.to}`)).toEqual([
    'value ./a',
    'type ./c',
    'type ./d',
    'value ./e',
    'type ./f',
    'value ./g',
    'lazy ./h',
    'lazy ./i.ts',
  ]);
});
