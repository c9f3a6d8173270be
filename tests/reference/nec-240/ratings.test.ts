import { describe, expect, it } from "vitest";
import { conductors, fuseKind, pickFuse } from "../../../src/core/wiring/index.ts";

describe("NEC 240.6(A): standard ratings, as a trade journal and a second page list them", () => {
  const upTo600 = [
    15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
    450, 500, 600,
  ];
  it("breakers", () => expect(fuseKind("breaker").ratingsA.filter((a) => a <= 600)).toEqual(upTo600));
  it("fuses have 1, 3, 6, 10 and 601 besides", () =>
    expect(fuseKind("class-t").ratingsA.filter((a) => a <= 601)).toEqual([1, 3, 6, 10, ...upTo600, 601]));
});

describe("ISO 8820-3 blade fuses (from memory)", () => {
  it("has the 7.5 A size that no other family has, and none above 40 A", () => {
    expect(pickFuse({ continuousCurrentA: 6, ampacityA: 15, family: "blade" })).toMatchObject({
      ratingA: 7.5,
    });
    expect(pickFuse({ continuousCurrentA: 33, ampacityA: 100, family: "blade" }).kind).toBe("none-fits");
  });
});

describe("NEC 240.4(D): small conductors (read in two copies; 18 and 16 AWG from memory)", () => {
  it.each([
    ["18 AWG", 7],
    ["16 AWG", 10],
    ["14 AWG", 15],
    ["12 AWG", 20],
    ["10 AWG", 30],
    ["8 AWG", null],
  ] as const)("%s", (name, limitA) =>
    expect(conductors("awg").find((c) => c.name === name)!.overcurrentLimitA).toBe(limitA),
  );
});
