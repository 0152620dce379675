// Trusted Types (W3C), which not every browser has.
interface TrustedTypes {
  createPolicy(name: 'default', rules: { createScriptURL(address: string): string }): unknown;
}

/**
 * Lets scripts and workers come from this app's own address alone; the page's policy lets no other way of making one, and no markup
 * out of text. Called once, before anything else.
 */
export function trustOwnScripts(): void {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  trustedTypes?.createPolicy('default', {
    createScriptURL(address) {
      if (new URL(address, location.href).origin !== location.origin)
        throw new TypeError(`A script from elsewhere is not run: ${address}`);
      return address;
    },
  });
}
