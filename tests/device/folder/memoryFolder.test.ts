import { describe } from 'vitest';
import { memoryFolder } from '../../../src/device/folder';
import { folderContract } from './contract';

describe('a folder in memory', () => folderContract(memoryFolder));
