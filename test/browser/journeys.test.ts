import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openWorkshop, served, settled, type Workshop } from "./page.test-kit.ts";

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

async function atBench(path = "/") {
  return workshop.visit(path);
}

describe("the bench", () => {
  it("shows the example with every kind of verdict and starts an own one with one button", async () => {
    const { address, page } = await atBench();
    const tally = page.getByRole("list", { name: "Answers by verdict" });
    for (const word of ["Fits", "Fits with work", "Unsettled", "Does not fit"])
      expect(await tally.getByText(word, { exact: true }).isVisible(), word).toBe(true);
    await page.getByRole("button", { name: "Start my own bench" }).click();
    await page.getByRole("heading", { name: "Nothing on the bench yet" }).waitFor();
    expect((await served(address, "/api/bench")).body).toMatchObject({ example: false, parts: [] });
  });

  it("counts what the server counts, and more of it when more skill is allowed", async () => {
    const { address, page } = await atBench();
    const before = (await served(address, "/api/bench/resolve")).body;
    const more = before.skillOpens.find((one: { skill: string }) => one.skill === "bond").moreClubs;
    await page.getByText(`${more} more clubs with gluing`).waitFor();
    await page.getByLabel("Glue shafts").check();
    await settled(page);
    const after = (await served(address, "/api/bench/resolve?limit=1000")).body;
    expect(after.skill).toBe("bond");
    const withWork = after.clubs.filter(
      (club: { verdict: string }) => club.verdict === "fits-with-work",
    ).length;
    await page.getByRole("button", { name: `${withWork} Fits with work` }).waitFor();
  });

  it("finds parts by words in any order and narrows them", async () => {
    const { page } = await atBench();
    await page.getByLabel("Search").fill("ombrel northmoor");
    const rows = page.locator("ferrule-part-list li");
    expect(await rows.first().innerText()).toContain("Northmoor Ombrel");
    await page.getByLabel("Search").fill("");
    await page.getByText("Narrow it down").click();
    await page.getByLabel("Kind").selectOption("grip");
    const { length } = await rows.all();
    expect(length).toBeGreaterThan(0);
    for (const row of await rows.all()) expect(await row.innerText()).toMatch(/grip/i);
  });
});

