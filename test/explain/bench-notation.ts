import {
  type Bench,
  type Claim,
  claimSchema,
  type Goal,
  goalSchema,
  type Joint,
  jointSchema,
  type Part,
  parseWith,
  partSchema,
} from "@ferrule/core";

/**
 * A bench in a line for each thing: a part (`shaft S tip.diameterIn=0.335 faults=rust,crack`), a joint
 * (`bonded A S`), a claim (`claim receiver=Alder adapter=Birch verdict=fits evidence=tried`) or the goal
 * (`goal skill=bond`). Numbers are read as numbers (stated, or measured with an
 * `m` behind), a comma makes a list, and `_` stands for a space.
 */
export function benchFrom(notation: string): Bench {
  const parts: Part[] = [];
  const joints: Joint[] = [];
  const claims: Claim[] = [];
  let goal: Goal = {};
  for (const line of notation.split("\n").map((each) => each.trim())) {
    if (line === "") continue;
    const [kind = "", ...words] = line.split(/\s+/);
    if (/^(screwed|bonded|gripped)$/.test(kind))
      joints.push(parsed(jointSchema, { type: kind, parts: words }, line));
    else if (kind === "claim") claims.push(parsed(claimSchema, objectFrom(words), line));
    else if (kind === "goal") goal = parsed(goalSchema, objectFrom(words), line);
    else {
      const [id, ...fields] = words;
      parts.push(parsed(partSchema, { kind, id, ...objectFrom(fields) }, line));
    }
  }
  return { parts, joints, claims, goal };
}

function parsed<Value>(schema: Parameters<typeof parseWith<Value>>[0], value: unknown, line: string): Value {
  const result = parseWith(schema, value);
  if (!result.ok) throw new Error(`"${line}" is refused: ${JSON.stringify(result.refusals)}`);
  return result.value;
}

function objectFrom(words: readonly string[]): Record<string, unknown> {
  const whole: Record<string, unknown> = {};
  for (const word of words) {
    const [path = "", text = ""] = word.split("=");
    const keys = path.split(".");
    const last = keys.pop() ?? "";
    let at = whole;
    for (const key of keys) {
      at[key] ??= {};
      at = at[key] as Record<string, unknown>;
    }
    at[last] = valueFrom(last, text);
  }
  return whole;
}

const lists = ["faults", "deniedFaults"];

function valueFrom(name: string, text: string): unknown {
  if (lists.includes(name)) return text.split(",");
  if (text === "true" || text === "false") return text === "true";
  if (/^\d+(\.\d+)?m$/.test(text)) return { value: Number(text.slice(0, -1)), source: "measured" };
  return /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text.replaceAll("_", " ");
}
