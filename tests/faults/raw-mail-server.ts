import { createServer, type AddressInfo, type Socket } from "node:net";
import { simpleParser } from "mailparser";
import type { MailServer, Received } from "./mail-server";

/** A server that a test makes break where no library would: within the data, and in its replies. */
export interface RawMailServer extends MailServer {
  /** Whether the connection breaks while the letter is still being sent; the letter is then held by nobody. */
  breaksInData: () => boolean;
}

interface Talk { buffer: string; to: string[]; from: string; isData: boolean }
const addressIn = (line: string) => /<([^>]*)>/.exec(line)?.[1] ?? "";

/** SMTP by hand on a socket (RFC 5321), without any library: replies come in two pieces, and its moods are set by a test. */
export async function startRawMailServer(): Promise<RawMailServer> {
  const sockets = new Set<Socket>();
  let [connections, count] = [0, 0];
  const say = (socket: Socket, line: string) => {
    socket.write(line.slice(0, 2));
    setImmediate(() => socket.writable && socket.write(`${line.slice(2)}\r\n`));
  };

  async function take(socket: Socket, talk: Talk, text: string): Promise<void> {
    const raw = Buffer.from(text.replace(/^\.\./gm, "."), "latin1");
    const message: Received = { from: talk.from, to: talk.to, raw, mail: await simpleParser(raw) };
    mood.received.push(message);
    const then = await mood.afterDot(++count, message);
    if (then === "drop") socket.destroy();
    else if (then === "accept") say(socket, `250 2.0.0 queued as ${count}`);
    else if (then !== "hang") say(socket, `${then.code} ${then.say}`);
  }
  function command(socket: Socket, talk: Talk, line: string): void {
    const verb = line.slice(0, 4).toUpperCase();
    if (verb === "RCPT") {
      const no = mood.onRcpt(addressIn(line));
      if (!no) talk.to.push(addressIn(line));
      return say(socket, no ? `${no.code} ${no.say}` : "250 2.1.5 ok");
    }
    if (verb === "MAIL") Object.assign(talk, { from: addressIn(line), to: [] });
    if (verb === "DATA") talk.isData = true;
    say(socket, verb === "DATA" ? "354 go on" : verb === "QUIT" ? "221 2.0.0 bye" : "250 2.0.0 ok");
  }
  function read(socket: Socket, talk: Talk): void {
    if (talk.isData) {
      if (mood.breaksInData()) return void socket.destroy();
      const end = talk.buffer.indexOf("\r\n.\r\n");
      if (end < 0) return;
      const text = talk.buffer.slice(0, end + 2);
      Object.assign(talk, { isData: false, buffer: talk.buffer.slice(end + 5) });
      return void take(socket, talk, text);
    }
    const end = talk.buffer.indexOf("\r\n");
    if (end < 0) return;
    const line = talk.buffer.slice(0, end);
    talk.buffer = talk.buffer.slice(end + 2);
    command(socket, talk, line);
    read(socket, talk);
  }

  const server = createServer((socket) => {
    connections += 1;
    sockets.add(socket);
    const talk: Talk = { buffer: "", to: [], from: "", isData: false };
    socket.on("close", () => sockets.delete(socket));
    socket.on("error", () => {}); // a client that dies is what some tests are about
    socket.on("data", (part) => { talk.buffer += part.toString("latin1"); read(socket, talk); });
    say(socket, "220 raw.example ready");
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const mood: RawMailServer = {
    url: `smtp://127.0.0.1:${(server.address() as AddressInfo).port}`,
    received: [], onRcpt: () => null, afterDot: () => "accept", breaksInData: () => false,
    connections: () => connections,
    dropAll: () => sockets.forEach((s) => s.destroy()),
    close: () => new Promise((closed) => {
      mood.dropAll();
      server.close(() => closed());
    }),
  };
  return mood;
}
