import type { Design } from "../design.ts";
import { applicable, type List, step } from "./list.ts";

export function toolsList({ mounting, link, battery }: Design): List {
  return {
    id: "tools",
    title: "Tools to bring",
    intro: "A forgotten tool costs a second trip.",
    isOrdered: false,
    steps: applicable([
      step("meter", "Multimeter for direct current, 10 A and up to 200 V, with spare fuses"),
      step(
        "insulated",
        "Insulated screwdrivers and spanners, torque screwdriver or wrench for the terminals",
      ),
      step(
        "crimp",
        "Wire cutters, strippers, crimp tool and ferrules, and the crimp tool made for the panel's plugs",
      ),
      step("eyes", "Eye protection, gloves, a hard hat for everybody near the mast"),
      step("cover", "Blanket or cardboard to cover the panel"),
      step(
        "compass",
        "Compass or phone, angle gauge for the tilt, spirit level, tape measure, marker and labels",
      ),
      mounting.footing !== null &&
        step(
          "digging",
          "Post-hole digger or spade, bar, bucket, barrow, water for the concrete, props to hold the mast plumb",
        ),
      step("ladder", "Ladder long enough to work without its top rungs, a rope, a second person"),
      link?.carrier === "radio" &&
        step("aim", "Laptop or phone to read the radio's received level, and a way to talk to the other end"),
      battery?.chemistry === "agm" && step("soda", "Baking soda and water, in case acid is spilt"),
      step("spares", "Spare fuses of each size, cable ties for outdoor use, sealing tape, a towel"),
    ]),
  };
}
