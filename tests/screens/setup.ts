import '../../src/words/pastStart';
import { cleanup, configure } from '@testing-library/react';
import { afterEach } from 'vitest';

// A busy machine must not fail a promise: a screen may take its time to answer.
configure({ asyncUtilTimeout: 15_000 });

afterEach(cleanup);
