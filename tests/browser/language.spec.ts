import type { Page } from "@playwright/test";
import { expect, test } from "./fixtures";
import { CLIENT, goOn, setSettings, step, WORKSHOP } from "./language";
import { expectMarked } from "./marked";
import { linkSentTo, PHONE } from "./people";

test.use({ expectedErrors: /40\d|410 \(Gone\)|422/ });

/** What a colleague with a wet rug answers, so that every page of the questionnaire comes. */
const ANSWERS: Readonly<Record<string, readonly string[]>> = {
  "wet-now": ["wet"], reason: ["trade"], label: ["typed"], seller: ["silk"], bought: ["online"], fringe: ["sewn-on"], happened: ["spill"], treatments: ["soap"], changes: ["browner"],
};
const TYPED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  label: { labelText: "100% VISCOSE" }, price: { boughtYear: "2019", price: "4200" }, size: { widthCm: "170", lengthCm: "240" }, story: { story: "It shines." },
  contact: { name: CLIENT.name, email: CLIENT.email, telephone: "020 7946 0001" },
};

/** What “How we judge” names as it was printed: titles of publications, which no catalogue translates. */
const cited = (page: Page): Promise<string[]> => page.locator("main section li > cite").allTextContents();

test("A workshop sees that every word on its clients' pages can be translated", async ({ page, desk, person }) => {
  test.setTimeout(300_000);
  setSettings(desk, { locale: "en-XA" });
  const data = [...Object.values(WORKSHOP), CLIENT.email, "020 7946 0001", CLIENT.name, "100% VISCOSE", "It shines."];
  await page.setViewportSize(PHONE.viewport);
  for (const path of ["/", "/first-aid", "/privacy", "/no-such-page", "/your-enquiry", "/e/none"]) {
    await page.goto(`${desk.url}${path}`);
    await expectMarked(page, data);
  }
  await page.goto(`${desk.url}/how-we-judge`);
  await expectMarked(page, [...data, ...await cited(page)]);
  for (const chapter of ["fibre", "labels", "tests", "happened", "cleaning", "life", "money", "advice"]) {
    await page.goto(`${desk.url}/how-we-judge/${chapter}`);
    await expect(page.locator("main details")).not.toHaveCount(0);
    await expectMarked(page, data);
  }
  await page.goto(`${desk.url}/ask`);
  expect(await page.locator("html").getAttribute("lang")).toBe("en-XA");
  const seen = new Set<string>();
  while (step(page) !== "send") {
    const at = step(page);
    if (seen.has(at)) throw new Error(`The way leads back to ${at}`);
    seen.add(at);
    if (!["first-aid", "call-us", "photos"].includes(at)) {
      if (at === "story") await page.getByRole("textbox").fill("x".repeat(8_001));
      await page.locator("form .button").first().click();
      if (!["price", "size"].includes(at)) {
        await expect(page.getByRole("alert").filter({ has: page.getByRole("heading") })).toBeVisible();
        await expectMarked(page, data);
      } else {
        await expect(page).not.toHaveURL(`${desk.url}/ask/${at}`);
        await page.goto(`${desk.url}/ask/${at}`);
      }
      const boxes = page.locator('input[name="answer"]');
      const chosen = ANSWERS[at] ?? (await boxes.count() > 0 ? [await boxes.first().inputValue()] : []);
      for (const id of chosen) await page.locator(`input[name="answer"][value="${id}"]`).check({ force: true });
      for (const [name, text] of Object.entries(TYPED[at] ?? {})) await page.locator(`[name="${name}"]`).fill(text);
    }
    await goOn(page, data);
  }
  await expectMarked(page, data);
  await page.locator("form .button").click();
  await expect(page.getByRole("alert").filter({ has: page.getByRole("heading") })).toBeVisible();
  await expectMarked(page, data);
  await page.getByRole("checkbox").check();
  await page.locator("form .button").click();
  await expect(page).toHaveURL(/\/ask\/sent$/);
  const reference = await page.locator("main strong").first().innerText();
  await expectMarked(page, [...data, reference]);
  await expect.poll(() => linkSentTo(desk, CLIENT.email)).not.toBe("");
  const client = await person(PHONE);
  await client.goto(linkSentTo(desk, CLIENT.email));
  await expectMarked(client, [...data, reference]);
  await client.locator("form .button").click();
  await expect(client.getByRole("alert").filter({ has: client.getByRole("heading") })).toBeVisible();
  await expectMarked(client, [...data, reference]);
  await client.locator('textarea[name="message"]').fill("Hello");
  await client.locator("form .button").click();
  await expect(client.getByRole("status").filter({ hasText: /\S/ })).toBeVisible();
  await expectMarked(client, [...data, reference, "Hello"]);
  await client.goto(`${desk.url}/your-enquiry/erase`);
  await expectMarked(client, [...data, reference]);
  const { subject = "", text = "" } = desk.mails[0]?.mail ?? {};
  const outside = `${subject}\n${text}`.replace(linkSentTo(desk, CLIENT.email), "").replace(/⟦[^⟦⟧]*(?:⟦[^⟦⟧]*⟧[^⟦⟧]*)*⟧/g, "");
  expect(data.reduce((rest, own) => rest.replaceAll(own, ""), outside)).not.toMatch(/\p{L}/u);
});

test("A workshop sees a word that nobody can translate, wherever it stands on a page", async ({ page, desk }) => {
  setSettings(desk, { locale: "en-XA" });
  const slip = async (put: (main: Element) => void, word: RegExp, chapter = "") => {
    await page.goto(`${desk.url}/how-we-judge${chapter}`);
    await page.locator("main").evaluate(put);
    await expect(expectMarked(page, [...Object.values(WORKSHOP), ...await cited(page)])).rejects.toThrow(word);
  };
  await slip((main) => main.querySelector("h2")?.append("marigold"), /marigold/);
  await slip((main) => main.querySelector("details td")?.append("primrose"), /primrose/, "/fibre");
  await slip((main) => main.querySelector("svg")?.setAttribute("aria-label", "cowslip"), /cowslip/);
});

test("A client of a workshop in the United States gives a size in feet and reads it back, with dates as they are written there", async ({ page, desk }) => {
  setSettings(desk, { locale: "en-US", areaUnit: "sqft", currency: "USD" });
  await page.goto(`${desk.url}/ask/wet-now`);
  await expect(page.locator("html")).toHaveAttribute("lang", "en-US");
  await page.getByText("No, it is dry", { exact: true }).click();
  await page.getByRole("button", { name: "Go on" }).click();
  await expect(page).toHaveURL(/reason$/);
  await page.goto(`${desk.url}/ask/size`);
  await expect(page.getByRole("radio", { name: "Feet and inches" })).toBeChecked();
  await page.getByLabel("Width, feet").fill("5");
  await page.getByLabel("and inches", { exact: true }).first().fill("7");
  await page.getByLabel("Length, feet").fill("7 ft 10 in");
  await page.getByRole("button", { name: "Go on" }).click();
  await page.goto(`${desk.url}/ask/send`);
  await expect(page.getByText("5 ft 7 in × 7 ft 10 in (170 × 239 cm)")).toBeVisible();
  await page.goto(`${desk.url}/ask/size`);
  await page.getByText("Centimetres", { exact: true }).click();
  await page.getByLabel("Width in cm").fill("1.7 m");
  await page.getByLabel("Length in cm").fill("240");
  await page.getByRole("button", { name: "Go on" }).click();
  await page.goto(`${desk.url}/ask/send`);
  await expect(page.getByText("5 ft 7 in × 7 ft 10 in (170 × 240 cm)")).toBeVisible();
});
