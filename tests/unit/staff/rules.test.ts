import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { senderAddress } from "../../../lib/staff/address";
import type { Caller } from "../../../lib/staff/caller";
import { DEEDS, forbids, type Deed } from "../../../lib/staff/deeds";
import { hashToken, newToken } from "../../../lib/staff/one-time-token";
import { PASSWORD_LIMITS, passwordTrouble } from "../../../lib/staff/password-rules";

const NAMES = ["Nell Harrow", "nell@lantern-yard.example", "Lantern Yard Rug Workshop"];

describe("passwordTrouble", () => {
  it("wants fifteen characters, counted as people count them", () => {
    expect(passwordTrouble("otter quilt jam")).toBeNull();
    expect(passwordTrouble("otter quilt ja")).toMatch(/at least 15/);
    expect(passwordTrouble("otter quilts 🦦🦦")).toBeNull();
    expect(passwordTrouble("otter quilts 🦦")).toMatch(/at least 15/);
  });
  it("takes up to 128 characters whole, and no more", () => {
    const long = "the moth eats pale wool 39 times ".repeat(5);
    expect(passwordTrouble(long.slice(0, PASSWORD_LIMITS.maxChars))).toBeNull();
    expect(passwordTrouble(long.slice(0, PASSWORD_LIMITS.maxChars + 1))).toMatch(/at most 128/);
  });
  it("asks for no kind of character", () => {
    for (const fine of [
      "copper teapot on a ferry",
      "grauerReiherwartetneunmal",
      "слон ждёт паром весной",
      "竹取物語は絹ではなくビスコースだ。",
      "4821 7730 9164 2058 3397",
    ])
      expect(passwordTrouble(fine), fine).toBeNull();
  });
  it("refuses what is guessed first: repeats, runs, common words however dressed up", () => {
    const guessed = [
      "aaaaaaaaaaaaaaaa",
      "abcabcabcabcabcabc",
      "passwordpassword",
      "password123456789",
      "P@ssw0rdP@ssw0rd!",
      "123456789012345",
      "qwertyuiopasdfgh",
      "qwertyuiop12345",
      "abcdefghijklmnop",
      "letmeinletmein12",
      "correcthorsebatterystaple",
      "admin admin admin",
      "welcome welcome 1",
      "zxcvbnmasdfghjkl",
      "iloveyouiloveyou",
      "1234567890abcdef",
      "password password",
      "changemechangeme",
      "987654321098765",
      "               ",
      "!!!!!!!!!!!!!!!!!",
    ];
    for (const weak of guessed) expect(passwordTrouble(weak), weak).toMatch(/first that are guessed/);
  });
  it("refuses what is made of the person's and the workshop's own names", () => {
    for (const own of ["nellharrownell2026", "LanternYardRug2026", "Lantern Yard Workshop", "nell@lantern-yard.example"]) {
      expect(passwordTrouble(own, NAMES), own).toMatch(/first that are guessed/);
    }
    expect(passwordTrouble("Lantern Yard Workshop", [])).toBeNull();
  });
  it("never refuses four unrelated words for what they are made of", () => {
    const words = fc.uniqueArray(
      fc.constantFrom("copper", "teapot", "ferry", "heron", "violet", "anchor", "quilt", "harbour", "mustard", "pencil", "goblin", "tundra"),
      { minLength: 4, maxLength: 6 },
    );
    fc.assert(fc.property(words, fc.constantFrom(" ", "-", ""), (w, joint) => passwordTrouble(w.join(joint), NAMES) === null));
  });
});

