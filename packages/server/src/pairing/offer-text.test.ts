import { expect, it } from "vitest";
import { testApp } from "../../../../test/api/server.test-kit.ts";
import { offerText } from "./offer-text.ts";

it("offers one device a code that pairs it, with a square to point a camera at", async () => {
  const app = await testApp();
  const text = await offerText(app, ["https://192.168.1.4:4311"]);
  const code = /five minutes: (\w{4}-\w{4})\n/.exec(text)?.[1];
  // A symbol of version 3 has 29 modules a side (ISO/IEC 18004, table 1); two of them and the quiet zone of 2 are a line here.
  expect(text.split("\n").filter((line) => /[█▀▄]/.test(line)).length).toBeGreaterThanOrEqual(15);
  const reply = await app.inject({
    method: "POST",
    url: "/api/pair",
    payload: { code, name: "Phone" },
    remoteAddress: "192.168.1.20",
  });
  expect(reply.statusCode).toBe(201);
});

it("offers nothing where no other device could come", async () => {
  expect(await offerText(await testApp(), [])).toBe("");
});
