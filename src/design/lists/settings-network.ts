/**
 * Radio, addresses and who gets in.
 *
 * @source ETSI EN 303 645 provisions 5.1 to 5.6 (from memory) and common practice; private addresses: RFC 1918
 */
import { addressPlan, CHECK_RULES } from "../../core/link/index.ts";
import type { RadioPath } from "../design.ts";
import { counted, level, megabits } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import type { Post } from "./post.ts";

export function networkSettings(post: Post): readonly MaybeStep[] {
  const { link, loads, brief } = post.design;
  const radio = link?.radio ?? null;
  const hasSwitch = loads.lines.some(({ kind }) => kind === "switch");
  const isPassive = brief.parts.radio?.value.feed.startsWith("passive") === true;
  return [
    radio !== null && radioBand(post, radio),
    radio !== null && radioPower(radio),
    radio?.needsRadarCheck === true && radar(radio),
    hasSwitch &&
      step(
        "ports",
        `Switch: PoE on only at the ports in use${isPassive && post.sender === "radio" ? ", the passive injector on the radio's cable alone" : ""}, the other ports off, every port labelled.`,
        { why: "A spare live port is an open door at the foot of the post." },
      ),
    addresses(post),
    ...accessSteps(post),
  ];
}

/** A little more than the path: too small a figure loses the far end's answers. @source common practice, no source */
const ROOM_RATIO = 1.1;

function radioBand({ say }: Post, radio: RadioPath): MaybeStep {
  const distanceM = Math.ceil((ROOM_RATIO * radio.distanceM) / 100) * 100;
  return step(
    "radioBand",
    `Radio, the same at both ends: ${radio.bandName}, one fixed channel, channel width fixed at ${radio.channelWidthMHz} MHz and not automatic, same polarisation, distance set to ${say.said.either(`${distanceM} m`, say.said(distanceM, "m away", { digits: 2, safe: "up" }))}, WPA3 or WPA2-AES with a long random key, WPS off. One end is the base, the other its client.`,
    {
      why: "Two ends that choose for themselves lose each other (common practice, no source). A wider channel hears more noise for speed that the picture does not need.",
    },
  );
}

function radioPower(radio: RadioPath): MaybeStep {
  return step(
    "radioPower",
    `Radio: your own country set truthfully, outdoor use, at most ${level(radio.txPowerDbm)} with an antenna of ${radio.antennaGainDbi.toFixed(0)} dBi, so that no more than ${level(radio.maxEirpDbm)} EIRP is sent.${
      radio.farAntennaGainDbi === radio.antennaGainDbi
        ? ""
        : ` At the other end, whose antenna of ${radio.farAntennaGainDbi.toFixed(0)} dBi serves all posts: at most ${level(radio.farTxPowerDbm)}.`
    }`,
    {
      why: `The limit used here is a starting value. ${CHECK_RULES}`,
    },
  );
}

function radar(radio: RadioPath): MaybeStep {
  return step(
    "radar",
    `Radio: after every power cut it listens for radar for ${listening(radio)} before it sends. That is the law, not a fault: leave it on.`,
    { why: "In this band radars go first, and the radio may change its channel by itself." },
  );
}

/** How long it stays silent, as one would say it. */
export const listening = ({ silenceAfterPowerCutS }: RadioPath): string =>
  silenceAfterPowerCutS >= 60
    ? counted(Math.ceil(silenceAfterPowerCutS / 60), "minute")
    : counted(silenceAfterPowerCutS, "second");

/** Which of the private /28 networks: 192.168.50.0, away from the ranges that routers come with. @source judgement */
const SITE = 800;
/** Of the thirteen addresses beside the gateway's, what cameras and recorders may take. */
const LATER = 8;

/** One /28 for one post: 14 addresses, each device with a place of its own. */
function addresses({ design, sender }: Post): MaybeStep {
  const { brief, loads, link } = design;
  const cameras = brief.loads.devices.filter(({ kind }) => kind === "camera").map(({ name }) => name);
  const recorders = brief.loads.devices.filter(({ kind }) => kind === "recorder").map(({ name }) => name);
  const hasSwitch = loads.lines.some(({ kind }) => kind === "switch");
  const devices = [
    ...(sender === "radio" ? ["radio at home", "radio at the post"] : []),
    ...(hasSwitch ? ["switch"] : []),
    "charge controller if it has a port",
    ...[...cameras, ...recorders].slice(0, LATER),
  ];
  const { network, netmask, gateway, hosts, spare } = addressPlan({ devices: devices.length, site: SITE });
  const last = (address: string) => address.slice(address.lastIndexOf("."));
  const named = [
    ...(link === null
      ? []
      : [`${last(gateway)} ${sender === "router" ? "router at the post" : "router at home"}`]),
    ...devices.map((name, i) => `${last(hosts[i]!)} ${name}`),
    `${last(spare.at(-1)!)} service laptop`,
  ];
  const others = brief.link.otherPosts.value;
  return step(
    "addresses",
    `Addresses, one example: network ${network} (mask ${netmask}), ${named.join(", ")}. All fixed by hand.${
      sender === "radio" && others > 0
        ? ` With ${counted(others, "other post")} at the same far end, widen it to 192.168.50.0/24 (mask 255.255.255.0) and give each post the next sixteen addresses: .16, .32 and so on.`
        : ""
    }`,
    {
      why: "A plan on paper ends the guessing. These are private addresses (RFC 1918): take another range if your house or its VPN uses this one, or if it is any device's factory setting.",
    },
  );
}

function accessSteps({ design, sender }: Post): readonly MaybeStep[] {
  const { link } = design;
  return [
    step(
      "passwords",
      "Every device: change the factory password before it touches any network. At least 12 characters, a different one for each, kept in a password manager. One account to administer, another for watching only.",
      {
        why: "A camera with its factory password is found within hours (ETSI EN 303 645 provision 5.1, from memory).",
      },
    ),
    step(
      "closed",
      "Every device: no port forwarding, no UPnP, no Telnet, no FTP, no peer-to-peer or maker's cloud unless you chose it. Set-up pages over HTTPS. Look in from outside through a VPN only.",
      {
        why: "Nothing that faces the internet can be attacked through it.",
      },
    ),
    link !== null &&
      step(
        "apart",
        "At home: the post in a network of its own (VLAN), from which nothing reaches your other devices or the internet but time and updates.",
        { why: "The post stands where strangers can reach its cable." },
      ),
    sender === "router" &&
      step(
        "mobile",
        `Router: card with its code noted at home, a plan for about ${Math.ceil((link?.monthlyGB ?? 0) / 10) * 10} GB a month if every picture is sent, a warning at 80 % of it, no address that the internet can reach, upload of at least ${megabits(link?.needMbps ?? 0)}.`,
        { why: "An open limit becomes a bill. A stolen card must be blocked by a telephone call." },
      ),
    step(
      "restart",
      "Every device: starts by itself when power comes back, and a watchdog restarts it when it hangs.",
      { why: "After a dark spell nobody is there to press a button." },
    ),
    step(
      "time",
      "Every device: time from one NTP server, the right time zone, daylight saving as it is kept there.",
      { why: "Pictures without the right time prove little." },
    ),
    step(
      "firmware",
      "Every device: newest firmware from its maker's own page. Write down version and date.",
      {
        why: "Old firmware is how cameras are taken over. Buy only what still gets updates.",
      },
    ),
    step("backup", "Every device: save its settings to a file, and keep the files at home.", {
      why: "A dead device is then replaced in an hour instead of a day.",
    }),
  ];
}
