import { createHash } from "node:crypto";
import { mkdirSync, readdirSync } from "node:fs";
import { beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import sharp from "sharp";
import { GET as openLink } from "../../../app/e/[token]/route";
import { GET as showPhoto } from "../../../app/photos/[id]/[size]/route";
import { POST } from "../../../app/api/photos/route";
import { MAX_PHOTO_BYTES } from "../../../lib/photo/limits";
import { database, migrateDatabase } from "../../../lib/store/database";
import { photoFolder } from "../../../lib/store/photo-files";
import { settle, submitted } from "./workshop";

// What Next gives a route beside its request.
const jar = new Map<string, string>();
vi.mock("next/headers", () => ({
  headers: async () => new Headers({ "x-plainpile-address": "192.0.2.20", cookie: [...jar].map(([n, v]) => `${n}=${v}`).join("; ") }),
  cookies: async () => ({
    get: (name: string) => (jar.has(name) ? { value: jar.get(name) } : undefined),
    set: (name: string, value: string) => jar.set(name, value),
  }),
}));

const ORIGIN = "http://127.0.0.1:3000";
const picture = () =>
  sharp({ create: { width: 80, height: 60, channels: 3, background: "#7a5c45" } })
    .jpeg()
    .toBuffer();

function post(
  bytes: Uint8Array<ArrayBuffer>,
  { fields = { kind: "whole" }, origin = ORIGIN, name = "rug.jpg" }: { fields?: Record<string, string>; origin?: string | null; name?: string } = {},
): Promise<Response> {
  const form = new FormData();
  for (const [k, v] of Object.entries(fields)) form.append(k, v);
  form.append("file", new Blob([bytes], { type: "image/jpeg" }), name);
  return POST(new Request(`${ORIGIN}/api/photos`, { method: "POST", body: form, headers: origin === null ? {} : { origin } }));
}
const show = (id: string, size = "320") => showPhoto(new Request(ORIGIN), { params: Promise.resolve({ id, size }) });
const link = (token: string) => openLink(new Request(ORIGIN), { params: Promise.resolve({ token }) });
const answerOf = async (response: Response) => (await response.json()) as { ok: boolean; code?: string; value?: { id: string } };
const filesLeft = () => readdirSync(photoFolder());

beforeAll(async () => {
  vi.spyOn(console, "warn").mockReturnValue(undefined);
  await migrateDatabase();
  mkdirSync(photoFolder(), { recursive: true });
  await settle();
});
beforeEach(() => jar.clear());

describe("POST /api/photos", () => {
  it("keeps a photo from our own page, opens a questionnaire for it, and stores what was received by its hash", async () => {
    const bytes = new Uint8Array(await picture());
    const response = await post(bytes);
    const answer = await answerOf(response);
    expect([response.status, answer.ok]).toEqual([201, true]);
    const row = await database().photo.findUniqueOrThrow({ where: { id: answer.value?.id ?? "" } });
    expect(row).toMatchObject({
      sha256: createHash("sha256").update(bytes).digest("hex"),
      receivedBytes: bytes.byteLength,
      originalName: "rug.jpg",
      kind: "whole",
    });
    expect(jar.get("pp-intake")).toMatch(/^[\w-]{43}$/);
    expect(await answerOf(await post(bytes, { fields: { kind: "label" } }))).toMatchObject({ ok: true });
    expect(await database().photo.count({ where: { intakeId: row.intakeId } })).toBe(2);
  });
  it("takes nothing from a foreign page, from none, and from “null”", async () => {
    for (const origin of ["https://elsewhere.example", "null", null, "http://127.0.0.1:3001", "https://127.0.0.1:3000"]) {
      expect((await post(new Uint8Array(await picture()), { origin })).status, String(origin)).toBe(403);
    }
    expect(jar.size).toBe(0);
  });
  it("refuses a photo one byte too large with 413 and leaves no file, whatever length was announced", async () => {
    const before = filesLeft();
    const response = await post(new Uint8Array(MAX_PHOTO_BYTES + 1));
    expect([response.status, (await answerOf(response)).code]).toEqual([413, "too-large"]);
    expect(filesLeft()).toEqual(before);
  });
  it("refuses what is no photo, no form, and an empty one, with a sentence each", async () => {
    expect((await post(new TextEncoder().encode("<svg onload=alert(1)>"))).status).toBe(415);
    expect((await post(new Uint8Array(await picture()), { fields: { kind: "elephant" } })).status).toBe(422);
    const headers = { origin: ORIGIN };
    expect((await POST(new Request(`${ORIGIN}/api/photos`, { method: "POST", body: "hello", headers }))).status).toBe(422);
    expect((await POST(new Request(`${ORIGIN}/api/photos`, { method: "POST", headers }))).status).toBe(422);
    const cut = new Request(`${ORIGIN}/api/photos`, {
      method: "POST",
      body: '--x\r\nContent-Disposition: form-data; name="file"; filename="a.jpg"\r\n\r\nabc',
      headers: { ...headers, "content-type": "multipart/form-data; boundary=x" },
    });
    expect((await POST(cut)).status).toBeGreaterThanOrEqual(400);
  });
  it("lets nobody add as a client or as staff who is neither", async () => {
    for (const as of ["client", "staff", "owner", "__proto__"])
      expect((await post(new Uint8Array(await picture()), { fields: { as, kind: "label" } })).status, as).toBe(401);
  });
});

describe("GET /photos/…", () => {
  it("shows a photo to the device that sent it, inert and uncached, and to no other", async () => {
    const { value } = await answerOf(await post(new Uint8Array(await picture())));
    const id = value?.id ?? "";
    const shown = await show(id);
    expect(shown.status).toBe(200);
    expect(Object.fromEntries(shown.headers)).toMatchObject({
      "content-type": "image/jpeg",
      "x-content-type-options": "nosniff",
      "cache-control": "private, no-store",
      "cross-origin-resource-policy": "same-origin",
      "content-security-policy": expect.stringContaining("sandbox") as string,
    });
    expect((await sharp(Buffer.from(await shown.arrayBuffer())).metadata()).format).toBe("jpeg");
    jar.clear();
    expect((await show(id)).status).toBe(401);
    await post(new Uint8Array(await picture()));
    expect((await show(id)).status).toBe(404);
  });
  it("knows three sizes and ids of its own making", async () => {
    const { value } = await answerOf(await post(new Uint8Array(await picture())));
    for (const size of ["320", "1600", "full"]) expect((await show(value?.id ?? "", size)).status, size).toBe(200);
    for (const size of ["640", "", "../full"]) expect((await show(value?.id ?? "", size)).status, size).toBe(404);
    for (const id of ["../../secret", "a".repeat(300), "..%2f..%2fsecret", "\0"]) expect((await show(id)).status, id).toBe(404);
  });
});

describe("GET /e/…", () => {
  it("remembers the client and shows an address without the token; opened by a scanner five times it changes nothing", async () => {
    const { clientToken } = await submitted(undefined, undefined, new Date());
    const rows = async () =>
      JSON.stringify([await database().clientLink.findMany(), await database().enquiry.findMany(), await database().audit.count()]);
    const before = await rows();
    for (let n = 0; n < 5; n++) {
      const response = await link(clientToken);
      expect([response.status, response.headers.get("location")]).toEqual([303, `${ORIGIN}/your-enquiry`]);
      expect(response.headers.get("referrer-policy")).toBe("no-referrer");
    }
    expect(jar.get("pp-client")).toBe(clientToken);
    expect(await rows()).toBe(before);
  });
  it("is kind about a link that is too old, unknown or revoked, and says the same of each", async () => {
    const { clientToken, enquiryId } = await submitted(undefined, undefined, new Date());
    await database().clientLink.updateMany({ where: { enquiryId }, data: { expiresAt: new Date() } });
    const old = await link(clientToken);
    const unknown = await link("x".repeat(43));
    expect([old.status, unknown.status]).toEqual([410, 410]);
    const page = await old.text();
    expect(page).toBe(await unknown.text());
    expect(page).toContain("Lantern Yard Rug Workshop");
    expect(page).toContain('<a href="/">');
    const style = /<style>([^]*)<\/style>/.exec(page)?.[1] ?? "";
    const hash = createHash("sha256").update(style).digest("base64");
    expect(old.headers.get("content-security-policy")).toContain(`style-src 'sha256-${hash}'`);
    expect(jar.size).toBe(0);
  });
});
