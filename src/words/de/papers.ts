import type { papers as english } from '../en/papers';
import type { Same } from '../tongue';
