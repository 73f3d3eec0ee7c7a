import { describe, expect, it } from "vitest";
import { readAnswer } from "../../../lib/ui/send-photo";

describe("readAnswer", () => {
  it("gives a refusal as it came", () => expect(readAnswer('{"ok":false,"code":"too-large","say":"Too large."}', "Lost.")).toEqual({ ok: false, code: "too-large", say: "Too large." }));
  it.each(["", "<html>502</html>", "null", "{}", "[]", '"ok"'])("takes %j for a lost connection", (text) => expect(readAnswer(text, "Lost.")).toEqual({ ok: false, code: "unavailable", say: "Lost." }));
});
