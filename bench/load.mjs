// Many clients read and write a bench at once: `node bench/load.mjs`, once built. It starts the built server on a folder of its own,
// which is gone afterwards, and stops by itself. CLIENTS (50), SECONDS (120), RATE (requests a second of all together, 60) and PARTS (2000)
// change it. It ends with 1 where a bound of the project is not kept.
import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { Agent, request } from "node:http";
import { availableParallelism, cpus } from "node:os";
import { quantile, slopeWithin } from "./measure.mjs";
import { seeded } from "./random.mjs";
import { seededBench } from "./seeded-bench.mjs";
import { importBench, inNewFolder, sent, startServer } from "./server-child.mjs";

const from = (name, otherwise) => Number(process.env[name] ?? otherwise);
const [clients, seconds, rate, parts] = [
  from("CLIENTS", 50),
  from("SECONDS", 120),
  from("RATE", 60),
  from("PARTS", 2000),
];
const seed = 20261125;
/** Bounds of the project: milliseconds of 99 of 100 reads, and how much longer they may take while a plan is made. */
const [readMostMs, planMostTimes] = [250, 2];
/** Reads a second beside a plan, for how long they are counted with and without one, and in how many windows. */
const [besideRate, besideSeconds, besideWindows] = [40, Math.min(20, seconds), 4];
/** A line that rises by less than so many kilobytes a minute is called flat: a working day of it is a tenth of a gigabyte. */
const flatKbPerMinute = 200;

/** One request on a connection that is kept; the body is read to its end and thrown away. */
function ask(address, agent, { method = "GET", path, body, headers = {} }) {
  return new Promise((resolve, reject) => {
    const text = body === undefined ? undefined : JSON.stringify(body);
    const json = text === undefined ? {} : { "content-type": "application/json" };
    const sending = request(
      `${address}${path}`,
      { method, agent, headers: { ...json, ...headers } },
      (answer) => {
        let bytes = 0;
        answer.on("data", (chunk) => {
          bytes += chunk.length;
        });
        answer.once("end", () => resolve({ status: answer.statusCode, bytes, etag: answer.headers.etag }));
        answer.once("error", reject);
      },
    );
    sending.once("error", reject);
    sending.end(text);
  });
}

/**
 * What one client does at its turns: six of ten reads are of the whole bench, one asks whether it has changed, one reads a part, and two of
 * ten are changes: a part of its own is added, changed and deleted in turn.
 */
function clientOf(address, number) {
  const random = seeded(seed + number);
  const agent = new Agent({ keepAlive: true, maxSockets: 4 });
  const own = `load-${number}`;
  const part = (massG) => ({ id: own, kind: "grip", massG });
  const changes = [
    () => ({ method: "POST", path: "/api/bench/parts", body: part(50) }),
    () => ({ method: "PUT", path: `/api/bench/parts/${own}`, body: part(random.step(40, 60, 1)) }),
    () => ({ method: "DELETE", path: `/api/bench/parts/${own}` }),
  ];
  let [turn, tag, changing] = [0, undefined, Promise.resolve()];
  const change = () => {
    const next = changes[turn % changes.length]();
    turn += 1;
    // One's own changes come one after the other, as they would from one pair of hands.
    changing = changing.then(() =>
      ask(address, agent, { ...next, headers: { "idempotency-key": randomUUID() } }),
    );
    return changing;
  };
  const read = async (headers) => {
    const answer = await ask(address, agent, { path: "/api/bench", headers });
    tag = answer.etag ?? tag;
    return answer;
  };
  return {
    act: () => {
      const draw = random.next();
      if (draw < 0.2) return { what: "changes", answer: change() };
      if (draw < 0.3) return { what: "a part", answer: ask(address, agent, { path: "/api/bench/parts/S0" }) };
      if (draw < 0.4 && tag !== undefined)
        return { what: "has it changed", answer: read({ "if-none-match": tag }) };
      return { what: "bench reads", answer: read({}) };
    },
    close: () => agent.destroy(),
  };
}

const sleepUntil = (at) => new Promise((resolve) => setTimeout(resolve, Math.max(0, at - performance.now())));

/**
 * Acts at fixed times, whether or not what was asked before has been answered, and counts from the time at which it should have been
 * asked. So a server that stalls is charged for all who waited for it.
 */
async function atFixedTimes(perSecond, forSeconds, act) {
  const began = performance.now();
  const all = [];
  for (let at = 0; at < perSecond * forSeconds; at += 1) {
    const due = began + (at * 1000) / perSecond;
    await sleepUntil(due);
    const { what, answer } = act(at);
    const settle = (status, bytes = 0) => ({ what, status, bytes, ms: performance.now() - due });
    all.push(
      answer.then(
        ({ status, bytes }) => settle(status, bytes),
        (error) => settle(error.code ?? String(error)),
      ),
    );
  }
  return Promise.all(all);
}

/** Kilobytes of memory of a process, as the system counts them. */
function residentKb(pid) {
  return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))[1]);
}

function watchMemory(pid) {
  const [began, samples] = [performance.now(), []];
  const timer = setInterval(
    () => samples.push({ minutes: (performance.now() - began) / 60_000, kb: residentKb(pid) }),
    500,
  );
  return () => {
    clearInterval(timer);
    return samples;
  };
}

const isGood = ({ status }) => typeof status === "number" && (status < 300 || status === 304);
const p = (answers, share) =>
  quantile(
    answers.map(({ ms }) => ms),
    share,
  );
