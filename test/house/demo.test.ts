import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { z } from "zod";
import {
  adapterSchema,
  type Bench,
  claimSchema,
  clubTypes,
  coverSchema,
  goalSchema,
  gripSchema,
  headSchema,
  type Joint,
  type JointType,
  jointSchema,
  type PartKind,
  parseWith,
  partSchema,
  resolveBench,
  rules,
  shaftSchema,
  wrenchSchema,
} from "../../packages/core/src/index.ts";
import { reference } from "../reference-tables.ts";

interface WrittenPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly [field: string]: unknown;
}

interface WrittenBench {
  readonly parts: readonly WrittenPart[];
  readonly joints: readonly Joint[];
  readonly claims: readonly {
    readonly id: string;
    readonly receiver: string;
    readonly adapter: string;
    readonly evidence: string;
  }[];
  readonly goal: unknown;
}

const readme = readFileSync(new URL("../../data/README.md", import.meta.url), "utf8");
const bench: WrittenBench = JSON.parse(
  readFileSync(new URL("../../data/demo/bench.json", import.meta.url), "utf8"),
);

const fieldsOfKind: Readonly<Record<PartKind, readonly string[]>> = {
  head: Object.keys(headSchema.shape),
  adapter: Object.keys(adapterSchema.shape),
  shaft: Object.keys(shaftSchema.shape),
  grip: Object.keys(gripSchema.shape),
  cover: Object.keys(coverSchema.shape),
  wrench: Object.keys(wrenchSchema.shape),
};

/** The kinds that each type of joint connects, in the order in which the demo bench writes them. */
const kindsJoined: Readonly<Record<JointType, readonly string[]>> = {
  screwed: ["head-adapter"],
  bonded: ["adapter-shaft", "head-shaft"],
  gripped: ["shaft-grip"],
};

const kindOf = new Map(bench.parts.map((part) => [part.id, part.kind]));

/** The place on each part that a joint takes up: a shaft's tip and butt are two places, so its id alone will not do. */
function placesTaken({ type, parts: [first, second] }: Joint): string[] {
  return [`${first} ${outOf(first, type)}`, `${second} ${outOf(second, type)}`];
}

function outOf(id: string, type: JointType): string {
  const kind = kindOf.get(id);
  if (kind === "shaft") return type === "gripped" ? "butt" : "tip";
  if (kind === "adapter") return type === "screwed" ? "outside" : "bore";
  return kind === "head" ? "socket" : "mouth";
}

function refusalsOf<T>(schema: z.ZodType<T>, values: readonly { readonly id?: string }[]) {
  return values.flatMap((value) => {
    const parsed = parseWith(schema, value);
    return parsed.ok ? [] : [{ id: value.id, refusals: parsed.refusals }];
  });
}

function duplicatesIn(names: readonly string[]): string[] {
  return names.filter((name, place) => names.indexOf(name) !== place);
}

describe("the demo bench", () => {
  it("has only parts, joints, claims and a goal that the schemas take", () => {
    expect(Object.keys(bench)).toEqual(["parts", "joints", "claims", "goal"]);
    expect(refusalsOf(partSchema, bench.parts)).toEqual([]);
    expect(refusalsOf(jointSchema, bench.joints)).toEqual([]);
    expect(refusalsOf(claimSchema, bench.claims)).toEqual([]);
    expect(parseWith(goalSchema, bench.goal)).toMatchObject({ ok: true });
  });

  it("uses no field that its kind of part does not have", () => {
    const unknown = bench.parts.flatMap((part) =>
      Object.keys(part)
        .filter((field) => !fieldsOfKind[part.kind].includes(field))
        .map((field) => `${part.id}.${field}`),
    );
    expect(unknown).toEqual([]);
  });

  it("is of a size to be read on one page: sixty to seventy-five parts", () => {
    expect(bench.parts.length).toBeGreaterThanOrEqual(60);
    expect(bench.parts.length).toBeLessThanOrEqual(75);
  });

  it.each(["parts", "joints", "claims"] as const)(
    "keeps its %s in the order of their ids, each once",
    (list) => {
      const ids = bench[list].map(({ id }) => id ?? "(no id)");
      expect(ids).toEqual([...new Set(ids)].sort());
    },
  );

  it("has every kind of part, every type of club and both hands", () => {
    const heads = bench.parts.filter((part) => part.kind === "head");
    expect(new Set(kindOf.values())).toEqual(new Set(Object.keys(fieldsOfKind)));
    expect(new Set(heads.map((head) => head.clubType))).toEqual(new Set(clubTypes));
    expect(new Set(heads.map((head) => head.hand))).toEqual(new Set(["right", "left", undefined]));
  });

  it("joins only parts it has, of kinds that such a joint connects", () => {
    expect(bench.joints.length).toBeGreaterThan(10);
    for (const { type, parts } of bench.joints) {
      expect(kindsJoined[type], parts.join("-")).toContain(
        parts.map((id) => kindOf.get(id) ?? "missing").join("-"),
      );
    }
  });

  it("joins nothing twice at the same place", () => {
    expect(duplicatesIn(bench.joints.flatMap(placesTaken))).toEqual([]);
  });

  it("claims nothing of a family that no part on the bench has", () => {
    const receivers = bench.parts.map((part) => (part.socket as { family?: string } | undefined)?.family);
    const adapters = bench.parts.filter((part) => part.kind === "adapter").map((part) => part.family);
    for (const claim of bench.claims) {
      expect(receivers, claim.id).toContain(claim.receiver);
      expect(adapters, claim.id).toContain(claim.adapter);
    }
  });

  it("rests its claims on every rank of evidence", () => {
    expect(new Set(bench.claims.map(({ evidence }) => evidence)).size).toBe(4);
  });

  it("states every price in euros and the day beside it", () => {
    const paid = bench.parts.filter((part) => part.paid !== undefined);
    expect(paid.length).toBeGreaterThan(40);
    for (const part of paid)
      expect(part, part.id).toMatchObject({ paid: { currency: "EUR" }, acquiredOn: expect.any(String) });
  });

  it("has every part and claim that data/README.md points at", () => {
    const known = [...bench.parts, ...bench.claims].map(({ id }) => id);
    const named = readme.match(/\b[HASGCWQT]\d{1,2}\b/g) ?? [];
    expect(named.length).toBeGreaterThan(50);
    expect(named.filter((id) => !known.includes(id))).toEqual([]);
  });

  it("shows every kind of verdict on the first screen, and how much more a higher skill would open", () => {
    const result = resolveBench(bench as unknown as Bench, rules, reference);
    if (!result.ok) throw new Error(JSON.stringify(result.refusals));
    const { clubs, nearMisses, wants, skillOpens } = result.resolution;
    const verdicts = new Set(clubs.map(({ verdict }) => verdict));
    expect([...verdicts].sort()).toEqual(["fits", "fits-with-work", "unsettled"]);
    expect(nearMisses.length).toBeGreaterThan(20);
    expect(wants.length).toBeGreaterThan(0);
    expect(skillOpens.every(({ moreClubs }) => moreClubs > 0)).toBe(true);
  });
});
