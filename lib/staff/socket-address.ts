import "server-only";
import { subscribe } from "node:diagnostics_channel";
import type { IncomingMessage } from "node:http";
import { SOCKET_HEADER } from "./address";

const kept = globalThis as { plainpileSocketAddresses?: true };

/**
 * Writes the socket's address into a header of every request this process takes in, over whatever the sender wrote there.
 * Next hands routes no socket, and the X-Forwarded-For it passes on is the sender's to write. Node publishes each request
 * on this channel before anybody handles it. A second call changes nothing.
 */
export function noteSocketAddresses(): void {
  if (kept.plainpileSocketAddresses) return;
  kept.plainpileSocketAddresses = true;
  subscribe("http.server.request.start", (message) => {
    const { request } = message as { request: IncomingMessage };
    request.headers[SOCKET_HEADER] = request.socket.remoteAddress ?? "";
  });
}