describe("forbids", () => {
  const callers: Record<string, Caller> = {
    public: { kind: "public", addressHash: null },
    intake: { kind: "intake", intakeId: "i", addressHash: null },
    client: { kind: "client", enquiryId: "e", linkId: "l" },
    system: { kind: "system", what: "worker" },
    owner: { kind: "staff", staffId: "s", name: "N", role: "owner" },
    reviewer: { kind: "staff", staffId: "s", name: "N", role: "reviewer" },
    trainee: { kind: "staff", staffId: "s", name: "N", role: "trainee" },
  };
  const who = (deed: Deed) => Object.keys(callers).filter((c) => forbids(callers[c] as Caller, deed) === null);
  // Written out by hand from the design, so that a change of the table is a change here too.
  const EXPECTED: Record<Deed, string[]> = {
    "open-intake": ["public", "intake"],
    "fill-intake": ["intake"],
    "add-photo": ["intake", "client", "owner", "reviewer", "trainee"],
    "see-photo": ["intake", "client", "owner", "reviewer", "trainee"],
    "read-label": ["intake", "client", "owner", "reviewer", "trainee"],
    "blur-photo": ["owner", "reviewer"],
    "erase-enquiry": ["client", "owner", "reviewer"],
    "copy-enquiry": ["client", "owner", "reviewer"],
    "measure-photo": ["intake", "client", "owner", "reviewer", "trainee"],
    "plan-rug": ["owner", "reviewer", "trainee"],
    "enter-enquiry": ["system", "owner", "reviewer", "trainee"],
    "bring-post": ["system", "owner", "reviewer", "trainee"],
    "sort-post": ["system", "owner", "reviewer", "trainee"],
    "lift-suppression": ["owner", "reviewer"],
    "read-desk": ["owner", "reviewer", "trainee"],
    "edit-draft": ["owner", "reviewer", "trainee"],
    approve: ["owner", "reviewer", "trainee"],
    second: ["owner", "reviewer"],
    "take-back": ["owner", "reviewer", "trainee"],
    "record-read-out": ["owner", "reviewer", "trainee"],
    move: ["owner", "reviewer"],
    "record-test": ["owner", "reviewer", "trainee"],
    "set-words-aside": ["owner", "reviewer", "trainee"],
    "correct-client": ["owner", "reviewer"],
    "correct-answer": ["owner", "reviewer", "trainee"],
    "record-inspection": ["owner", "reviewer"],
    "make-document": ["owner", "reviewer", "trainee"],
    "read-document": ["client", "owner", "reviewer", "trainee"],
    "send-test-letter": ["owner", "reviewer", "trainee"],
    "assess-rug": ["system", "owner", "reviewer", "trainee"],
    "read-own-page": ["client"],
    "write-to-workshop": ["client"],
    "change-settings": ["system", "owner"],
    "change-paragraphs": ["owner"],
    "switch-reagent": ["owner"],
    "manage-staff": ["owner"],
  };
  it.each(Object.keys(DEEDS) as Deed[])("lets only those do %s who may", (deed) => {
    expect(who(deed).sort()).toEqual([...EXPECTED[deed]].sort());
  });
  it("tells strangers to sign in where staff may, and no more", () => {
    expect(forbids(callers.public as Caller, "read-desk")?.code).toBe("not-signed-in");
    expect(forbids(callers.public as Caller, "read-own-page")?.code).toBe("not-allowed");
    expect(forbids(callers.trainee as Caller, "second")?.code).toBe("not-allowed");
  });
});

describe("newToken", () => {
  it("gives 256 bits in base64url, no two alike, and the hash of each", () => {
    const all = Array.from({ length: 10_000 }, newToken);
    expect(new Set(all.map((t) => t.token)).size).toBe(10_000);
    for (const { token, hash } of all.slice(0, 100)) {
      expect(Buffer.from(token, "base64url")).toHaveLength(32);
      expect(hash).toBe(hashToken(token));
      expect(hash).toMatch(/^[0-9a-f]{64}$/);
    }
  });
  it("hashes with SHA-256 (FIPS 180-4, the example of “abc”)", () => {
    expect(hashToken("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });
});

describe("senderAddress", () => {
  const headers = (forwarded: string | null, socket: string | null) =>
    new Headers({ ...(forwarded === null ? {} : { "x-forwarded-for": forwarded }), ...(socket === null ? {} : { "x-plainpile-address": socket }) });
  it("believes the socket alone where no proxy of ours stands in front", () => {
    expect(senderAddress(headers("203.0.113.9, 198.51.100.7", "192.0.2.1"), 0)).toBe("192.0.2.1");
  });
  it("believes as many entries from the right as there are proxies, whatever stands on the left", () => {
    expect(senderAddress(headers("spoofed, 203.0.113.9", "192.0.2.1"), 1)).toBe("203.0.113.9");
    expect(senderAddress(headers("spoofed, 203.0.113.9, 198.51.100.7", "192.0.2.1"), 2)).toBe("203.0.113.9");
    expect(senderAddress(headers("203.0.113.9", "192.0.2.1"), 2)).toBe("203.0.113.9");
  });
  it("is null where nothing is known", () => {
    expect(senderAddress(headers(null, null), 0)).toBeNull();
    expect(senderAddress(headers(null, "192.0.2.1"), 1)).toBeNull();
  });
});
