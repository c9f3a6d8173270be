import { describe, expect, test } from "vitest";
import { remembering } from "../../src/commands/remember.ts";

describe("a memory for long sums", () => {
  test("works the same task with the same facts once", () => {
    const remember = remembering();
    let worked = 0;
    const work = () => ++worked;
    expect(remember("sum", { a: 1 }, work)).toBe(1);
    expect(remember("sum", { a: 1 }, work)).toBe(1);
    expect(remember("sum", { a: 2 }, work)).toBe(2);
    expect(remember("other", { a: 1 }, work)).toBe(3);
  });
  test("lets the oldest go first, of each task for itself", () => {
    const remember = remembering();
    let worked = 0;
    const weather = (year: number) => remember("weather", year, () => ++worked);
    for (const year of [1, 2, 3, 4, 5]) weather(year);
    expect(weather(5)).toBe(5);
    expect(weather(1)).toBe(6);
  });
  test("two memories share nothing", () => {
    expect(remembering()("t", 1, () => "a")).toBe("a");
    expect(remembering()("t", 1, () => "b")).toBe("b");
  });
});
