import type { AddressInfo, Socket } from "node:net";
import { simpleParser, type ParsedMail } from "mailparser";
import { SMTPServer } from "smtp-server";

export interface Received { from: string; to: string[]; raw: Buffer; mail: ParsedMail }
/** What the server does with a message whose final dot has come: a reply, or an end without one. */
export type AfterDot = "accept" | "drop" | "hang" | { code: number; say: string };

export interface MailServer {
  url: string;
  /** Messages whose final dot has come, in order; a refused one too. */
  received: Received[];
  /** Decides about a recipient; throws a reply. Default: all are taken. */
  onRcpt: (address: string) => { code: number; say: string } | null;
  /** Decides about the n-th message (from 1). */
  afterDot: (n: number, message: Received) => AfterDot | Promise<AfterDot>;
  connections(): number;
  dropAll(): void;
  close(): Promise<void>;
}

const reply = (code: number, say: string) => Object.assign(new Error(say), { responseCode: code });

/** A real SMTP server on a free port of the loopback address, whose moods a test sets. `password`: wanted from user "desk". */
export async function startMailServer({ password }: { password?: string } = {}): Promise<MailServer> {
  const sockets = new Set<Socket>();
  let count = 0;
  let connections = 0;
  const server: SMTPServer = new SMTPServer({
    authOptional: !password, allowInsecureAuth: true, disabledCommands: password ? ["STARTTLS"] : ["STARTTLS", "AUTH"], logger: false,
    onAuth: (auth, _session, done) => done(auth.username === "desk" && auth.password === password ? null : reply(535, "5.7.8 bad password"), { user: "desk" }),
    onRcptTo: ({ address }, _session, done) => {
      const no = mood.onRcpt(address);
      done(no ? reply(no.code, no.say) : null);
    },
    onData: (stream, session, done) => {
      const parts: Buffer[] = [];
      stream.on("data", (part: Buffer) => parts.push(part));
      stream.on("end", () => void take(Buffer.concat(parts), session.envelope.mailFrom, session.envelope.rcptTo.map((r) => r.address), done));
    },
  });
  async function take(raw: Buffer, from: false | { address: string }, to: string[], done: (error?: Error | null, message?: string) => void) {
    const n = ++count;
    const message = { from: from ? from.address : "", to, raw, mail: await simpleParser(raw) };
    mood.received.push(message);
    const then = await mood.afterDot(n, message);
    if (then === "drop") mood.dropAll();
    else if (then === "accept") done(null, `queued as ${n}`);
    else if (then !== "hang") done(reply(then.code, then.say));
  }
  server.server.on("connection", (socket: Socket) => {
    connections += 1;
    sockets.add(socket);
    socket.on("close", () => sockets.delete(socket));
  });
  server.on("error", () => {}); // a client that dies is what some tests are about
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const mood: MailServer = {
    url: `smtp://127.0.0.1:${(server.server.address() as AddressInfo).port}`,
    received: [], onRcpt: () => null, afterDot: () => "accept",
    connections: () => connections,
    dropAll: () => sockets.forEach((s) => s.destroy()),
    close: () => new Promise((closed) => {
      mood.dropAll();
      server.close(closed);
    }),
  };
  return mood;
}
