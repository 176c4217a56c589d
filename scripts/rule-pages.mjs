// Writes the generated part of every page in docs/rules, and the index of them, from the rules as they were built.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const pages = join(dirname(dirname(fileURLToPath(import.meta.url))), "docs", "rules");
const opening = "<!-- generated -->";
const closing = "<!-- /generated -->";

const units = { in: "inches", g: "grams", deg: "degrees", cm3: "cm³", cpm: "cycles a minute", none: "none" };

const strengths = {
  must: "must: a club that breaks it does not fit",
  should: "should: a club that breaks it fits, and is told so",
  note: "note: it is said, and changes nothing",
};

const grains = {
  interface: "facts that many parts share, so it is judged once for all parts that are alike in them",
  part: "figures that differ from part to part, so it is judged for every club",
};

/** Facts that are no numeric field of a part, by role and path or by path alone. */
const otherFacts = {
  "socket.type": "whether the head takes the shaft itself (a bore) or an adapter (a receiver)",
  "socket.family": "the family of adapters that the receiver takes",
  family: "the family that the adapter belongs to",
  hand: "which hand the part is for",
  clubType: "what kind of club the head is",
  suits: "the kind of club that the shaft is made for",
  material: "what the shaft is made of",
  flex: "the flex on the shaft's label",
  faults: "faults that are asserted",
  deniedFaults: "faults that were looked for and are not there",
  kind: "whether a head or an adapter holds the tip",
  "tip.form": "whether the tip is parallel or taper",
  "bore.form": "whether the bore is parallel or taper",
  "length.basis": "what was measured: the bare shaft, the shaft with its adapter, or the whole club",
  balanceFraction:
    "balance point as a part of the shaft's length, from its tip; only a typical value is known",
  "holder.massG": "mass of the adapter, where one holds the tip",
  "head.massG": "mass of the head",
  "shaft.massG": "mass of the shaft",
  "grip.massG": "mass of the grip",
  "holder.bbgmIn": "bottom of bore to ground, worked out through the adapter where there is one",
  "shaft.aloneLengthIn": "length of the bare shaft, worked out from the length that was read",
  "goal.hand": "the hand that is asked for",
  "goal.flex": "the flex that is asked for",
  "goal.skill": "the work that the user does at the most",
  "goal.playingLengthIn": "the playing length that is asked for",
  "goal.swingWeightPoints": "the swing weight that is asked for, in points from A0",
  "goal.localRule46": "whether the local rule on length is on",
  "work.skill": "the highest skill that the work of this club asks for",
};

/** Units of the figures among them, by the suffix of their path. */
const suffixes = { In: "inches", G: "grams", Deg: "degrees", Cm3: "cm³", Points: "points" };

/** Figures and words for a sample sentence, by name; below, those that mean something else in one rule or one sentence. */
const samples = {
  overIn: 0.003,
  underIn: 0.024,
  outsideIn: 0.915,
  size: "1/64 over",
  wraps: 2,
  wallIn: 0.0175,
  clearanceIn: 0.035,
  depthIn: 1.1,
  usualIn: 1.25,
  sectionIn: 0.9,
  trimmedIn: 1,
  trimIn: 0.75,
  extensionIn: 0.5,
  extensionMaxIn: 1,
  targetIn: 45,
  uncutIn: 44.9,
  lengthIn: 48.5,
  minIn: 18,
  maxIn: 48,
  diameterIn: 0.355,
  sizeIn: 5.2,
  limitIn: 5,
  heelToToeIn: 4.4,
  faceToBackIn: 4.6,
  thicknessIn: 1.8,
  volumeCm3: 465,
  limitCm3: 460,
  rejectAboveCm3: 470,
  targetPoints: 32,
  points: 28,
  addG: 8,
  maxG: 12,
  fault: "crack",
  marks: "sky marks and scratches on the crown",
  form: "parallel",
  suits: "iron",
  clubType: "driver",
  hand: "right",
  wantedHand: "right",
  headHand: "left",
  adapterHand: "right",
  goalFlex: "stiff",
  flex: "regular",
  receiverFamily: "Alder",
  adapterFamily: "Birch",
  evidence: "tried",
  workSkill: "bond",
  goalSkill: "screw",
};

