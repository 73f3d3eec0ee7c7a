import { afterAll, beforeAll, beforeEach } from "vitest";
import { config } from "../../../lib/config/config";
import { database } from "../../../lib/store/database";
import { startMailServer, type MailServer } from "../../faults/mail-server";

/** For the tests of a group: a mail server that letters go to, in a good mood and without letters before each of them. */
export function besideMailServer(): { readonly server: MailServer } {
  let server: MailServer;
  beforeAll(async () => {
    server = await startMailServer();
    config.smtp = { url: server.url, from: { name: "Lantern Yard Rug Workshop", address: "desk@lantern-yard.example" } };
  });
  afterAll(async () => {
    config.smtp = null;
    await server.close();
  });
  beforeEach(async () => {
    await database().letter.deleteMany({});
    server.received.length = 0;
    server.onRcpt = () => null;
    server.afterDot = () => "accept";
  });
  return { get server() { return server; } };
}
