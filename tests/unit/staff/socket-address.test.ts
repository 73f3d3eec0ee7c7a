import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import { describe, expect, it } from "vitest";
import { SOCKET_HEADER } from "../../../lib/staff/address";
import { noteSocketAddresses } from "../../../lib/staff/socket-address";

describe("noteSocketAddresses", () => {
  it("writes the socket's address over what the sender claims", async () => {
    noteSocketAddresses();
    noteSocketAddresses();
    const server = createServer((req, res) => res.end(String(req.headers[SOCKET_HEADER]))).listen(0, "127.0.0.1");
    await new Promise((resume) => server.once("listening", resume));
    const { port } = server.address() as AddressInfo;
    const answer = await new Promise<string>((resolve, reject) => {
      request({ port, host: "127.0.0.1", headers: { [SOCKET_HEADER]: "203.0.113.66", "x-forwarded-for": "203.0.113.67" } }, (res) => {
        res.setEncoding("utf8").on("data", resolve);
      })
        .on("error", reject)
        .end();
    });
    server.close();
    expect(answer).toBe("127.0.0.1");
  });
});
