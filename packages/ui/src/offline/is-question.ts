/** What the page asks by POST because the question is long; judging is not among them, since it keeps a listing. */
const questions: ReadonlySet<string> = new Set([
  "/api/read",
  "/api/estimate",
  "/api/dimensions",
  "/api/tune",
  "/api/resale",
  "/api/plan",
  "/api/advert",
]);

/** Whether a call only asks and leaves the bench as it is. */
export function isQuestion(method: string, path: string): boolean {
  return method === "GET" || (method === "POST" && questions.has(path));
}