describe("a part", () => {
  it("is added, and its clubs are found", async () => {
    const { address, page, faults } = await atBench("/add");
    await page.getByLabel("Head", { exact: true }).check();
    await page.getByLabel("Club type").selectOption("driver");
    await page.getByLabel("Hand", { exact: true }).selectOption("right");
    await page.getByLabel("How it takes a shaft").selectOption("receiver");
    await page.getByLabel("Adapter family").fill("Quillon 2");
    await page.getByLabel("Mass (g)").fill("199,5");
    await page.getByLabel("Loft (degrees)").fill("10.5");
    await page.getByText("Everything else").click();
    await page.getByLabel("Name on the bench").fill("NEW1");
    await page.getByLabel("Seat to ground (in)").fill("2 3/32");
    await page.getByText("Read as 2.094 in (2 3/32)").waitFor();
    await page.getByRole("button", { name: "Put it on the bench" }).click();
    await page.getByRole("heading", { name: "What does this go with?" }).waitFor();
    await settled(page);
    const answer = (await served(address, "/api/bench/parts/NEW1/goes-with")).body;
    expect(answer.part).toMatchObject({
      massG: 199.5,
      socket: { family: "Quillon 2", seatToGroundIn: 2.09375 },
    });
    expect(answer.clubs.length).toBeGreaterThan(0);
    const [club] = answer.clubs;
    await page
      .locator("a.club", { hasText: club.id.replaceAll("+", " + ") })
      .first()
      .click();
    await settled(page);
    expect(await page.locator("section[aria-label='In short']").innerText()).toContain(club.shaft);
    expect(faults).toEqual([]);
  });

  it("that is refused keeps what was typed, and says at the field what was got and expected", async () => {
    const { address, page } = await atBench("/add");
    await page.getByLabel("Grip", { exact: true }).check();
    await page.getByLabel("Mass (g)").fill("fifty");
    await page.getByLabel("Core (in)").fill(".58");
    await page.getByRole("button", { name: "Put it on the bench" }).click();
    await page.getByText(/Got "fifty", expected mass: a number from 0.5 to 1000 g/).waitFor();
    expect(await page.getByLabel("Mass (g)").inputValue()).toBe("fifty");
    expect(await page.getByLabel("Mass (g)").getAttribute("aria-invalid")).toBe("true");
    const parts = (await served(address, "/api/bench/parts?kind=grip")).body.parts.length;
    await page.reload();
    await settled(page);
    expect(await page.getByLabel("Core (in)").inputValue()).toBe(".58");
    await page.getByLabel("Mass (g)").fill("50");
    await page.getByRole("button", { name: "Put it on the bench" }).click();
    await page.getByRole("heading", { name: "What does this go with?" }).waitFor();
    expect((await served(address, "/api/bench/parts?kind=grip")).body.parts.length).toBe(parts + 1);
  });

  it("is changed without losing the fields that were there", async () => {
    const { address, page } = await atBench("/parts/H01/edit");
    const before = (await served(address, "/api/bench/parts/H01")).body;
    await page.getByRole("textbox", { name: "Note" }).fill("Looked at again.");
    await page.getByRole("button", { name: "Save the change" }).click();
    await page.getByText("Looked at again.").waitFor();
    expect((await served(address, "/api/bench/parts/H01")).body).toEqual({
      ...before,
      note: "Looked at again.",
    });
  });

  it("is joined to another and taken apart again", async () => {
    const { address, page } = await atBench("/parts/H02");
    const joints = async () => (await served(address, "/api/bench/joints")).body.joints;
    const before = await joints();
    await page.getByText("It is joined to something else").click();
    await page.getByLabel("Joined to").selectOption("A08");
    await page.getByRole("button", { name: "Join", exact: true }).click();
    await page.getByText("H02 screwed to A08").waitFor();
    expect(await joints()).toHaveLength(before.length + 1);
    await page.getByRole("button", { name: "Not any more: H02 and A08" }).click();
    await page.getByText("Taken apart.").waitFor();
    expect(await joints()).toEqual(before);
  });

  it("comes back with its joints when its delete is undone", async () => {
    const { address, page } = await atBench("/parts/H01");
    const before = (await served(address, "/api/bench")).body;
    await page.getByRole("button", { name: "Delete" }).click();
    await page.getByText("H01 is deleted.").waitFor();
    expect((await served(address, "/api/bench/parts/H01")).status).toBe(404);
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText(/Brought back/).waitFor();
    const after = (await served(address, "/api/bench")).body;
    const byId = (list: { id: string }[]) => [...list].sort((a, b) => a.id.localeCompare(b.id));
    expect(byId(after.parts)).toEqual(byId(before.parts));
    expect(byId(after.joints)).toEqual(byId(before.joints));
  });
});

describe("a refusal", () => {
  it("is read with its reasons, rules and every fact it rests on", async () => {
    const { address, page } = await atBench();
    await page.getByRole("button", { name: /Does not fit$/ }).click();
    await page.locator("a.club").first().click();
    await page.getByRole("heading", { name: "Why this does not fit" }).waitFor();
    await settled(page);
    const [miss] = (await served(address, "/api/bench/resolve")).body.nearMisses;
    const proof = await page.locator("section[aria-label='Proof']").innerText();
    for (const finding of miss.proof.findings) {
      expect(proof).toContain(finding.text);
      expect(proof).toContain(`rule ${finding.rule}`);
    }
    expect(await page.locator("ferrule-refusal-view ul.facts li").count()).toBe(miss.proof.facts.length);
    await page.getByText("The whole proof in words").click();
    await page.getByText(miss.proof.text).waitFor();
  });
});

