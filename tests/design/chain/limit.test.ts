import { expect, it } from "vitest";
import { limitText } from "../../../src/design/chain/limit.ts";
import { changed, given } from "../fixtures.ts";

const limit = (autonomy: object) => limitText(changed({ autonomy } as never).autonomy);

// 99 % and 95 % of the 8760 hours of a year: 88 and 438
it("tells whose word a limit is", () => {
  expect(limit({ consequence: given("worry") })).toBe("a worry allows at most 88");
  expect(limit({ consequence: given("nuisance") })).toBe("a nuisance allows at most 438");
  expect(limit({ consequence: given("darkHours"), askedDarkHours: given(60) })).toBe(
    "you asked for at most 60",
  );
  expect(limit({ consequence: { ...given("worry"), isAnswered: false } })).toBe(
    "at most 88 are taken until you say",
  );
  expect(limit({ consequence: given("days") })).toBe("");
});
