import { describe, expect, it } from "vitest";
import { isWaitingForUs, mayMove, nextStates, STATE_NAMES, STATES, WAITING_FOR_US, type Mover } from "../../../lib/enquiry/states";
import type { EnquiryStateId } from "../../../lib/enquiry/views";

const MOVERS: Mover[] = ["letter", "client", "taken-back", "undelivered", "outdated", "staff"];
const ENDS: EnquiryStateId[] = ["finished", "declined", "withdrawn", "closed_unanswered"];

describe("STATES", () => {
  it("are the thirteen of the design, in plain words, each once", () => {
    expect(Object.values(STATE_NAMES)).toEqual([
      "new",
      "our turn",
      "their turn",
      "waiting for someone else",
      "quoted",
      "agreed",
      "coming in",
      "in the workshop",
      "ready",
      "finished",
      "declined",
      "withdrawn",
      "closed without answer",
    ]);
  });
  it("can all be reached from new", () => {
    const reached = new Set<EnquiryStateId>(["new"]);
    for (const state of reached) for (const mover of MOVERS) for (const next of nextStates(state, mover)) reached.add(next);
    expect([...reached].sort()).toEqual([...STATES].sort());
  });
  it("never lead into a dead end: somebody can always take an enquiry up again", () => {
    for (const state of STATES) expect(nextStates(state, "staff"), state).not.toHaveLength(0);
    for (const state of ENDS) expect(nextStates(state, "staff")).toContain("our_turn");
  });
  it("never lead back to new, and never from a state to itself by hand", () => {
    for (const from of STATES) {
      expect(nextStates(from, "staff"), from).not.toContain("new");
      expect(nextStates(from, "staff"), from).not.toContain(from);
    }
  });
});

describe("nextStates", () => {
  it("lets a letter pass the turn from new and our turn, and from nowhere else", () => {
    for (const from of STATES) expect(nextStates(from, "letter"), from).toEqual(isWaitingForUs(from) ? ["their_turn"] : []);
    expect(WAITING_FOR_US).toEqual(["new", "our_turn"]);
  });
  it("gives the turn back where a held letter is taken back, to new where it was new", () => {
    for (const from of STATES) expect(nextStates(from, "taken-back"), from).toEqual(from === "their_turn" ? ["our_turn", "new"] : []);
  });
  it("gives the turn back where a letter did not arrive, or no longer holds, and somebody else is awaited, and opens nothing that was settled", () => {
    const awaited: EnquiryStateId[] = ["their_turn", "waiting_elsewhere", "quoted"];
    for (const mover of ["undelivered", "outdated"] as const) for (const from of STATES) expect(nextStates(from, mover), from).toEqual(awaited.includes(from) ? ["our_turn"] : []);
  });
  it("hears a client in every state: our turn, or unchanged where it is new or the rug is on its way or here", () => {
    const stays: EnquiryStateId[] = ["new", "coming_in", "in_workshop", "ready"];
    for (const from of STATES) expect(nextStates(from, "client"), from).toEqual([stays.includes(from) ? from : "our_turn"]);
  });
});

describe("mayMove", () => {
  it("lets a rug in the workshop neither be declined nor be finished before it is ready", () => {
    expect(mayMove("in_workshop", "declined", "staff")).toBe(false);
    expect(mayMove("in_workshop", "finished", "staff")).toBe(false);
    expect(mayMove("in_workshop", "ready", "staff")).toBe(true);
    expect(mayMove("ready", "finished", "staff")).toBe(true);
  });
  it("lets nothing be agreed that was not put to the client", () => {
    for (const from of STATES.filter((s) => s !== "their_turn" && s !== "quoted")) expect(mayMove(from, "agreed", "staff"), from).toBe(false);
  });
});
