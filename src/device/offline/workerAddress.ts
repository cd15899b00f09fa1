/** The part of Trusted Types used here; TypeScript's DOM types do not know it yet. */
interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL(address: string): string },
  ): { createScriptURL(address: string): string };
}

/**
 * The page's policy lets only addresses that went through here start a worker, so that no text a person or a file
 * brings can become one. `address` must lie beside the page.
 */
export function workerAddress(address: string): string {
  return policy().createScriptURL(address);
}

let made: ReturnType<TrustedTypes['createPolicy']> | undefined;

function policy() {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  made ??= trustedTypes
    ? trustedTypes.createPolicy('own-workers', { createScriptURL: ownOnly })
    : { createScriptURL: ownOnly };
  return made;
}

function ownOnly(address: string): string {
  if (new URL(address, location.href).origin !== location.origin)
    throw new Error(`Not one of our own workers: ${address}`);
  return address;
}
