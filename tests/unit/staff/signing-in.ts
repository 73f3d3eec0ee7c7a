import { beforeAll, describe, expect, it, vi } from "vitest";
import { SESSION_MS } from "../../../lib/staff/auth";
import { acceptInvitation, firstOwnerLink, INVITATION_MS, inviteStaff, newPasswordLink, readInvitation } from "../../../lib/staff/invitations";
import { disableStaff, listStaff, restoreStaff, setRole } from "../../../lib/staff/people";
import { ALLOWANCES } from "../../../lib/staff/rate-limit";
import { signIn, signOut, type CookieToSet } from "../../../lib/staff/sign-in";
import { staffCaller } from "../../../lib/staff/staff-caller";
import type { Caller } from "../../../lib/staff/caller";
import { database, migrateDatabase } from "../../../lib/store/database";

const NELL = { name: "Nell Harrow", email: "nell@lantern-yard.example", password: "copper teapot on a ferry" };
const IVO = { name: "Ivo Castellane", email: "ivo@lantern-yard.example", password: "nine grey herons waiting" };
const from = (address: string, cookie?: string) => new Headers({ "x-plainpile-address": address, ...(cookie ? { cookie } : {}) });
const cookieHeader = (cookies: CookieToSet[]) => cookies.map((c) => `${c.name}=${encodeURIComponent(c.value)}`).join("; ");
const tokenOf = (link: string | null) => (link ?? "").split("/").at(-1) ?? "";
const good = <T>(r: { ok: true; value: T } | { ok: false; code: string; say: string }): T => {
  if (!r.ok) throw new Error(`${r.code}: ${r.say}`);
  return r.value;
};
async function signedIn(person: { email: string; password: string }, address: string): Promise<string> {
  return cookieHeader(good(await signIn(person, from(address))).cookies);
}

