import { NextRequest } from "next/server";
import { describe, expect, it } from "vitest";
import { isSameOrigin } from "../../../app/_server/same-origin";
import { config, proxy } from "../../../proxy";

const BASE = "http://127.0.0.1:3000";
const get = (path = "/") => proxy(new NextRequest(`${BASE}${path}`));
const nonceOf = (policy: string | null) => /'nonce-([^']+)'/.exec(policy ?? "")?.[1];

describe("proxy", () => {
  it("sets a policy with a nonce of its own for every request, and hands it to the page", () => {
    const [one, two] = [get(), get()];
    const policy = one.headers.get("content-security-policy");
    for (const part of ["default-src 'self'", "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'", "form-action 'self'"])
      expect(policy).toContain(part);
    expect(policy).not.toMatch(/script-src[^;]*unsafe/);
    expect(nonceOf(policy)).toMatch(/^[\w+/=]{20,}$/);
    expect(nonceOf(policy)).not.toBe(nonceOf(two.headers.get("content-security-policy")));
    expect(one.headers.get("x-middleware-request-content-security-policy")).toBe(policy);
  });
  it("sets the other headers too", () => {
    expect(Object.fromEntries(get().headers)).toMatchObject({
      "x-content-type-options": "nosniff",
      "referrer-policy": "same-origin",
      "x-frame-options": "DENY",
      "strict-transport-security": expect.stringMatching(/max-age=31536000/) as string,
    });
  });
  it("lets no foreign page post, nor one that hides where it is from", () => {
    const post = (origin: string | null) =>
      proxy(new NextRequest(`${BASE}/ask/send`, { method: "POST", headers: { host: "127.0.0.1:3000", ...(origin === null ? {} : { origin }) } }))
        .status;
    expect([BASE, "https://elsewhere.example", "null", null, "http://127.0.0.1:3001"].map(post)).toEqual([200, 403, 403, 403, 403]);
  });
  it("keeps out of the way of uploads, pictures and the client's link, and of nothing else", () => {
    const matcher = new RegExp(`^${config.matcher[0]}$`);
    for (const path of ["/api/photos", "/photos/abc/320", "/e/token", "/_next/static/x.js"]) expect(matcher.test(path), path).toBe(false);
    for (const path of ["/", "/ask/photos", "/desk", "/your-enquiry", "/sign-in", "/everything", "/api/other"])
      expect(matcher.test(path), path).toBe(true);
  });
});

describe("isSameOrigin", () => {
  const is = (origin: string, host: string, base: string) =>
    isSameOrigin(new Headers({ origin, host, "x-forwarded-host": "elsewhere.example" }), base);
  it("knows one's own machine by either name", () => {
    expect(is("http://localhost:3000", "localhost:3000", BASE)).toBe(true);
    expect(is(BASE, "localhost:3000", BASE)).toBe(true);
    expect(is("http://localhost:3000", "127.0.0.1:3000", BASE)).toBe(false);
  });
  it("goes by the public address alone where there is HTTPS, and never by a forwarded name", () => {
    const base = "https://desk.example.org";
    expect(is("https://desk.example.org", "127.0.0.1:3000", base)).toBe(true);
    expect(is("http://desk.example.org", "desk.example.org", base)).toBe(false);
    expect(is("https://elsewhere.example", "elsewhere.example", base)).toBe(false);
    expect(is("http://elsewhere.example", "127.0.0.1:3000", BASE)).toBe(false);
  });
});
