import type {
  Build,
  Claim,
  Club,
  ClubDimensions,
  Estimates,
  Goal,
  Joint,
  NearMiss,
  Part,
  Question,
  Refusal,
  Resolution,
  TuneSolution,
  Want,
  WorkStep,
} from "@ferrule/core";
import type { From } from "./clash/clash.ts";
import { clashDesk } from "./clash/clash-desk.ts";
import { clashOf, mergedUnasked, sentAgain } from "./clash/clash-of.ts";
import type { DisplaySettings } from "./display-settings.ts";
import { live } from "./live/live.ts";
import { isQuestion } from "./offline/is-question.ts";
import { type LostCall, signal } from "./offline/signal.ts";
import { tagOf } from "./offline/tag-of.ts";
import type { Thing } from "./offline/waiting-change.ts";

/** The bench as it is kept. */
export interface Bench {
  readonly example: boolean;
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly claims: readonly Claim[];
  readonly goal: Goal;
  /** How many deletes can be undone. */
  readonly undo: number;
}

/** The answer for one part. */
export interface GoesWith {
  readonly part: Part;
  readonly clubs: readonly Club[];
  readonly nearMisses: readonly NearMiss[];
  readonly wants: readonly Want[];
  readonly questions: readonly Question[];
  readonly counts: Resolution["counts"];
}

/** Things a delete took away, or an undo brought back. */
export interface Held {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly claims: readonly Claim[];
}

/** One place in a file that was not taken. */
export interface RowRefusal {
  readonly line: number;
  readonly column: string;
  readonly got: string;
  readonly expected: string;
}

export interface ImportReply {
  readonly taken: number;
  readonly dryRun: boolean;
  readonly refused: readonly RowRefusal[];
}

export interface ImportRequest {
  readonly format: "csv" | "json";
  readonly text: string;
  readonly take: "good" | "all-or-none";
  readonly dryRun?: boolean;
  readonly existing?: "refuse" | "replace";
}

export interface TuneRequest {
  readonly head: Part;
  readonly adapter?: Part;
  readonly shaft: Part;
  readonly grip: Part;
  /** Whether the grip and the adapter are on the shaft already. */
  readonly gripped?: boolean;
  readonly bonded?: boolean;
  readonly build?: Build;
  readonly target: { playingLengthIn?: number; swingWeightPoints?: number };
  readonly options?: { readonly grips?: readonly Part[] };
}

/** The server said no, or could not be reached. `refusals` name the fields. */
export class ApiError extends Error {
  readonly code: string;
  readonly refusals: readonly Refusal[];
  /** All that the server said of it. */
  readonly details: Thing;

  constructor(code: string, message: string, refusals: readonly Refusal[] = [], details: Thing = {}) {
    super(message);
    this.code = code;
    this.refusals = refusals;
    this.details = details;
  }
}

/** Most clubs one answer brings to the page; the counts cover all. */
export const answerLimit = 1000;

const partPath = (id: string) => `/api/bench/parts/${encodeURIComponent(id)}`;
const claimPath = (id: string) => `/api/bench/claims/${encodeURIComponent(id)}`;

/** Every call the page makes. */
export const api = {
  bench: () => call<Bench>("GET", "/api/bench"),
  resolve: () => call<Resolution>("GET", `/api/bench/resolve?limit=${answerLimit}`),
  part: (id: string) => call<Part>("GET", partPath(id)),
  addPart: (part: unknown) => call<Part>("POST", "/api/bench/parts", part),
  changePart: (id: string, part: unknown, base?: Part) =>
    call<Part>("PUT", partPath(id), part, { from: base && { base } }),
  deletePart: (id: string, base?: Part) =>
    call<{ deleted: Held; undo: number }>("DELETE", partPath(id), undefined, { from: base && { base } }),
  goesWith: (id: string) => call<GoesWith>("GET", `${partPath(id)}/goes-with?limit=${answerLimit}`),
  addJoint: (joint: unknown) => call<Joint>("POST", "/api/bench/joints", joint),
  deleteJoint: (id: string, base?: Joint) =>
    call<{ deleted: Held; undo: number }>(
      "DELETE",
      `/api/bench/joints/${encodeURIComponent(id)}`,
      undefined,
      {
        from: base && { base },
      },
    ),
  addClaim: (claim: unknown) => call<Claim>("POST", "/api/bench/claims", claim),
  deleteClaim: (id: string, base?: Claim) =>
    call<{ deleted: Held; undo: number }>("DELETE", claimPath(id), undefined, { from: base && { base } }),
  undo: () => call<{ restored: Held; undo: number }>("POST", "/api/bench/undo"),
  startOwn: () => call<Bench>("POST", "/api/bench/start-own"),
  showExample: (confirm: boolean) => call<Bench>("POST", "/api/bench/example", confirm ? { confirm } : {}),
  goal: () => call<Goal>("GET", "/api/bench/goal"),
  /** Changes some of the goal as it was seen. */
  changeGoal: (change: Partial<Goal>, base: Goal) =>
    call<Goal>("PUT", "/api/bench/goal", { ...base, ...change }, { from: { base, merges: true } }),
  settings: () => call<DisplaySettings>("GET", "/api/settings"),
  changeSettings: (settings: Partial<DisplaySettings>, base?: DisplaySettings) =>
    call<DisplaySettings>("PUT", "/api/settings", settings, {
      from: base && { base, sendsFields: true, merges: true },
    }),
  importFile: (request: ImportRequest) => call<ImportReply>("POST", "/api/bench/import", request),
  tune: (request: TuneRequest) => call<TuneReply>("POST", "/api/tune", request),
  estimate: (request: Omit<TuneRequest, "target" | "options">) =>
    call<Estimates>("POST", "/api/estimate", request),
  dimensions: (request: Omit<TuneRequest, "target" | "options">) =>
    call<ClubDimensions>("POST", "/api/dimensions", request),
};

