import { format } from 'node:util';
import { afterEach, beforeEach, expect, vi } from 'vitest';

// A warning nobody reads is a fault nobody mends: whatever is written to the console fails the test that wrote it.
const written: string[] = [];

beforeEach(() => {
  written.length = 0;
  for (const method of ['debug', 'log', 'info', 'warn', 'error'] as const) {
    vi.spyOn(console, method).mockImplementation((...args: unknown[]) => {
      written.push(`console.${method}: ${format(...args)}`);
    });
  }
});

afterEach(() => {
  vi.restoreAllMocks();
  expect(written, 'a test must leave the console silent').toEqual([]);
});
