import { describe, expect, it } from "vitest";
import { EMERGENCY_NUMBERS, isEmergencyNumber } from "../../../lib/trade/emergency-numbers";

describe("isEmergencyNumber", () => {
  it.each(Object.entries(EMERGENCY_NUMBERS))("takes what is usual in %s", (_, { number }) => expect(isEmergencyNumber(number)).toBe(true));
  it.each(["17", "112", "112, 999", "112 / 999 and 555", "+44 20 7946 0000", "123456789012345"])("takes %j", (text) => expect(isEmergencyNumber(text)).toBe(true));
  it.each(["", "1", "1234567890123456", "call grandma <script>", "112 or", "112 or mother", "<b>112</b>", "112or999x"])("refuses %j", (text) => expect(isEmergencyNumber(text)).toBe(false));
});
