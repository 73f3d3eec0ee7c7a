import { createServer, type Server } from "node:http";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { simpleParser } from "mailparser";
import { SMTPServer } from "smtp-server";

export interface MailCatcher { smtpPort: number; webPort: number; close(): Promise<void> }

const HOST = "127.0.0.1";
const esc = (s: string) => s.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);
const page = (title: string, body: string) =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${esc(title)}</title>
<style>body{font:1.0625rem/1.55 Georgia,serif;color:#26282a;background:#f5f5f2;max-width:42rem;margin:2rem auto;padding:0 1.25rem}li{margin:.6rem 0}small{color:#5a5e62}pre{white-space:pre-wrap;font:inherit}</style>${body}</html>`;

const listen = (server: Server | SMTPServer, port: number) =>
  new Promise<number>((resolve, reject) => {
    const net = server instanceof SMTPServer ? server.server : server;
    net.once("error", reject);
    server.listen(port, HOST, () => resolve((net.address() as { port: number }).port));
  });

async function letterPage(folder: string, name: string): Promise<string> {
  const mail = await simpleParser(await readFile(path.join(folder, name)));
  const to = Array.isArray(mail.to) ? mail.to.map((t) => t.text).join(", ") : (mail.to?.text ?? "");
  return page(mail.subject ?? "Letter", `<p><a href="/">All letters</a></p><h1>${esc(mail.subject ?? "")}</h1><p><small>to ${esc(to)}, ${esc(mail.date?.toUTCString() ?? "")}</small></p><pre>${esc(mail.text ?? "").replace(/https?:\/\/\S+/g, (u) => `<a href="${u}">${u}</a>`)}</pre>`);
}

async function listPage(folder: string): Promise<string> {
  const names = (await readdir(folder)).filter((n) => n.endsWith(".eml")).sort().reverse();
  const rows = await Promise.all(names.map(async (n) => {
    const mail = await simpleParser(await readFile(path.join(folder, n)), { skipHtmlToText: true });
    return `<li><a href="/${esc(n)}">${esc(mail.subject ?? n)}</a><br><small>to ${esc(Array.isArray(mail.to) ? "" : (mail.to?.text ?? ""))}</small></li>`;
  }));
  return page("Letters that were sent", `<h1>Letters that were sent</h1><p><small>Caught on this machine; nothing left it.</small></p>${rows.length ? `<ul>${rows.join("")}</ul>` : "<p>None yet.</p>"}`);
}

/**
 * A mail server for trying things out: takes every letter on the loopback address, keeps it as a .eml file in
 * `folder` and shows it on a web page. Port 0 takes a free one.
 */
export async function startMailCatcher(folder: string, ports: { smtp: number; web: number }): Promise<MailCatcher> {
  await mkdir(folder, { recursive: true });
  let count = (await readdir(folder)).length;
  const smtp = new SMTPServer({
    authOptional: true, disabledCommands: ["STARTTLS", "AUTH"], logger: false,
    onData(stream, _session, done) {
      const parts: Buffer[] = [];
      stream.on("data", (c: Buffer) => parts.push(c));
      stream.on("end", () => {
        const name = `${String(++count).padStart(5, "0")}.eml`;
        writeFile(path.join(folder, name), Buffer.concat(parts)).then(() => done(), done);
      });
    },
  });
  const web = createServer((req, res) => {
    const name = path.basename(decodeURIComponent(new URL(req.url ?? "/", "http://x").pathname));
    const body = /^\d{5}\.eml$/.test(name) ? letterPage(folder, name) : listPage(folder);
    body.then((html) => res.writeHead(200, { "content-type": "text/html; charset=utf-8" }).end(html),
      () => res.writeHead(404, { "content-type": "text/plain" }).end("No such letter."));
  });
  const webPort = await listen(web, ports.web);
  const smtpPort = await listen(smtp, ports.smtp);
  return {
    smtpPort, webPort,
    close: () => new Promise((resolve) => smtp.close(() => web.close(() => resolve()))),
  };
}
