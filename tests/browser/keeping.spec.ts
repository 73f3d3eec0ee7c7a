import { readFile } from "node:fs/promises";
import { strFromU8, unzipSync } from "fflate";
import type { Page } from "@playwright/test";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { holdFor, linkSentTo, PHONE, takesIn, type Session } from "./people";

// After an enquiry is erased its page is not found and its link gone.
test.use({ expectedErrors: /404 \(Not Found\)|410 \(Gone\)/ });

let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, at) => holdFor(page, "0", at) });


/** What `everything.json` of the downloaded copy says. */
async function copyFrom(page: Page): Promise<{ client: { name: string }; enquiry: { reference: string } }> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: /copy of everything/i }).click()]);
  expect(download.suggestedFilename()).toMatch(/^[A-Z]\d-\d{3}-\d{4}-\d\d-\d\d\.zip$/);
  const files = unzipSync(await readFile(await download.path()));
  return JSON.parse(strFromU8(files["everything.json"] ?? new Uint8Array())) as Awaited<ReturnType<typeof copyFrom>>;
}

test("A homeowner takes a copy of everything, then erases it, and their link opens nothing more", async ({ person }) => {
  const at = await takesIn(await person({ storageState: owner }), { name: "Marigold Tansy", email: "marigold@example.org", label: "100 % viscose" }, desk);
  await expect.poll(() => linkSentTo(desk, "marigold@example.org")).not.toBe("");
  const link = linkSentTo(desk, "marigold@example.org");
  const client = await person(PHONE);
  await client.goto(link);
  expect(await copyFrom(client)).toMatchObject({ client: { name: "Marigold Tansy" } });
  await client.getByRole("link", { name: "Erase everything" }).click();
  await expect(client.getByRole("heading", { level: 1, name: "Erase everything" })).toBeVisible();
  await fitsAndIsAccessible(client);
  await client.getByRole("button", { name: "Erase everything" }).click();
  await expect(client.getByRole("alert", { name: "Please look at this once more" })).toContainText("Tick this if you are sure");
  await expect(client).toHaveTitle(/^Error: Erase everything/);
  await client.getByRole("checkbox", { name: "Yes, erase everything for good" }).check();
  await client.getByRole("button", { name: "Erase everything" }).click();
  await expect(client.getByRole("heading", { level: 1, name: "Everything is erased" })).toBeVisible();
  await fitsAndIsAccessible(client);
  await client.goto(link);
  await expect(client.getByRole("heading", { level: 1 })).not.toContainText("Marigold");
  const staff = await person({ storageState: owner });
  await staff.goto(at);
  await expect(staff.getByText("Perhaps it was erased")).toBeVisible();
});

test("A homeowner without scripts erases everything", async ({ person }) => {
  await takesIn(await person({ storageState: owner }), { name: "Rowan Sedge", email: "rowan@example.org", label: "100 % wool" }, desk);
  await expect.poll(() => linkSentTo(desk, "rowan@example.org")).not.toBe("");
  const client = await person({ ...PHONE, javaScriptEnabled: false });
  await client.goto(linkSentTo(desk, "rowan@example.org"));
  await client.getByRole("link", { name: "Erase everything" }).click();
  await client.getByRole("checkbox", { name: "Yes, erase everything for good" }).check();
  await client.getByRole("button", { name: "Erase everything" }).click();
  await expect(client.getByRole("heading", { level: 1, name: "Everything is erased" })).toBeVisible();
});

test("Staff give a client a copy and erase the enquiry by its reference, and by no other", async ({ person }) => {
  const page = await person({ storageState: owner });
  await takesIn(page, { name: "Caspian Furrow", email: "caspian@example.org", label: "100 % wool" }, desk);
  const { client, enquiry: { reference } } = await copyFrom(page);
  expect(client.name).toBe("Caspian Furrow");
  const stranger = await person();
  expect((await stranger.request.get(page.url().replace("/desk/", "/copies/"))).status()).toBe(401);
  await page.getByRole("link", { name: "Erase this enquiry" }).click();
  const field = page.getByLabel(`To erase it, type ${reference}`);
  await field.fill("A1-000");
  await page.getByRole("button", { name: "Erase for good" }).click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toContainText(`“A1-000” is not its reference.`);
  await expect(field).toHaveValue("A1-000");
  await fitsAndIsAccessible(page);
  await field.fill(reference.toLowerCase());
  await page.getByRole("button", { name: "Erase for good" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Erased" })).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.goto(`${desk.url}/desk/everything`);
  await expect(page.getByText("Caspian Furrow")).toHaveCount(0);
});
