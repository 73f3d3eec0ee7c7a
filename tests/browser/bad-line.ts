import { once } from "node:events";
import net from "node:net";

/** What becomes of one photo's request: it passes, breaks off on its way up, or arrives while its answer is lost. */
export type Fate = "pass" | "cut" | "lose-answer";
/** Milliseconds each piece takes: the line is slow as well. */
const PIECE_MS = 4;
/** Bytes of a photo that get through before the line breaks. */
const CUT_AFTER = 4_000;

/** A line to a server that treats photos as `fates` says, in turn, again and again. `seen`: what became of each so far. */
export async function badLine(toPort: number, fates: readonly Fate[]): Promise<{ port: number; seen: Fate[]; stop(): Promise<void> }> {
  const seen: Fate[] = [];
  const open = new Set<net.Socket>();
  const line = net.createServer((client) => {
    const server = net.connect(toPort, "127.0.0.1");
    let fate: Fate = "pass", sent = 0;
    const breakOff = () => { client.destroy(); server.destroy(); };
    for (const socket of [client, server]) {
      open.add(socket);
      socket.on("error", breakOff).on("close", () => { open.delete(socket); breakOff(); });
    }
    client.on("data", (piece) => {
      if (piece.includes("POST /api/photos")) {
        fate = fates[seen.length % fates.length] ?? "pass";
        sent = 0;
        seen.push(fate);
      }
      sent += piece.length;
      if (fate === "cut" && sent > CUT_AFTER) return breakOff();
      client.pause();
      setTimeout(() => { server.write(piece); client.resume(); }, PIECE_MS);
    });
    server.on("data", (piece) => {
      if (fate === "lose-answer") return breakOff();
      client.write(piece);
    });
  }).listen(0, "127.0.0.1");
  await once(line, "listening");
  const stop = async () => {
    for (const socket of open) socket.destroy();
    line.close();
    await once(line, "close");
  };
  return { port: (line.address() as net.AddressInfo).port, seen, stop };
}