const samplesOf = {
  "grip-within-rules": { lengthIn: 6.5, limitIn: 7 },
  "grip-within-rules grip-too-thick": { limitIn: 1.75 },
  "grip-within-rules grip-thickness-near-limit": { thicknessIn: 1.755, limitIn: 1.75 },
  "grip-within-rules grip-length-near-limit": { lengthIn: 6.95 },
  "grip-core-suits-butt plays-larger": { overIn: 0.015 },
  "grip-core-suits-butt core-too-small": { overIn: 0.06 },
  "grip-core-suits-butt core-too-large": { underIn: 0.08 },
  "head-size-within-rules heel-to-toe-near-limit": { sizeIn: 5.03 },
  "head-size-within-rules sole-to-crown-too-high": { sizeIn: 3, limitIn: 2.8 },
  "head-size-within-rules sole-to-crown-near-limit": { sizeIn: 2.83, limitIn: 2.8 },
  "head-volume-within-rules volume-near-limit": { volumeCm3: 472 },
  "head-volume-within-rules club-type-unknown": { volumeCm3: 485 },
  "head-volume-within-rules volume-too-big": { volumeCm3: 485 },
  "insertion-deep-enough too-shallow": { depthIn: 0.8 },
  "insertion-deep-enough maybe-too-shallow": { depthIn: 0.97 },
  "length-reachable too-short": { targetIn: 45 },
  "length-within-local-rule": { lengthIn: 46.75, maxIn: 46 },
  "length-within-local-rule length-near-limit": { lengthIn: 45.95 },
  "length-within-local-rule target-just-over-limit": { lengthIn: 46.05 },
  "length-within-local-rule length-too-vague": { lengthIn: 45.8 },
  "length-within-rules target-too-short": { lengthIn: 17 },
  "length-within-rules length-near-limit": { lengthIn: 47.95 },
  "length-within-rules target-just-outside": { lengthIn: 48.05 },
  "length-within-rules length-too-vague": { lengthIn: 47.8 },
  "length-within-rules cut-to-rules": { trimIn: 0.5 },
  "neck-within-rules": { lengthIn: 5.3, limitIn: 5 },
  "neck-within-rules neck-near-limit": { lengthIn: 5.05 },
  "parallel-section-long-enough section-too-short": { depthIn: 1.25 },
  "parallel-section-long-enough section-near-depth": { sectionIn: 1.2, depthIn: 1.25 },
  "shaft-sound fault-and-material-disagree": { fault: "rust" },
  "shaft-suits-club-type usable-but-made-for-other-clubs": { clubType: "hybrid" },
  "swing-weight-reachable head-too-heavy": { points: 38 },
  "swing-weight-reachable weight-at-butt": { points: 34 },
  "swing-weight-reachable maybe-out-of-reach": { points: 27 },
  "tip-enters-bore ream-to-enter": { wallIn: 0.08 },
  "tip-enters-bore wall-too-thin": { wallIn: 0.03 },
  "tip-enters-bore wall-near-limit": { wallIn: 0.049 },
  "tip-enters-bore rolled-sleeve": { clearanceIn: 0.014, wallIn: 0.007 },
  "tip-enters-bore loose-not-measured-closely": { clearanceIn: 0.022 },
  "tip-enters-bore tip-too-wide": { overIn: 0.02 },
  "tip-enters-bore adapter-is-not-reamed": { overIn: 0.015 },
  "tip-enters-bore thick-bond-line": { clearanceIn: 0.008 },
  "tip-enters-bore no-known-shim": { clearanceIn: 0.014 },
  "tip-enters-bore bore-too-wide": { clearanceIn: 0.05 },
  "tip-enters-bore shim": { clearanceIn: 0.015, wallIn: 0.0075 },
  "tip-form-suits-bore bore-mislabelled": { diameterIn: 0.37, form: "taper" },
};

/** Data for one sentence; a name that nobody gave a sample for is our bug and not a page with a hole in it. */
function sampleData(rule, code) {
  const known = { ...samples, ...samplesOf[rule.id], ...samplesOf[`${rule.id} ${code}`] };
  return new Proxy(known, {
    get(data, name) {
      if (!(name in data)) throw new Error(`no sample for "${String(name)}" of ${rule.id} (${code})`);
      return data[name];
    },
  });
}

/** Parts by their kind; what holds the tip is the head, unless the sentence is about adapters. */
function sampleTeller(code, formats) {
  const holder = code.startsWith("adapter-") ? "adapter" : "head";
  return { ...formats, part: (role) => `the ${role === "holder" ? holder : role}` };
}

