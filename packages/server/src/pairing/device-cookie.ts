const name = "ferrule-device";
/** The longest that browsers keep a cookie (RFC 6265bis, 5.5): 400 days. */
const longestS = 400 * 86_400;

/** The token in a Cookie header. */
export function tokenFrom(cookies: string | undefined): string | undefined {
  const pairs = (cookies ?? "").split(";").map((each) => each.trim());
  return pairs.find((each) => each.startsWith(`${name}=`))?.slice(name.length + 1);
}

/** Sends the token back to this server only, and never to a script or for another site; over HTTPS only where it came by HTTPS. */
export function deviceCookie(token: string, isEncrypted: boolean): string {
  const secure = isEncrypted ? "; Secure" : "";
  return `${name}=${token}; Path=/; Max-Age=${longestS}; HttpOnly; SameSite=Strict${secure}`;
}