describe("an import", () => {
  const csv = "kind,id,massG,coreDiameterIn\ngrip,GOOD1,50,0.6\ngrip,BAD1,heavy,0.6\n";

  it("names a bad row by line and column and takes the good ones", async () => {
    const { address, page } = await atBench("/exchange");
    await page.getByLabel("Or paste it here").fill(csv);
    await page.getByRole("button", { name: "Try it" }).click();
    const bad = page.getByRole("row", { name: /Line 3/ });
    await bad.waitFor();
    expect(await bad.innerText()).toMatch(/massG/);
    expect(await bad.innerText()).toMatch(/heavy/);
    expect((await served(address, "/api/bench/parts/GOOD1")).status).toBe(404);
    await page.getByRole("button", { name: "Take the 1 good row" }).click();
    await page.getByText("Took 1 row.").waitFor();
    expect((await served(address, "/api/bench/parts/GOOD1")).status).toBe(200);
    expect((await served(address, "/api/bench/parts/BAD1")).status).toBe(404);
  });

  it("that is refused writes nothing and keeps the text", async () => {
    const { address, page } = await atBench("/exchange");
    await page.getByLabel("Or paste it here").fill(csv);
    await page.getByRole("button", { name: "Try it" }).click();
    await page.getByRole("button", { name: "Refuse all of it" }).click();
    await page.getByText("Nothing was taken.").waitFor();
    expect((await served(address, "/api/bench/parts/GOOD1")).status).toBe(404);
    expect(await page.getByLabel("Or paste it here").inputValue()).toBe(csv);
  });
});

describe("a club", () => {
  it("lists the ways to a length and a swing weight, the smallest change first", async () => {
    const { page } = await atBench("/clubs/H01/H01%2BA01%2BS01%2BG01");
    await page.getByLabel("Playing length (in)").fill("44 1/2");
    await page.getByRole("textbox", { name: "Swing weight" }).fill("D2");
    await page.getByRole("button", { name: "Find the ways" }).click();
    const ways = page.locator("ferrule-tune-form ol > li");
    await ways.first().waitFor();
    expect(await ways.first().innerText()).toMatch(/from the butt/);
    expect(await ways.first().innerText()).toMatch(/44\.50 in/);
    const cautions = await page.locator("ferrule-tune-form .caution").innerText();
    expect(cautions).toMatch(/Take care/);
    expect(cautions).toMatch(/end of a shaft is sharp/);
  });
});

describe("the page", () => {
  it("shows centimetres and the chosen theme once the settings say so, on this and the next visit", async () => {
    const { address, page } = await atBench("/settings");
    await page.getByLabel("Lengths in").selectOption("cm");
    await page.getByText("Kept.").waitFor();
    await page.getByLabel("Light or dark").selectOption("dark");
    await expect.poll(() => page.evaluate(() => document.documentElement.dataset["theme"])).toBe("dark");
    await page.goto(`${address}/clubs/H01/H01%2BA01%2BS01%2BG01`);
    await settled(page);
    expect(await page.locator("dl.measures").innerText()).toMatch(/Playing length\s+114\.\d cm/);
    expect(await page.evaluate(() => document.documentElement.dataset["theme"])).toBe("dark");
  });

  it("is used by keyboard: a skip link first, and the heading has the focus after every move", async () => {
    const { page } = await atBench();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    const focused = () =>
      page.evaluate(() => {
        let at = document.activeElement;
        while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
        return at?.textContent?.trim();
      });
    expect(await focused()).toBe("The bench");
    await page.getByRole("link", { name: "Watchlist" }).press("Enter");
    await expect.poll(focused).toBe("Watchlist");
    await page.goBack();
    await expect.poll(focused).toBe("The bench");
  });

  it("says so plainly when an address leads nowhere, a part is gone or the server is", async () => {
    const { address, page } = await atBench("/nowhere-at-all");
    await page.getByRole("heading", { name: "There is no such page" }).waitFor();
    await page.goto(`${address}/parts/NOBODY/edit`);
    await page.getByRole("heading", { name: "That is not on the bench" }).waitFor();
    await page.route("**/api/bench/resolve*", (route) => route.abort());
    await page.goto(`${address}/wants`);
    await page.getByText("The bench cannot be reached.").waitFor();
    await page.unroute("**/api/bench/resolve*");
    await page.getByRole("button", { name: "Try again" }).click();
    await page.locator(".want").first().waitFor();
  });
});