function meaningOf(factPath, fields) {
  const role = factPath.slice(0, factPath.indexOf("."));
  const path = factPath.slice(role.length + 1);
  const atHead = role === "holder" ? path.replace(/^bore\./, "socket.") : path;
  const field = fields[atHead] ?? fields[path];
  const other = otherFacts[factPath] ?? otherFacts[path];
  const isGoal = role === "goal" || role === "work";
  if (field && !otherFacts[factPath] && !isGoal) return { meaning: field.meaning, unit: units[field.unit] };
  if (!other) throw new Error(`no words for the fact "${factPath}"`);
  const suffix = Object.keys(suffixes).find((ending) => path.endsWith(ending));
  return { meaning: other, unit: suffix ? suffixes[suffix] : "" };
}

function readsTable(rule, fields) {
  const facts = [
    ...Object.entries(rule.needs).map(([name, path]) => ({ name, path, without: "asks" })),
    ...Object.entries(rule.uses ?? {}).map(([name, path]) => ({ name, path, without: "does what it can" })),
  ];
  const rows = facts.map(({ name, path, without }) => {
    const { meaning, unit } = meaningOf(path, fields);
    const typical = rule.typical?.includes(name) ? "yes" : "";
    return `| \`${path}\` | ${meaning} | ${unit} | ${without} | ${typical} |`;
  });
  return ["| Fact | Meaning | Unit | Without it | May be typical |", "|---|---|---|---|---|", ...rows];
}

function sayList(rule, formats) {
  return Object.keys(rule.say).map((code) => {
    const data = sampleData(rule, code);
    const teller = sampleTeller(code, formats);
    const hint = rule.hint?.[code]?.(data, teller);
    return `- \`${code}\`: ${rule.say[code](data, teller)}.${hint ? ` *What would help:* ${hint}.` : ""}`;
  });
}

function askList(rule) {
  return Object.entries(rule.ask).map(([name, text]) => `- \`${name}\`: ${text}`);
}

function section(title, lines) {
  return lines.length === 0 ? [] : ["", `### ${title}`, "", ...lines];
}

function sentence(text) {
  return /[.?!]$/.test(text) ? text : `${text}.`;
}

/** What a rule's page says at its top, from the rule itself. `core` brings `fields` and `plainFormats`. */
export function rulePageHead(rule, { fields, plainFormats }) {
  const source = rule.source.at ? `${rule.source.title} (${rule.source.at})` : rule.source.title;
  return [
    sentence(rule.intent),
    "",
    `- Strength: ${strengths[rule.strength]}.`,
    `- Reads ${grains[rule.grain]}.`,
    ...(rule.readsClaims ? ["- Reads the fit claims too."] : []),
    `- Source: ${source}.`,
    ...section("What it reads", readsTable(rule, fields)),
    ...section("What it says", sayList(rule, plainFormats)),
    ...section("What it asks", askList(rule)),
  ].join("\n");
}

/** The table of all rules, in the order in which they are judged. */
export function ruleIndexTable(rules) {
  return [
    "| Rule | Strength | What has to be so |",
    "|---|---|---|",
    ...rules.map(({ id, strength, intent }) => `| [${id}](${id}.md) | ${strength} | ${sentence(intent)} |`),
  ].join("\n");
}

/** The page with what stands between its two marks replaced. */
export function withGenerated(page, generated) {
  const [from, to] = [page.indexOf(opening), page.indexOf(closing)];
  if (from < 0 || to < from) throw new Error(`a page has no ${opening} … ${closing}`);
  return `${page.slice(0, from + opening.length)}\n\n${generated}\n\n${page.slice(to)}`;
}

function writePage(name, generated) {
  const path = join(pages, name);
  if (!existsSync(path))
    throw new Error(`docs/rules/${name} is missing: write its Why and When this rule is wrong`);
  writeFileSync(path, withGenerated(readFileSync(path, "utf8"), generated));
}

async function writeAllPages() {
  const built = "../packages/core/dist";
  const { rules, fields } = await import(`${built}/index.js`);
  const { plainFormats } = await import(`${built}/explain/plain-teller.js`);
  for (const rule of rules) writePage(`${rule.id}.md`, rulePageHead(rule, { fields, plainFormats }));
  writePage("README.md", ruleIndexTable(rules));
  console.log(`${rules.length} rule pages written`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await writeAllPages();
