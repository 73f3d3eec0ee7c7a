import "server-only";
import { parseConnectionUrl } from "nodemailer/lib/shared";
import SMTPConnection from "nodemailer/lib/smtp-connection";
import type { Message } from "./message";
import { outcomeOf, type Outcome, type SmtpError } from "./outcome";

export interface SmtpTimes {
  /** Milliseconds for connecting, and until the greeting. */
  connectMs: number;
  /** Milliseconds of silence, also after the final dot. */
  silenceMs: number;
}
/** RFC 5321 §4.5.3.2: five minutes for the greeting, ten after the final dot. */
export const SMTP_TIMES: SmtpTimes = { connectMs: 5 * 60_000, silenceMs: 10 * 60_000 };

/** Hands one message to the server of `url` over a connection of its own. Never throws: every end is an outcome. */
export function sendBySmtp(url: string, message: Message, times: SmtpTimes = SMTP_TIMES): Promise<Outcome> {
  return new Promise((resolve) => {
    const { auth, ...options } = parseConnectionUrl(url);
    const smtp = new SMTPConnection({
      ...options, connectionTimeout: times.connectMs, greetingTimeout: times.connectMs, socketTimeout: times.silenceMs,
    });
    let reached = false;
    let ended = false;
    const end = (outcome: Outcome) => {
      if (ended) return;
      ended = true;
      if (outcome.kind === "accepted") smtp.quit();
      else smtp.close();
      resolve(outcome);
    };
    const fail = (error: SmtpError) => end(outcomeOf(error, reached));
    const send = () => {
      reached = true;
      smtp.send({ ...message.envelope, size: message.bytes.length }, message.bytes, (error, info) => {
        if (error) fail(error);
        else end({ kind: "accepted", said: info?.response.slice(0, 500) ?? "" });
      });
    };
    // Stays for good: a connection that breaks after its letter is settled must not end the process.
    smtp.on("error", fail);
    smtp.once("end", () => fail({ message: "The server closed the connection." }));
    smtp.connect((error) => {
      if (error) return fail(error);
      if (!auth || !smtp.allowsAuth) return send();
      smtp.login(auth, (refused) => (refused ? fail(refused) : send()));
    });
  });
}
