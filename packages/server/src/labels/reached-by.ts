import type { NetworkPlace } from "../network/network-place.ts";

const loopback = /^(localhost|127(\.\d+){3}|\[?::1\]?)$/;

/**
 * The address that another device can open: the one on the local network where there is one, else the one that the request came
 * by, unless only this machine knows it by that. Null where no other device could follow it.
 */
export function reachedBy(
  request: { readonly protocol: string; readonly host: string; readonly hostname: string },
  network: NetworkPlace | undefined,
): string | null {
  const [url] = network?.urls() ?? [];
  if (url !== undefined) return url;
  return loopback.test(request.hostname) ? null : `${request.protocol}://${request.host}`;
}
