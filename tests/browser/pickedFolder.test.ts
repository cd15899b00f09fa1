import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { folderContract } from '../device/folder/contract';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { addFolderCode, folderInPage } from './folderInPage';
import { built, type Host, startHost } from './server';
import { watch } from './watch';

const app = mkdtempSync(join(tmpdir(), 'patina-round-picked-'));
let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];
let made = 0;

beforeAll(async () => {
  cpSync(built, app, { recursive: true });
  await addFolderCode(app);
  host = await startHost({ folder: app });
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
  rmSync(app, { recursive: true, force: true });
});

const another = () => {
  made += 1;
  return folderInPage(page, { own: `shared-${made}` });
};

describe('a folder the browser hands over, asked by a page of the app under its own policy', () => {
  folderContract(another);
  test('all of that breaks no rule of the page', () => expect(faults).toEqual([]));
});