/** The ways to a target, the smallest change first. */
export interface TuneReply {
  readonly before: Estimates;
  readonly solutions: readonly TuneSolution[];
  /** Of every step that one of the ways takes. */
  readonly cautions: WorkStep["cautions"];
}

/** How a call is made. */
export interface Asking {
  readonly signal?: AbortSignal;
  /** The version that a change was made from: it is refused where the bench has another by now. */
  readonly from?: From | undefined;
}

/** What the code of an `ApiError` is where a person chose to leave what somebody else made of it meanwhile. */
export const tookTheirs = "took-theirs";

/**
 * Asks the bench for one thing; without a signal, what is kept here answers. Whatever goes wrong comes as an `ApiError`. Where
 * the bench has another version than the change was made from, a person is asked, and it is sent again as they say.
 */
export async function call<T>(method: string, path: string, body?: unknown, asking: Asking = {}): Promise<T> {
  const { signal: given, from } = asking;
  // The same key when it is sent again, so that what reached the bench without an answer is not done twice.
  const key = newKey();
  const tag = from && (await versionOf(from));
  const ended = isQuestion(method, path) ? undefined : live.sending();
  const reply = signal.state.isLost ? undefined : await send(method, path, body, { key, tag, given });
  ended?.(reply?.ok ?? false);
  if (reply === undefined) return withoutSignal<T>({ method, path, body, key, before: from?.base as Thing });
  const answer: unknown = await reply.json().catch(() => undefined);
  if (reply.ok) {
    if (method === "GET") signal.saw(path, answer);
    if (!isQuestion(method, path)) signal.changed();
    return answer as T;
  }
  const error = errorOf(reply, answer);
  const present = from && presentIn(error, method, from);
  if (from && present !== undefined) return settled<T>({ method, path, body }, from, present, error);
  throw error;
}

function errorOf({ status }: Response, answer: unknown): ApiError {
  const error = (answer as { error?: { code?: string; message?: string; refusals?: Refusal[] } } | undefined)
    ?.error;
  if (error?.code === "not-paired") location.assign("/pair");
  return new ApiError(
    error?.code ?? "no-answer",
    error?.message ?? `The server answered ${status} without saying why`,
    error?.refusals,
    error as Thing | undefined,
  );
}

/** What is there where a change was made from another version; null where it is gone, undefined where it is no such error. */
function presentIn({ code, details }: ApiError, method: string, { only }: From): Thing | null | undefined {
  const present = (details["present"] ?? null) as Thing | null;
  if (code === "changed-meanwhile") return only ? { [only]: present } : present;
  return code === "not-found" && method === "PUT" ? null : undefined;
}

/** Asks a person where both changed the same, and sends what is to be. */
async function settled<T>(
  sent: { readonly method: string; readonly path: string; readonly body: unknown },
  from: From,
  present: Thing | null,
  error: ApiError,
): Promise<T> {
  const clash = clashOf(sent, from, present);
  const said = mergedUnasked(clash, from) ?? (await clashDesk.ask(clash));
  if (said.is === "open") throw error;
  const next = said.is === "mine" ? sentAgain(sent, from, clash, said.thing) : undefined;
  if (!next) throw new ApiError(tookTheirs, "What is on the bench now stays as it is");
  return call<T>(
    next.method,
    next.path,
    next.body,
    present === null ? {} : { from: { ...from, base: present } },
  );
}

/** Not where the browser can work none out, on a page without HTTPS; the change then goes through as it is. */
function versionOf({ base, only }: From): Promise<string> | undefined {
  return globalThis.crypto.subtle ? tagOf(only ? (base as Thing)[only] : base) : undefined;
}

/** Nothing where the bench cannot be reached. */
async function send(
  method: string,
  path: string,
  body: unknown,
  { key, tag, given }: { key: string; tag: string | undefined; given: AbortSignal | undefined },
): Promise<Response | undefined> {
  const init = {
    method,
    headers: {
      ...(body !== undefined && { "content-type": "application/json" }),
      ...(canWait(method, path) && { "idempotency-key": key }),
      ...(tag && { "if-match": `"${tag}"` }),
    },
    ...(given && { signal: given }),
    ...(body !== undefined && { body: JSON.stringify(body) }),
  };
  try {
    return await signal.fetch(path, init);
  } catch {
    if (given?.aborted) throw new ApiError("given-up", "Nobody waits for the answer any more");
    return undefined;
  }
}

/** What is entered into a list, or bought: the rest is asked for, and asking twice does no harm. */
function canWait(method: string, path: string): boolean {
  return (
    method !== "GET" &&
    /^\/api\/(bench\/(parts|joints|claims)|catalogue|evidence|sightings)(\/[^/]+(\/buy)?)?$/.test(path)
  );
}

async function withoutSignal<T>(lost: LostCall): Promise<T> {
  const answer = await signal.answer(lost);
  if (answer.ok || answer.code !== "unreachable" || signal.state.asOf !== null) signal.lose();
  if (!answer.ok) throw new ApiError(answer.code, answer.message, answer.refusals);
  if (lost.method === "GET") signal.saw(lost.path, answer.value);
  return answer.value as T;
}

/** 128 random bits; the browser has a name for it on secure pages only. */
function newKey(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("");
}