const say = (text) => process.stdout.write(`${text}\n`);
const broken = [];
const hold = (isKept, words) => {
  say(`${isKept ? "kept" : "NOT KEPT"}: ${words}`);
  if (!isKept) broken.push(words);
};

async function load({ address, pid }) {
  const all = Array.from({ length: clients }, (_, number) => clientOf(address, number));
  const memory = watchMemory(pid);
  const answers = await atFixedTimes(rate, seconds, (at) => all[at % clients].act());
  const samples = memory();
  for (const client of all) client.close();
  const kinds = groups(answers);
  console.table(
    [...kinds].map(([what, those]) => ({
      what,
      asked: those.length,
      "half, ms": p(those, 0.5).toFixed(1),
      "99 of 100, ms": p(those, 0.99).toFixed(1),
      "worst, ms": p(those, 1).toFixed(1),
      "kB each": Math.round(those.reduce((sum, { bytes }) => sum + bytes, 0) / those.length / 1000),
    })),
  );
  const bad = answers.filter((answer) => !isGood(answer));
  hold(bad.length === 0, `${answers.length} requests, ${bad.length} errors ${said(bad)}`);
  const slow = p(kinds.get("bench reads"), 0.99);
  hold(slow < readMostMs, `99 of 100 reads of the bench within ${slow.toFixed(1)} ms, bound ${readMostMs}`);
  sayMemory(samples);
}

const groups = (answers) => {
  const found = new Map();
  for (const each of answers) found.set(each.what, [...(found.get(each.what) ?? []), each]);
  return found;
};

const said = (bad) => [...new Set(bad.map(({ what, status }) => `${what}: ${status}`))].join(", ");

/** The second half of the run, when what is kept has been filled. */
function sayMemory(samples) {
  const half = samples.slice(Math.floor(samples.length / 2));
  const xs = half.map(({ minutes }) => minutes);
  const { slope, low, high, mean } = slopeWithin(
    xs,
    half.map(({ kb }) => kb),
  );
  const mb = (kb) => (kb / 1024).toFixed(1);
  say(
    `memory: ${mb(samples[0].kb)} MB at first, ${mb(mean)} MB in the second half on average, most ${mb(Math.max(...samples.map(({ kb }) => kb)))} MB`,
  );
  hold(
    low <= flatKbPerMinute,
    `in the second half it changes by ${mb(slope)} MB a minute (95 % interval ${mb(low)} to ${mb(high)})`,
  );
}

/** Windows with a plan and without one take turns, so that whatever else goes on meets both alike. */
async function besidePlan({ address }) {
  const agent = new Agent({ keepAlive: true });
  const read = () => ({ what: "bench reads", answer: ask(address, agent, { path: "/api/bench" }) });
  const reads = () => atFixedTimes(besideRate, besideSeconds / besideWindows, read);
  const [quiet, beside] = [[], []];
  let plans = 0;
  for (let window = 0; window < besideWindows; window += 1) {
    quiet.push(...(await reads()));
    const planning = keepPlanning(address);
    beside.push(...(await reads()));
    plans += await planning.stop();
  }
  agent.destroy();
  say(
    `${quiet.length} reads with nothing else: ${spread(quiet)}; beside ${plans} plans, one after the other: ${spread(beside)}`,
  );
  const times = p(beside, 0.99) / p(quiet, 0.99);
  hold(
    times <= planMostTimes,
    `a plan makes 99 of 100 reads ${times.toFixed(2)} times as slow, bound ${planMostTimes}`,
  );
}

const spread = (answers) =>
  `half ${p(answers, 0.5).toFixed(1)} ms, 99 of 100 within ${p(answers, 0.99).toFixed(1)} ms, worst ${p(answers, 1).toFixed(1)} ms`;

/** Plans all the time: as soon as one is there, or was stopped, the next is asked for. */
function keepPlanning(address) {
  let isOver = false;
  let count = 0;
  const work = (async () => {
    while (!isOver) {
      const { job } = await sent(address, "POST", "/api/plan/jobs", { seconds: 60, nextBest: true });
      count += 1;
      const isRunning = async () => (await sent(address, "GET", `/api/plan/jobs/${job}`)).state === "running";
      while (!isOver && (await isRunning())) await sleepUntil(performance.now() + 250);
      await sent(address, "DELETE", `/api/plan/jobs/${job}`);
    }
  })();
  return {
    stop: async () => {
      isOver = true;
      await work;
      return count;
    },
  };
}

await inNewFolder(async (folder) => {
  const server = await startServer(folder, { FERRULE_REQUESTS_PER_MINUTE: String(rate * 120) });
  try {
    await sent(server.address, "POST", "/api/bench/start-own");
    await importBench(server.address, seededBench(parts, seed));
    say(
      `${clients} clients, ${rate} requests a second of all together (${((clients / rate) * 1000).toFixed(0)} ms from one turn of a client to its next, answered or not), ${seconds} s, ${parts} parts, on ${cpus()[0].model}, ${availableParallelism()} at once, Node ${process.version}`,
    );
    await atFixedTimes(5, 2, () => ({
      what: "first",
      answer: ask(server.address, new Agent(), { path: "/api/bench" }),
    }));
    await besidePlan(server);
    await load(server);
  } finally {
    await server.stop();
  }
});
process.exitCode = broken.length > 0 ? 1 : 0;
