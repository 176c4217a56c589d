/** What pnpm says where the registry has no such service or cannot be reached. */
const noAnswer =
  /ERR_PNPM_AUDIT_(BAD_RESPONSE|ENDPOINT_NOT_EXISTS)|ERR_PNPM_META_FETCH_FAIL|ERR_PNPM_FETCH_\d|\b(ENOTFOUND|ECONNREFUSED|ECONNRESET|ETIMEDOUT|EAI_AGAIN|ENETUNREACH)\b|fetch failed/;

/**
 * What an audit came to, by pnpm's exit code and words. Whatever is neither a clean end nor plainly no answer counts as
 * unsafe, so that nothing passes by being misunderstood.
 */
export function auditVerdict(exitCode, said) {
  if (exitCode === 0) return "clean";
  return noAnswer.test(said) ? "no-answer" : "unsafe";
}
