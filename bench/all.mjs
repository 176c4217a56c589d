// One table of what is measured, each at three sizes and beside what one would use instead: `npm run bench`, or, once built,
// `node bench/all.mjs`. `--only NAME` takes one measure, `--small` leaves out the large size. It is seeded, and done in ten minutes.
import { availableParallelism, cpus } from "node:os";
import { growthExponent } from "./measure.mjs";

const names = ["resolve", "send", "start", "memory", "reader", "models", "batch", "plan", "page"];
const sizeNames = ["small", "medium", "large"];

/** What is asked for on the command line; throws where nobody understands it. */
export function chosen(args) {
  const rest = args.filter((arg) => arg !== "--small");
  const [option, name] = rest;
  const isOne = option === "--only" && rest.length === 2 && names.includes(name);
  if (rest.length > 0 && !isOne) throw new Error(`Usage: [--small] [--only ${names.join("|")}]`);
  return { wanted: isOne ? [name] : names, sizes: args.includes("--small") ? 2 : 3 };
}

const digits = (value) => {
  if (value === null) return "none";
  return Math.abs(value) >= 100 ? String(Math.round(value)) : Number(value.toPrecision(3)).toString();
};

/** Ours ÷ the baseline, so that under 1 is less of whatever is counted. */
const ratioText = ({ ours, baseline }) => (baseline ? digits(ours / baseline) : "none");

function exponentOf(sizes, values) {
  const isGrowing = sizes.length > 1 && sizes.every(Boolean) && values.every((value) => value > 0);
  return isGrowing ? growthExponent(sizes, values).toFixed(2) : "none";
}

/** A row of the table for everything that a measure counts. */
function rowsOf({ sizes, results }) {
  return results[0].map(({ what, against, unit }, row) => {
    const cells = results.map((each) => each[row]);
    return {
      what: `${what}, ${unit}`,
      against,
      ...Object.fromEntries(
        cells.map((cell, at) => [
          `${sizeNames[at]}: ours / baseline = ratio`,
          `${digits(cell.ours)} / ${digits(cell.baseline)} = ${ratioText(cell)}`,
        ]),
      ),
      "growth: ours, baseline": ["ours", "baseline"]
        .map((of) =>
          exponentOf(
            sizes,
            cells.map((cell) => cell[of]),
          ),
        )
        .join(", "),
    };
  });
}

/** The table in Markdown. */
function printed(rows) {
  const heads = [...new Set(rows.flatMap(Object.keys))];
  const line = (cells) => `| ${cells.join(" | ")} |`;
  return [
    line(heads),
    line(heads.map(() => "---")),
    ...rows.map((row) => line(heads.map((head) => row[head] ?? ""))),
  ].join("\n");
}

/** Measures what is asked for and prints the table. */
export async function bench(args) {
  const { wanted, sizes } = chosen(args);
  const say = (text) => process.stdout.write(`${text}\n`);
  const [rows, sizesOf, began] = [[], [], performance.now()];
  for (const name of wanted) {
    const start = performance.now();
    const measure = await import(`./measures/${name}.mjs`);
    const taken = measure.sizes.slice(0, sizes);
    const run = await measure.ready();
    const results = [];
    for (const size of taken) results.push(await run(size));
    const numbers = taken.map(measure.numberOf ?? Number);
    rows.push(...rowsOf({ sizes: numbers, results }));
    sizesOf.push(`- ${name}: ${taken.map(measure.sizeText).join("; ")}. ${measure.about}`);
    say(`${name}: ${((performance.now() - start) / 1000).toFixed(0)} s`);
  }
  say(`\non ${cpus()[0].model}, ${availableParallelism()} at once, Node ${process.version}\n`);
  say(printed(rows));
  say(
    "\nUnder 1 the ratio says less of what is counted than the baseline's; growth is the exponent of the size.",
  );
  say(`${sizesOf.join("\n")}\n\n${((performance.now() - began) / 1000).toFixed(0)} s in all`);
}

if (process.argv[1]?.endsWith("all.mjs")) await bench(process.argv.slice(2));