/** Everything about signing in, to be run on each kind of database. */
export function signingIn(): void {
  let owner: Caller;

  beforeAll(async () => {
    vi.spyOn(console, "warn").mockReturnValue(undefined);
    await migrateDatabase();
    const { staffId } = good(await acceptInvitation(tokenOf(await firstOwnerLink()), NELL));
    owner = { kind: "staff", staffId, name: NELL.name, role: "owner" };
  });

  describe("firstOwnerLink", () => {
    it("gives none once there is an owner", async () => {
      expect(await firstOwnerLink()).toBeNull();
    });
  });

  describe("acceptInvitation", () => {
    const invite = async (email: string, now: Date) => tokenOf(good(await inviteStaff(owner, { email, role: "reviewer" }, now)).link);
    const at = new Date("2026-11-25T09:00:00Z");
    const later = (ms: number) => new Date(at.getTime() + ms);

    it("is good until just before its ten minutes are over, and once", async () => {
      const token = await invite(IVO.email, at);
      expect(await acceptInvitation(token, IVO, later(INVITATION_MS))).toMatchObject({ ok: false, code: "expired" });
      expect(await acceptInvitation(token, IVO, later(INVITATION_MS - 1))).toMatchObject({ ok: true });
      expect(await acceptInvitation(token, { ...IVO, email: "other@lantern-yard.example" }, later(1))).toMatchObject({ ok: false, code: "expired" });
    });
    it("is used up once when twenty people try it together", async () => {
      const token = await invite("pia@lantern-yard.example", at);
      const tries = await Promise.all(Array.from({ length: 20 }, () => acceptInvitation(token, { ...IVO, name: "Pia" }, later(5))));
      expect(tries.filter((t) => t.ok)).toHaveLength(1);
    });
    it("goes to the address that was invited, whatever the form says, and gives the invited role", async () => {
      const token = await invite("rae@lantern-yard.example", at);
      const form = { name: "Rae Holm", email: "stranger@example.org", password: "violet anchors under ice", role: "owner", id: "chosen" };
      const { staffId, email } = good(await acceptInvitation(token, form, later(5)));
      expect(email).toBe("rae@lantern-yard.example");
      expect(await database().staff.findUnique({ where: { id: staffId } })).toMatchObject({ role: "reviewer" });
      expect(staffId).not.toBe("chosen");
    });
    it("gives somebody who forgot theirs a new password, ends their sessions and leaves their role", async () => {
      const toby = { name: "Toby Lark", email: "toby@lantern-yard.example", password: "slate roof and cold milk" };
      good(await acceptInvitation(await invite(toby.email, at), toby, later(1)));
      const old = await signedIn(toby, "192.0.2.31");
      const again = tokenOf(good(await inviteStaff(owner, { email: toby.email, role: "owner" }, at)).link);
      good(await acceptInvitation(again, { ...toby, password: "lamp oil in the orchard" }, later(2)));
      expect(await staffCaller(from("192.0.2.31", old))).toBeNull();
      expect(await signIn(toby, from("192.0.2.31"))).toMatchObject({ ok: false });
      expect(await signedIn({ ...toby, password: "lamp oil in the orchard" }, "192.0.2.31")).not.toBe("");
      expect((await database().staff.findUniqueOrThrow({ where: { email: toby.email } })).role).toBe("reviewer");
    });
    it("gives the only owner a way back at the machine itself, and nobody by any other door", async () => {
      const { link } = good(await newPasswordLink({ kind: "system", what: "password" }, ` ${NELL.email.toUpperCase()} `, at));
      good(await acceptInvitation(tokenOf(link), NELL, later(9)));
      expect((await database().staff.findUniqueOrThrow({ where: { email: NELL.email } })).role).toBe("owner");
      expect(await newPasswordLink({ kind: "system", what: "password" }, "nobody@example.org", at)).toMatchObject({ ok: false, code: "not-found" });
      expect(await newPasswordLink(owner, NELL.email, at)).toMatchObject({ ok: false, code: "not-allowed" });
    });
    it("gives nobody who was shut out a way back", async () => {
      const una = { name: "Una Flint", email: "una@lantern-yard.example", password: "birch bark by lantern" };
      const { staffId } = good(await acceptInvitation(await invite(una.email, at), una, later(1)));
      const early = await invite(una.email, at);
      good(await disableStaff(owner, staffId));
      expect(await acceptInvitation(early, una, later(2))).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await inviteStaff(owner, { email: una.email, role: "reviewer" }, at)).toMatchObject({ ok: false, code: "invalid" });
    });
    it("survives being opened by a mail scanner", async () => {
      const token = await invite("sol@lantern-yard.example", at);
      for (let n = 0; n < 5; n++) expect(await readInvitation(token, later(n))).toMatchObject({ ok: true });
      expect(await acceptInvitation(token, { ...IVO, name: "Sol" }, later(10))).toMatchObject({ ok: true });
    });
    it("keeps only the hash of its token, and Argon2id with the stated cost", async () => {
      const token = await invite("uma@lantern-yard.example", at);
      expect(token).toMatch(/^[\w-]{43}$/);
      const { staffId } = good(await acceptInvitation(token, { ...IVO, name: "Uma" }, later(1)));
      const rows = JSON.stringify(await database().invitation.findMany());
      expect(rows).not.toContain(token);
      const account = await database().staffAccount.findFirstOrThrow({ where: { userId: staffId } });
      expect(account.password).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    });
  });

  describe("signIn", () => {
    it("begins a session with a cookie no script can read, and a new one each time", async () => {
      const one = good(await signIn(NELL, from("192.0.2.1"))).cookies;
      const two = good(await signIn(NELL, from("192.0.2.1", cookieHeader(one)))).cookies;
      const session = (cookies: CookieToSet[]) => cookies.find((c) => c.name === "pp-staff");
      expect(session(one)?.options).toEqual({ httpOnly: true, sameSite: "lax", secure: false, path: "/" });
      expect(session(two)?.value).not.toBe(session(one)?.value);
      expect(await staffCaller(from("192.0.2.1", cookieHeader(one)))).toEqual(owner);
    });
    it("says the same for a wrong password and an unknown address", async () => {
      const wrong = await signIn({ ...NELL, password: "not the right one at all" }, from("192.0.2.2"));
      const unknown = await signIn({ email: "nobody@example.org", password: NELL.password }, from("192.0.2.2"));
      expect(wrong).toEqual(unknown);
      expect(wrong).toMatchObject({ ok: false, code: "not-signed-in" });
    });
    it("takes a password of 128 characters whole", async () => {
      const long = `é${"plum harbour 7 kites ".repeat(7)}`.slice(0, 127);
      const token = tokenOf(good(await inviteStaff(owner, { email: "long@lantern-yard.example", role: "trainee" })).link);
      good(await acceptInvitation(token, { name: "Lo", email: "", password: `${long}x` }));
      expect(await signIn({ email: "long@lantern-yard.example", password: `${long}y` }, from("192.0.2.3"))).toMatchObject({ ok: false });
      expect(await signIn({ email: "LONG@lantern-yard.example", password: `${long}x` }, from("192.0.2.3"))).toMatchObject({ ok: true });
    });
    it("checks no more than the allowance of a hundred guesses sent together, and locks nobody out elsewhere", async () => {
      const tries = await Promise.all(
        Array.from({ length: 100 }, () => signIn({ ...NELL, password: "a guess that is long enough" }, from("192.0.2.4"))),
      );
      expect(tries.filter((t) => !t.ok && t.code === "not-signed-in")).toHaveLength(ALLOWANCES.signInAccount.max);
      expect(await signIn(NELL, from("192.0.2.4"))).toMatchObject({ ok: false, code: "too-many" });
      expect(await signIn(NELL, from("192.0.2.5"))).toMatchObject({ ok: true });
    });
    it("takes anything a form can send without an accident", async () => {
      for (const odd of [undefined, null, 7, ["a"], { $ne: "" }, "\0", "x".repeat(1_000_000), "\ud800"]) {
        expect(await signIn({ email: odd as string, password: odd as string }, from("192.0.2.6"))).toMatchObject({ ok: false });
      }
    });
  });

  describe("staffCaller", () => {
    it("knows nobody without a cookie or with a forged one", async () => {
      expect(await staffCaller(from("192.0.2.7"))).toBeNull();
      expect(await staffCaller(from("192.0.2.7", "pp-staff=abc.def"))).toBeNull();
    });
    it("forgets a person who was idle for half an hour, or in for twelve hours", async () => {
      const cookie = await signedIn(NELL, "192.0.2.8");
      const now = Date.now();
      expect(await staffCaller(from("192.0.2.8", cookie), new Date(now + SESSION_MS.idle + 1_000))).toBeNull();
      expect(await staffCaller(from("192.0.2.8", cookie), new Date(now + SESSION_MS.idle - 60_000))).toEqual(owner);
      // That visit moved the idle time on; only the absolute limit ends it now.
      expect(await staffCaller(from("192.0.2.8", cookie), new Date(now + SESSION_MS.idle + 60_000))).toEqual(owner);
      for (let t = SESSION_MS.idle; t < SESSION_MS.absolute - 60_000; t += SESSION_MS.idle - 120_000) {
        expect(await staffCaller(from("192.0.2.8", cookie), new Date(now + t))).toEqual(owner);
      }
      expect(await staffCaller(from("192.0.2.8", cookie), new Date(now + SESSION_MS.absolute))).toBeNull();
    });
    it("is refused at once after signing out", async () => {
      const cookie = await signedIn(NELL, "192.0.2.9");
      const removal = await signOut(from("192.0.2.9", cookie));
      expect(removal.find((c) => c.name === "pp-staff")).toMatchObject({ value: "", options: { maxAge: 0 } });
      expect(await staffCaller(from("192.0.2.9", cookie))).toBeNull();
    });
    it("is refused at once after the person was disabled, and a new sign-in too", async () => {
      const ivo = good(await listStaff(owner)).find((p) => p.email === IVO.email);
      const cookie = await signedIn(IVO, "192.0.2.10");
      good(await disableStaff(owner, ivo?.id ?? ""));
      expect(await staffCaller(from("192.0.2.10", cookie))).toBeNull();
      expect(await signIn(IVO, from("192.0.2.11"))).toEqual(await signIn({ ...IVO, password: "something else entirely" }, from("192.0.2.11")));
      good(await restoreStaff(owner, ivo?.id ?? ""));
      expect(await signIn(IVO, from("192.0.2.11"))).toMatchObject({ ok: true });
    });
  });

  describe("setRole and disableStaff", () => {
    it("leave the workshop with an owner", async () => {
      const { staffId } = owner as Caller & { kind: "staff" };
      expect(await setRole(owner, { staffId, role: "trainee" })).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await disableStaff(owner, staffId)).toMatchObject({ ok: false, code: "not-allowed" });
    });
    it("are the owner's alone", async () => {
      const { staffId } = owner as Caller & { kind: "staff" };
      for (const role of ["reviewer", "trainee"] as const) {
        const caller: Caller = { kind: "staff", staffId: "x", name: "X", role };
        expect(await setRole(caller, { staffId, role: "owner" })).toMatchObject({ ok: false, code: "not-allowed" });
        expect(await disableStaff(caller, staffId)).toMatchObject({ ok: false, code: "not-allowed" });
        expect(await inviteStaff(caller, { email: "x@example.org", role: "owner" })).toMatchObject({ ok: false, code: "not-allowed" });
        expect(await listStaff(caller)).toMatchObject({ ok: false, code: "not-allowed" });
      }
      expect(await listStaff({ kind: "public", addressHash: null })).toMatchObject({ ok: false, code: "not-signed-in" });
    });
    it("leave a line in the history", async () => {
      const actions = (await database().audit.findMany()).map((a) => a.action);
      expect(actions).toEqual(expect.arrayContaining(["staff-joined", "staff-invited", "staff-disabled", "staff-restored"]));
    });
  });

  describe("what is logged", () => {
    it("names no address, password or token, on one line of JSON each", async () => {
      const lines: string[] = [];
      vi.mocked(console.warn).mockImplementation((line: string) => void lines.push(line));
      await signIn({ email: "nell@lantern-yard.example", password: "a guess\nthat fails, again" }, from("198.51.100.77"));
      await listStaff({ kind: "staff", staffId: "s-1", name: "Secret Name", role: "trainee" });
      vi.mocked(console.warn).mockReturnValue(undefined);
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) {
        expect(() => JSON.parse(line) as unknown).not.toThrow();
        expect(line).not.toMatch(/nell@|198\.51|a guess|Secret|\n/);
      }
    });
  });
}
