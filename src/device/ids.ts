import { v7 } from 'uuid';

/** UUIDv7, rising within this page. Works at insecure addresses too, where crypto.randomUUID is missing. */
export const newId = (): string => v7();
