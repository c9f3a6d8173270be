import { formatQuantity } from "../../core/units/index.ts";
import type { Design } from "../design.ts";
import { applicable, type List, step } from "./list.ts";

const shown = (value: number, unit: string, digits = 3) => formatQuantity({ value, unit, digits });
const framesPerS = { occasional: 5, normal: 15, smooth: 25 } as const;

/** What to set on each device, to be copied onto paper and kept in the box. */
export function settingsList(design: Design): List {
  const { battery, link, view, brief, array } = design;
  const radio = link?.radio ?? null;
  return {
    id: "settings",
    title: "Settings sheet",
    intro:
      "Copy it, fill in what you chose, keep one copy in the box and one at home. Never write passwords on the copy in the box.",
    isOrdered: false,
    steps: applicable([
      battery !== null &&
        step(
          "charge",
          `Controller, ${battery.chemistry === "agm" ? "AGM lead-acid" : "LiFePO4"} at ${battery.bankV} V: absorption ${shown(battery.absorptionV, "V")}, float ${shown(battery.floatV, "V")}${battery.compensationVPerK === 0 ? ", no temperature compensation" : `, compensation ${(battery.compensationVPerK * 1000).toFixed(0)} millivolts for each degree away from 25 C`}.`,
          {
            why: "Typical values for this kind of battery (from memory); the battery maker's own figures come first.",
          },
        ),
      battery !== null &&
        step(
          "disconnect",
          `Controller: switch the loads off at ${shown(battery.lowVoltageDisconnectV, "V")} and on again at ${shown(battery.reconnectV, "V")}.`,
          { why: "Below that the battery ages fast, and lead-acid can freeze." },
        ),
      array !== null &&
        step(
          "controllerLimits",
          `Controller limits to hold: at most ${shown(array.controllerMaxInputV, "V")} from the panels and ${shown(array.controllerA, "A")} of charge.`,
          {
            why: `On the coldest morning the panels reach ${shown(array.coldOpenCircuitV, "V")}.`,
          },
        ),
      ...view.scenes.map((scene, i) =>
        step(
          `camera${i + 1}`,
          `${scene.name}: ${scene.pixelsAcross} points across, ${framesPerS[brief.view.smoothness.value]} pictures a second, H.265 or H.264, bit rate capped at ${shown(scene.bitrateMbps, "Mbit/s")}${brief.view.recordsSound.value ? "" : ", sound off"}.`,
          { why: "A cap keeps a windy wet night from filling the link." },
        ),
      ),
      radio !== null &&
        step(
          "radioBand",
          `Radio, the same at both ends: ${radio.bandName}, channel width fixed at ${radio.channelWidthMHz} MHz (not automatic), country set truthfully, at most ${shown(radio.maxEirpDbm, "dBm")} EIRP, distance set to ${shown(radio.distanceM, "m")}, WPA3 or WPA2-AES with a long random key.`,
          {
            why: "Two ends that choose for themselves lose each other (common practice). Check your own country's rules before you switch on.",
          },
        ),
      radio?.needsRadarCheck === true &&
        step(
          "radar",
          `After every power cut the radio listens for radar for ${radio.silenceAfterPowerCutS >= 120 ? `${Math.round(radio.silenceAfterPowerCutS / 60)} minutes` : `${radio.silenceAfterPowerCutS} seconds`} before it speaks. That is the law, not a fault.`,
        ),
      link !== null &&
        step(
          "addresses",
          "Addresses, one example: network 192.168.50.0/28 (mask 255.255.255.240). .1 router, .2 radio at home, .3 radio at the post, .4 switch, .5 controller if it has a port, .6 onwards cameras, .14 service laptop.",
          {
            why: "A plan on paper ends the guessing. Take another range if your house uses this one (RFC 1918).",
          },
        ),
      step(
        "passwords",
        "Change every password before the device touches any network: at least 12 characters, a different one for each; a viewer's account for daily use.",
        {
          why: "A camera with its factory password is found within hours (ETSI EN 303 645, provision 5.1; from memory).",
        },
      ),
      step(
        "closed",
        "No port forwarding, no UPnP, no Telnet, no maker's cloud unless you chose it; look in from outside through a VPN only.",
        {
          why: "Nothing that faces the internet can be attacked through it.",
        },
      ),
      step("time", "Time from one NTP server, the right time zone, daylight saving on.", {
        why: "Pictures without the right time prove little.",
      }),
      step("firmware", "Newest firmware from the maker's own page; write down version and date.", {
        why: "Old firmware is how cameras are taken over.",
      }),
    ]),
  };
}
