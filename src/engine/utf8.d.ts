// The engine is compiled without DOM types. UTF-8 is the one platform service it may use: it is pure, and every
// browser and Node have it. The compiler for the rest of the house leaves this file out, since the DOM types say the same.

declare class TextEncoder {
  encode(text?: string): Uint8Array<ArrayBuffer>;
}

declare class TextDecoder {
  constructor(label?: 'utf-8', options?: { fatal?: boolean; ignoreBOM?: boolean });
  decode(bytes?: Uint8Array): string;
}
