import { expect, it } from "vitest";
import { buildApp } from "../app.ts";
import { readDemo, readReference } from "../reference-files.ts";
import { openDatabase } from "../store/database.ts";
import { openTables } from "../store/tables.ts";
import { benchViewSchema } from "../wire/replies.ts";
import { openBench } from "./bench.ts";

const dataFolder = new URL("../../../../data", import.meta.url).pathname;
const [reference, demo] = [readReference(dataFolder), readDemo(dataFolder)];

/** The example, and what a caller of the programme may do to it. */
function openExample() {
  const tables = openTables(openDatabase(undefined));
  return openBench(tables, () => ({ perKm: null }) as never, demo);
}

it("sends the very text of what a reader of the bench sees, as its schema has it", () => {
  const bench = openExample();
  const sent = () => bench.text().bytes.toString();
  expect(sent()).toBe(JSON.stringify(bench.view()));
  expect(sent()).toBe(JSON.stringify(benchViewSchema.parse(bench.view())));
  bench.parts.add({ kind: "grip", note: 'a "quoted" note\n\u2028, ° and 🏌' } as never);
  bench.setGoal({ skill: "bond" });
  bench.parts.remove(bench.parts.all()[0]?.id as string);
  expect(sent()).toBe(JSON.stringify(bench.view()));
  bench.undo();
  bench.loadExample(true);
  bench.startOwn();
  expect(sent()).toBe(JSON.stringify(bench.view()));
});

it("is made anew after a change of each of its things, and only then", () => {
  const bench = openExample();
  const first = bench.text();
  expect(bench.text()).toBe(first);
  bench.setGoal({ skill: "bond" });
  const second = bench.text();
  expect(second.tag).not.toBe(first.tag);
  bench.deleteGoal();
  expect(bench.text().bytes.toString()).toBe(JSON.stringify(bench.view()));
});

// RFC 9110, 13.1.2 and 15.4.5: a tag that still holds is answered without a body.
it("is not sent again to somebody who has it", async () => {
  const app = await buildApp({ reference, demo });
  try {
    const first = await app.inject("/api/bench");
    const ask = () =>
      app.inject({ url: "/api/bench", headers: { "if-none-match": `"other", W/${first.headers.etag}` } });
    const again = await ask();
    expect([again.statusCode, again.body]).toEqual([304, ""]);
    await app.inject({ method: "POST", url: "/api/bench/parts", payload: { kind: "grip" } });
    const changed = await ask();
    expect(changed.statusCode).toBe(200);
    expect(changed.headers["content-type"]).toBe("application/json; charset=utf-8");
    expect(changed.json().parts).toHaveLength(first.json().parts.length + 1);
  } finally {
    await app.close();
  }
});
